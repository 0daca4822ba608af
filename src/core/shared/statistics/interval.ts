/** Confidence limits of a figure. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The usual level of confidence. */
export const USUAL_LEVEL = 0.95;
