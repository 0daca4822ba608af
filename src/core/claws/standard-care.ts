import { commonPractice, type Source } from "../shared/source";
import { clawHornProtocol } from "../reference/thomas-2015";

/** What is done after treating a foot when neither the user nor a rules row says otherwise. */
export const standardCare = {
  /** Common practice, no source. */
  blockCheckDays: 14,
  /** Middle of the 25 to 31 days of Thomas et al. 2015. */
  blockOffDays: (clawHornProtocol.blockOff.from + clawHornProtocol.blockOff.to) / 2,
  /** Thomas et al. 2015; common practice is two to three days. */
  painReliefDays: clawHornProtocol.painReliefDays,
  /** Common practice, no source. */
  bandageOffHours: 24,
} as const;

export const blockPractice: Source = commonPractice("a block is looked at two weeks after it was put on");
export const bandagePractice: Source = commonPractice("a bandage comes off within 24 hours");
export const painReliefPractice: Source = commonPractice("pain relief is given for two to three days, as prescribed");
export const topicalPractice: Source = commonPractice("topical treatment is given two or three times in all");
