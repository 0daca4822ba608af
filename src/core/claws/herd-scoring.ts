import type { DaySerial } from "../shared/days";

/** The fullest day of so long, up to a day, is what a scoring of the whole herd looked like then. */
export const LOOK_BACK_DAYS = 365;
/** Fewer cows than this share of the fullest day were scored one by one, as at the chute. Common practice, no source. */
const HERD_SHARE = 0.5;

/** A day on which the herd was scored walking. */
export interface HerdScoring {
  readonly date: DaySerial;
  readonly cows: number;
  /** Cows scored on the fullest day of the year up to it. */
  readonly fullest: number;
}

/**
 * The last day up to `upTo` on which the herd was scored walking, and not single cows at the chute. `dates` holds a day
 * a score, NaN where it has none. Later scores never change what an earlier day was.
 */
export function lastHerdScoring(dates: ArrayLike<DaySerial>, upTo: DaySerial = Infinity): HerdScoring | undefined {
  const days = [...cowsByDay(dates, upTo)].sort(([a], [b]) => b - a);
  for (const [place, [date, cows]] of days.entries()) {
    let fullest = cows;
    for (let earlier = place + 1; earlier < days.length; earlier++) {
      const [day, scored] = days[earlier]!;
      if (day <= date - LOOK_BACK_DAYS) break;
      fullest = Math.max(fullest, scored);
    }
    if (cows > HERD_SHARE * fullest) return { date, cows, fullest };
  }
  return undefined;
}

/** Lists are mostly kept by day: the rows of a day stand together and are counted at once. */
function cowsByDay(dates: ArrayLike<DaySerial>, upTo: DaySerial): ReadonlyMap<DaySerial, number> {
  const cowsOn = new Map<DaySerial, number>();
  let row = 0;
  while (row < dates.length) {
    const date = dates[row]!;
    const first = row++;
    while (row < dates.length && dates[row] === date) row++;
    if (date <= upTo) cowsOn.set(date, (cowsOn.get(date) ?? 0) + row - first);
  }
  return cowsOn;
}
