import type { Source } from "../shared/source";

export const cook2012: Source = {
  name: "Cook et al. 2012",
  citation:
    "Cook NB, Rieman J, Gomez A, Burgi K 2012. Observations on the design and use of footbaths for the control of infectious hoof disease in dairy cattle. Vet J 193:669-673.",
  standing: "read",
};
