import type { Source } from "../shared/source";

/** Up to 100 cows from the middle of the milking order; the last third was 11.9 points lamer than the first. */
export const main2010: Source = {
  name: "Main et al. 2010",
  citation:
    "Main DCJ, Barker ZE, Leach KA, Bell NJ, Whay HR, Browne WJ 2010. Sampling strategies for monitoring lameness in dairy cattle. J Dairy Sci 93:1970-1978.",
  standing: "read",
};
