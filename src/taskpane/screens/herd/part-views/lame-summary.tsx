import { counted, formatNumber } from "../../../format";
import { limitsText } from "../../../parts/pictures/interval-words";
import { NumbersTable } from "../../../parts/pictures/numbers-table";
import { numberIn, recordsIn } from "../rows";
import type { RowsViewProps } from "./view-props";

/** Below this number of cows a share says little: one cow more or less moves it by five points. */
const FEW_COWS = 20;

/** HERD.LAME.SUMMARY: one scoring in words. */
export function LameSummary({ part }: RowsViewProps) {
  const [row = {}] = recordsIn(part.rows);
  const number = (heading: string): number => numberIn(row, heading) ?? 0;
  const scored = number("Scored");
  return (
    <>
      <p>
        {counted(scored, "cow")} scored: {formatNumber(number("Lame"), "#,##0")} lame,{" "}
        {formatNumber(number("Share lame"), "0.0%")} (95 % limits {limitsText(number("Low"), number("High"), "0.0%")}).{" "}
        {formatNumber(number("Severe"), "#,##0")} of them severely lame: these need help today.
        {number("Left out") > 0 && ` ${counted(number("Left out"), "row")} without a score left out.`}
      </p>
      {scored < FEW_COWS && <p class="quiet">So few cows: one more or less moves the share by much.</p>}
      <details class="picture-numbers">
        <summary>Show the numbers of that scoring</summary>
        <NumbersTable
          caption="Numbers of the scoring"
          columns={[{ heading: "Figure" }, { heading: "Value" }]}
          rows={part.rows[0]!.map((heading) => {
            const value = number(String(heading));
            return [String(heading), value <= 1 && /share|low|high/i.test(String(heading)) ? formatNumber(value, "0.0%") : value]; // oxfmt-ignore
          })}
        />
      </details>
    </>
  );
}
