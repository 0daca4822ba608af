import type { DaySerial } from "../shared/days";

/** The fullest day of so long before is what a scoring of the whole herd looks like. */
const LOOK_BACK_DAYS = 365;
/** Fewer cows than this share of the fullest day were scored one by one, as at the chute. Common practice, no source. */
const HERD_SHARE = 0.5;

/** The last day on which the herd was scored walking, and not single cows at the chute. `dates` holds a day a score. */
export function lastHerdScoring(dates: readonly DaySerial[]): DaySerial | undefined {
  const scoresOn = new Map<DaySerial, number>();
  for (const date of dates) scoresOn.set(date, (scoresOn.get(date) ?? 0) + 1);
  const days = [...scoresOn].sort(([a], [b]) => b - a);
  const last = days[0]?.[0] ?? 0;
  const recent = days.filter(([date]) => date > last - LOOK_BACK_DAYS);
  const fullest = recent.reduce((most, [, scores]) => Math.max(most, scores), 0);
  return recent.find(([, scores]) => scores > HERD_SHARE * fullest)?.[0];
}
