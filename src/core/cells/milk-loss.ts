import { LOSS_BASE_THOUSAND, type LossModel, slopeFor } from "./loss-models";
import { scoreOfCount } from "./score";

/** Somatic cell score up to which nothing is counted as lost: that of 50 thousand, 2. */
export const LOSS_BASE_SCORE = scoreOfCount(LOSS_BASE_THOUSAND);

/** Doublings of a count, in thousand cells/mL, above the base; 0 at and below it, so that a loss is never negative. */
export function doublingsAboveBase(thousandPerMl: number): number {
  return thousandPerMl > LOSS_BASE_THOUSAND ? Math.log2(thousandPerMl / LOSS_BASE_THOUSAND) : 0;
}

/** Milk lost on the day of a test, kg. `thousandPerMl` in thousand cells/mL. Sources: those of the models. */
export function dailyLossKg(thousandPerMl: number, lactation: number | undefined, model: LossModel): number {
  return doublingsAboveBase(thousandPerMl) * slopeFor(model, lactation);
}

/**
 * Milk lost over a lactation, kg, from the mean of its tests' somatic cell scores. The scores are averaged, not the
 * counts: the models speak of the lactation's geometric mean, which is what the mean score stands for.
 */
export function lactationLossKg(meanScore: number, lactation: number | undefined, model: LossModel): number {
  return Math.max(0, meanScore - LOSS_BASE_SCORE) * slopeFor(model, lactation);
}
