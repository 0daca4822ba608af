import type { Source } from "../shared/source";

/** Cows above 200 thousand before drying off were more likely to be lame after calving. */
export const egyedy2022: Source = {
  name: "Egyedy 2022",
  citation:
    "Egyedy AF, Rosales EB, Ametaj BN 2022. Vet Sci 9:624. Cows above 200,000 cells/mL before drying off were more often lame after calving.",
  standing: "read",
};
