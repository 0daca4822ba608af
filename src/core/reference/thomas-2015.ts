import type { Source } from "../shared/source";

export const thomas2015: Source = {
  name: "Thomas et al. 2015",
  citation:
    "Thomas HJ, Miguel-Pacheco GG, Bollard NJ, et al. 2015. Evaluation of treatments for claw horn lesions in dairy cows in a randomized controlled trial. J Dairy Sci 98:4477-4486.",
  standing: "read",
};

/** A window of days after treatment, both ends included. */
export interface DayWindow {
  readonly from: number;
  readonly to: number;
}

/** The trial's protocol for claw horn lameness (sole haemorrhage, sole ulcer, white line disease), days after treatment. */
export const clawHornProtocol = {
  lesions: ["SU", "SH", "WL"],
  /** Lame cows seen again; a lost block was replaced. */
  firstRecheck: { from: 5, to: 11 } satisfies DayWindow,
  /** Seen again and the block taken off. */
  blockOff: { from: 25, to: 31 } satisfies DayWindow,
  outcomeDays: 35,
  painReliefDays: 3,
} as const;
