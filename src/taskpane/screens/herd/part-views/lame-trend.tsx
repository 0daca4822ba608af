import { isoDate } from "../../../../core/shared/days";
import { Lines } from "../../../parts/pictures/lines";
import { shortMonthName } from "../month-names";
import type { RowsViewProps } from "./view-props";

/** Labels that find room below the axis. */
const MOST_LABELS = 6;

/** A series of days with shares: the day, the share, and its limits where the block gives them. */
export function LameTrend({ part: { part, rows, problems } }: RowsViewProps) {
  const [headings = [], ...all] = rows;
  const points = all.filter(([day]) => typeof day === "number");
  if (points.length === 0) return <p>{problems[0] ?? "The cows were not scored in this time."}</p>;
  const days = points.map(([day]) => Number(day));
  const column = (heading: RegExp): (number | undefined)[] | undefined => {
    const at = headings.findIndex((text, place) => place > 0 && heading.test(String(text)));
    if (at < 0) return undefined;
    return points.map((row) => (typeof row[at] === "number" ? row[at] : undefined));
  };
  const values = column(/share/i) ?? points.map(() => undefined);
  const [lows, highs] = [column(/^low$/i), column(/^high$/i)];
  const every = Math.max(1, Math.ceil(points.length / MOST_LABELS));
  return (
    <>
      <Lines
        title={part.kind === "series" ? part.title : "Share of lame cows"}
        at={days}
        names={days.map(isoDate)}
        timeLabels={days.flatMap((at, place) => (place % every === 0 ? [{ at, text: shortMonthName(at) }] : []))}
        series={[
          {
            name: "Share lame",
            values,
            ...(lows === undefined ? {} : { lows }),
            ...(highs === undefined ? {} : { highs }),
          },
        ]}
        unit="of the cows scored"
        format="0.0%"
      />
      {points.length === 1 && <p class="quiet">One scoring shows no trend.</p>}
    </>
  );
}
