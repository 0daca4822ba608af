import type { Source } from "../shared/source";

export const willshireBell2009: Source = {
  name: "Willshire & Bell 2009",
  citation: "Willshire JA, Bell NJ 2009. An economic review of cattle lameness. Cattle Practice 17:136-141.",
  standing: "memory",
};

/** Pounds sterling a case. */
export const costsGbp2009 = { SU: 518.73, WL: 300.05, IP: 154.24, DD: 75.57 } as const;
