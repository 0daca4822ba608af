import { useId } from "preact/hooks";
import { plainNumber } from "../../format";
import { Picture } from "./picture";
import type { TwoByTwoRow } from "./picture-data";
import { percent, percentAlong } from "./scale";
import { seriesFill, SeriesPatterns } from "./series-looks";
import { twoByTwoSentence } from "./two-by-two-words";

export interface TwoByTwoProps {
  readonly title: string;
  readonly rows: readonly [TwoByTwoRow, TwoByTwoRow];
  /** "high count" */
  readonly having: string;
  /** "low count" */
  readonly not: string;
}

/** Two groups side by side, each as the part that has the thing and the part that has not. */
export function TwoByTwo({ title, rows, having, not }: TwoByTwoProps) {
  const picture = useId();
  const columns = [{ heading: "Group" }, { heading: having }, { heading: not }, { heading: "All" }];
  const sums = rows.map((row) => [row.name, row.having, row.not, row.having + row.not]);
  const total = [1, 2, 3].map((at) => rows.reduce((sum, _, index) => sum + Number(sums[index]![at]), 0));
  return (
    <Picture
      title={title}
      sentence={twoByTwoSentence(rows, having)}
      numbers={{ caption: `Numbers: ${title}`, columns, rows: [...sums, ["All", ...total]] }}
    >
      <ul class="two-by-two">
        {rows.map((row) => {
          const all = row.having + row.not;
          const part = percentAlong(row.having, all);
          return (
            <li key={row.name}>
              <p class="interval-name">
                <span>
                  {row.name}, {plainNumber(all)}
                </span>
                <b>{all === 0 ? "–" : `${Math.round(part)} % ${having}`}</b>
              </p>
              {all > 0 && (
                <svg class="two-by-two-bar" aria-hidden="true">
                  <SeriesPatterns picture={picture} />
                  <rect class="series-fill series-0" width={percent(part)} height="100%" />
                  <rect
                    class="series-fill series-1"
                    fill={seriesFill(picture, 1)}
                    x={percent(part)}
                    width={percent(100 - part)}
                    height="100%"
                  />
                </svg>
              )}
              <p class="interval-words">
                {plainNumber(row.having)} {having}, {plainNumber(row.not)} {not}
              </p>
            </li>
          );
        })}
      </ul>
    </Picture>
  );
}
