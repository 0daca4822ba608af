import type { Source } from "../shared/source";

/** Whole-herd trims; trimming part of a herd overstates the share of cows with lesions. */
export const solano2016: Source = {
  name: "Solano et al. 2016",
  citation:
    "Solano L, Barkema HW, Mason S, et al. 2016. Prevalence and distribution of foot lesions in dairy cattle in Alberta, Canada. J Dairy Sci 99:6828-6841.",
  standing: "read",
};
