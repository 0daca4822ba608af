import type { Source } from "../shared/source";

/** Mobility score 0-3: 2 and 3 are lame, 3 severely impaired. */
export const reader2011: Source = {
  name: "Reader et al. 2011",
  citation:
    "Reader JD, Green MJ, Kaler J, Mason SA, Green LE 2011. Effect of mobility score on milk yield and activity in dairy cattle. J Dairy Sci 94:5045-5052.",
  standing: "read",
};
