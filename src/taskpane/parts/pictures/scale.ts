/** Steps between the ticks of an axis, times a power of ten: numbers that people count in. */
const ROUND_STEPS = [1, 2, 5, 10] as const;
/** More ticks than this would crowd a pane of 320 pixels. */
const MOST_STEPS = 4;

/**
 * The ticks of an axis from 0 to the highest value or just above it, evenly apart by 1, 2 or 5 times a power of ten.
 * With `whole` the ticks are whole numbers, as counts need them. A highest value of 0 still gets an axis.
 */
export function axisTicks(highest: number, { whole = false } = {}): readonly number[] {
  const top = highest > 0 ? highest : 1;
  const least = top / MOST_STEPS;
  const power = 10 ** Math.floor(Math.log10(least));
  const rounded = ROUND_STEPS.find((step) => step * power >= least * (1 - Number.EPSILON)) ?? 10;
  const step = Math.max(rounded * power, whole ? 1 : 0);
  const steps = Math.max(1, Math.ceil(withoutNoise(top / step)));
  return Array.from({ length: steps + 1 }, (_, index) => withoutNoise(index * step));
}

/** Digits after which a computer's number is noise. */
const SOUND_DIGITS = 12;

function withoutNoise(value: number): number {
  return Number(value.toPrecision(SOUND_DIGITS));
}

/** A whisker may run on for so many times the highest value or target; beyond it is cut, and marked as cut. */
const WHISKER_TIMES = 1.6;

/**
 * The highest value that an axis must hold. Limits of a small count can lie far out and would press the bars together:
 * they count up to 1.6 times the highest value or target.
 */
export function highestShown(values: readonly number[], limits: readonly number[]): number {
  const most = Math.max(0, ...values);
  const farthest = Math.max(0, ...limits);
  return most === 0 ? farthest : Math.max(most, Math.min(farthest, WHISKER_TIMES * most));
}

const ALL_PERCENT = 100;
/** A hundredth of a percent of the pane's width is less than a pixel. */
const PERCENT_DECIMALS = 2;

/** Where a value lies between two ends, in percent of the way, never outside them. */
export function percentAlong(value: number, to: number, from = 0): number {
  const share = to === from ? 0 : (value - from) / (to - from);
  return Number((ALL_PERCENT * Math.min(1, Math.max(0, share))).toFixed(PERCENT_DECIMALS));
}

/** As an attribute of a drawing. */
export function percent(along: number): string {
  return `${along}%`;
}

/** Every how many of so many labels can be written without touching, when `most` find room. */
export function labelEvery(count: number, most: number): number {
  return Math.max(1, Math.ceil(count / most));
}
