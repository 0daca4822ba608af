import { formatNumber } from "../../../format";
import { NumbersTable } from "../../../parts/pictures/numbers-table";
import { numberIn, recordsIn, textIn } from "../rows";
import type { RowsViewProps } from "./view-props";

/** Places that someone looks at on one walk through the barn. */
const MOST_PLACES = 4;

/** HERD.CAUSE.REVIEW: where in the barn to look, most findings first. */
export function Causes({ part }: RowsViewProps) {
  const rows = recordsIn(part.rows);
  const places = rows.filter((row) => numberIn(row, "Cases") !== undefined);
  if (places.length === 0) return <p>{textIn(rows[0] ?? {}, "Where to look")}.</p>;
  return (
    <>
      <ol class="herd-places">
        {places.slice(0, MOST_PLACES).map((row) => (
          <li key={textIn(row, "Where to look")}>
            <h3>{textIn(row, "Where to look")}</h3>
            <p>Look at: {textIn(row, "Go and see")}.</p>
            <p class="quiet">
              {formatNumber(numberIn(row, "Cases")!, "#,##0")} cases,{" "}
              {formatNumber(numberIn(row, "Share of findings") ?? 0, "0%")} of the findings
              {textIn(row, "Note") === "" ? "" : `: ${textIn(row, "Note")}`}. {textIn(row, "Evidence")}.
            </p>
          </li>
        ))}
      </ol>
      <details class="picture-numbers">
        <summary>Show all {places.length} places in numbers</summary>
        <NumbersTable
          caption="Numbers: where to look"
          columns={[
            { heading: "Where to look" },
            { heading: "Cases", format: "0" },
            { heading: "Share", format: "0%" },
            { heading: "Source" },
          ]}
          rows={places.map((row) => [
            textIn(row, "Where to look"),
            numberIn(row, "Cases"),
            numberIn(row, "Share of findings"),
            textIn(row, "Source"),
          ])}
        />
      </details>
      <p class="quiet">
        This ranks places by how many findings point there. It names no cause: only looking can. One finding may point
        to several places. Talk it over with the herd's veterinarian.
      </p>
    </>
  );
}
