import { formatNumber } from "../../../format";
import { IntervalBars } from "../../../parts/pictures/interval-bars";
import { lesionSharesIn } from "../shares";
import type { RowsViewProps } from "./view-props";

/** Bars that a reader takes in; the others stand among the numbers. */
const MOST_BARS = 8;

/** HERD.LESION.SHARES: share of the cows examined with each lesion, the most frequent first. */
export function LesionShares({ part }: RowsViewProps) {
  const { lesions, all } = lesionSharesIn(part.rows);
  if (all === undefined || lesions.length === 0) return <p>No lesion was recorded in this time.</p>;
  return (
    <IntervalBars
      title={part.part.title}
      rowsAre="Lesion"
      rows={lesions.slice(0, MOST_BARS).map(({ name, cows, examined, share, low, high }) => ({
        label: name,
        value: share,
        low,
        high,
        remark: `${formatNumber(cows, "#,##0")} of ${formatNumber(examined, "#,##0")} cows`,
      }))}
      unit="of the cows examined"
      format="0%"
      numbers={{
        caption: "Numbers: cows with a lesion",
        columns: [
          { heading: "Lesion" },
          { heading: "Cows", format: "0" },
          { heading: "Examined", format: "0" },
          { heading: "Share", format: "0%" },
          { heading: "Low", format: "0%" },
          { heading: "High", format: "0%" },
        ],
        rows: [...lesions, all].map(({ name, cows, examined, share, low, high }) => [
          name,
          cows,
          examined,
          share,
          low,
          high,
        ]),
      }}
    />
  );
}
