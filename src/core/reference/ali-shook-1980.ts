import type { Source } from "../shared/source";

export const aliShook1980: Source = {
  name: "Ali & Shook 1980",
  citation:
    "Ali AKA, Shook GE 1980. An optimum transformation for somatic cell concentration in milk. J Dairy Sci 63:487-490.",
  standing: "memory",
};
