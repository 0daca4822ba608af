import { counted, dateText } from "../../../format";
import { numberIn, recordsIn, textIn } from "../rows";
import type { RowsViewProps } from "./view-props";

/** Cows that are shown at once; the sheet lists them all. */
const MOST_COWS = 10;

/** HERD.COW.REPEATS: cows with several new cases, the worst first. */
export function RepeatCows({ part }: RowsViewProps) {
  const cows = recordsIn(part.rows).filter((row) => textIn(row, "Cow") !== "");
  if (cows.length === 0) return <p>No cow has so many new cases in this time.</p>;
  const shown = cows.length > MOST_COWS ? `, the first ${MOST_COWS} of them here` : "";
  return (
    <>
      <h3>Cows with several new cases</h3>
      <p>
        {counted(cows.length, "cow")}, the worst first{shown}.
      </p>
      <ol class="herd-cows">
        {cows.slice(0, MOST_COWS).map((row) => (
          <li key={textIn(row, "Cow")}>
            <b>{textIn(row, "Cow")}</b>: {counted(numberIn(row, "New cases") ?? 0, "new case")},{" "}
            {counted(numberIn(row, "Repeats") ?? 0, "repeat")}
            <span class="quiet">
              {textIn(row, "Lesions")}
              {textIn(row, "Worst foot") !== "" && `; most on ${textIn(row, "Worst foot")}`}; last seen{" "}
              {dateText(numberIn(row, "Last seen") ?? 0)}
            </span>
          </li>
        ))}
      </ol>
      <p class="quiet">
        A list to talk over with the veterinarian, no order to cull or dry off. A severely lame cow must not be
        transported.
      </p>
    </>
  );
}
