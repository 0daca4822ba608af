import type { Source } from "../shared/source";

export const klawitter2019: Source = {
  name: "Klawitter et al. 2019",
  citation:
    "Klawitter M, Döpfer D, Braden TB, Amene E, Mueller KE 2019. Randomised clinical trial showing the curative effect of bandaging on M2-stage lesions of digital dermatitis in dairy cows. Vet Rec Open 6:e000264.",
  standing: "read",
};

/** The trial's protocol for digital dermatitis: checked and treated again every week, up to five times in four weeks. */
export const dermatitisProtocol = { repeatDays: 7, mostTreatments: 5, weeks: 4 } as const;
