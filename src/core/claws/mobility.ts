/** The two scales on which a cow's walk is scored. They are never converted into each other. */
export type MobilityScale = "0-3" | "1-5";
export type MobilityState = "sound" | "lame" | "severe";

interface ScaleSteps {
  readonly lowest: number;
  readonly highest: number;
  /** From here on a cow is called lame unless another cut-off is given. */
  readonly lameFrom: number;
  readonly severeFrom: number;
  /** Half scores are given on the scale 1-5 (Flower & Weary 2006); the steps 0-3 are defined as whole. */
  readonly step: number;
}

/** Sources: 0-3 Reader et al. 2011; 1-5 Sprecher et al. 1997, half scores Flower & Weary 2006. */
export const mobilityScales: Readonly<Record<MobilityScale, ScaleSteps>> = {
  "0-3": { lowest: 0, highest: 3, lameFrom: 2, severeFrom: 3, step: 1 },
  "1-5": { lowest: 1, highest: 5, lameFrom: 3, severeFrom: 4, step: 0.5 },
};

/** Whether the score can be given on the scale. */
export function isOnScale(score: number, scale: MobilityScale): boolean {
  const { lowest, highest, step } = mobilityScales[scale];
  return score >= lowest && score <= highest && Number.isInteger(score / step);
}

/** What a score stands for when cows are called lame from `cutoff` on. */
export function mobilityState(score: number, scale: MobilityScale, cutoff: number): MobilityState {
  if (score < cutoff) return "sound";
  return score >= mobilityScales[scale].severeFrom ? "severe" : "lame";
}
