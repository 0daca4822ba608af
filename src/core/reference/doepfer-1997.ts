import type { Source } from "../shared/source";

export const doepfer1997: Source = {
  name: "Döpfer et al. 1997",
  citation:
    "Döpfer D, Koopmans A, Meijer FA, et al. 1997. Histological and bacteriological evaluation of digital dermatitis in cattle. Vet Rec 140:620-623.",
  standing: "read",
};

/** Added stage M4.1. */
export const berry2012: Source = {
  name: "Berry et al. 2012",
  citation:
    "Berry SL, Read DH, Famula TR, Mongini A, Döpfer D 2012. Long-term observations on the dynamics of bovine digital dermatitis lesions. Vet J 193:654-658.",
  standing: "read",
};

export type StageMeaning = "none" | "active" | "healing or chronic";

/** The M-stages of digital dermatitis; M1, M2 and M4.1 are the active ones. */
export const dermatitisStages: Readonly<Record<string, StageMeaning>> = {
  M0: "none",
  M1: "active",
  M2: "active",
  M3: "healing or chronic",
  M4: "healing or chronic",
  "M4.1": "active",
};
