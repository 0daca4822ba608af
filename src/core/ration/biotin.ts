import { BIOTIN_MG_PER_DAY } from "../reference/biotin-trials";

/** A dose of biotin against that of the trials, in words. */
export function biotinInWords(mgPerDay: number): string {
  if (mgPerDay < BIOTIN_MG_PER_DAY) return `under the ${BIOTIN_MG_PER_DAY} mg a day of the trials`;
  return mgPerDay === BIOTIN_MG_PER_DAY
    ? `the ${BIOTIN_MG_PER_DAY} mg a day of the trials`
    : `over the ${BIOTIN_MG_PER_DAY} mg a day of the trials: no gain shown`;
}
