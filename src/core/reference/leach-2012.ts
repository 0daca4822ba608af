import type { Source } from "../shared/source";

/** Treated within 48 hours of a fortnightly score, against a median of 65 days under usual care. */
export const leach2012: Source = {
  name: "Leach et al. 2012",
  citation:
    "Leach KA, Tisdall DA, Bell NJ, Main DCJ, Green LE 2012. The effects of early treatment for hindlimb lameness in dairy cows on four commercial UK farms. Vet J 193:626-632.",
  standing: "read",
};
