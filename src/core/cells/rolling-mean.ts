import { addMonths, dateOf, type DaySerial, isoDate, serialOf } from "../shared/days";
import { unavailable } from "../shared/domain-error";
import { averagesOf } from "./averages";

/**
 * How several months of tank counts become one figure: the geometric mean of every sample, or of the months' own
 * geometric means. The regulation leaves it open; Fenlon 2017 show both.
 */
export type RollingWay = "all samples" | "monthly means";

/** A stretch of days, both included, with the counts of its samples. */
export interface Stretch {
  readonly from: DaySerial;
  readonly to: DaySerial;
  readonly counts: readonly number[];
}

/**
 * The months up to a day, oldest first, with their samples. For every sample alike, the months are counted back from
 * the day itself (16 December to 15 March); for monthly means they are those of the calendar, the last one up to the
 * day. Throws when a month has no sample: at least one a month is the rule of Regulation (EC) 853/2004.
 */
export function monthsOfSamples(
  dates: ArrayLike<number>,
  counts: ArrayLike<number>,
  upTo: DaySerial,
  months: number,
  way: RollingWay,
): Stretch[] {
  const first = way === "all samples" ? upTo + 1 : startOfNextMonth(upTo);
  const starts = Array.from({ length: months + 1 }, (_, index) => addMonths(first, index - months));
  const stretches = Array.from({ length: months }, (_, index) => ({
    from: starts[index]!,
    to: Math.min(starts[index + 1]! - 1, upTo),
    counts: [] as number[],
  }));
  for (let row = 0; row < counts.length; row++) {
    const [day, count] = [dates[row]!, counts[row]!];
    if (Number.isNaN(count) || !(day >= starts[0]! && day <= upTo)) continue;
    stretches.find(({ to }) => day <= to)!.counts.push(count);
  }
  const empty = stretches.find((stretch) => stretch.counts.length === 0);
  if (empty !== undefined) {
    throw unavailable(
      `counts holds no sample from ${isoDate(empty.from)} to ${isoDate(empty.to)}: a rolling mean takes at least one a month`,
    );
  }
  return stretches;
}

/** The rolling geometric mean of those months, in the unit of the counts. Sources: Regulation 853/2004, Fenlon 2017. */
export function rollingMean(months: readonly Stretch[], way: RollingWay): number {
  const values =
    way === "all samples"
      ? months.flatMap(({ counts }) => counts)
      : months.map(({ counts }) => averagesOf(counts).geometric);
  return averagesOf(values).geometric;
}

function startOfNextMonth(day: DaySerial): DaySerial {
  const { year, month } = dateOf(day);
  return month === 12 ? serialOf({ year: year + 1, month: 1, day: 1 }) : serialOf({ year, month: month + 1, day: 1 });
}
