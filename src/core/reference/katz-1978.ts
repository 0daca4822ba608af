import type { Source } from "../shared/source";

export const katz1978: Source = {
  name: "Katz 1978",
  citation:
    "Katz D, Baptista J, Azen SP, Pike MC 1978. Obtaining confidence intervals for the risk ratio in cohort studies. Biometrics 34:469-474.",
  standing: "memory",
};
