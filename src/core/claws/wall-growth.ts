import { commonPractice, type Source } from "../shared/source";

/** Common practice, no source. */
export const WALL_GROWTH_MM_PER_MONTH = 6;

export const wallGrowthPractice: Source = commonPractice(
  `the claw wall grows about ${WALL_GROWTH_MM_PER_MONTH} mm a month, from 5 to 13 mm by age, floor and season`,
);

/** Months since a mark on the wall left the line where skin meets horn, from how far below it stands. */
export function monthsSinceMark(distanceMm: number, mmPerMonth: number): number {
  return distanceMm / mmPerMonth;
}
