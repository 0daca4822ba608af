import { recheckStatus } from "../../../core/claws/recheck-status";
import { isoDate } from "../../../core/shared/days";
import { AS_PRESCRIBED, TRAINED_TRIMMER, VETERINARIAN } from "../../../functions/cautions";
import { placesOf } from "./grouping";
import type { DueLine } from "./line";
import { openLines, summary } from "./model";
import { type CowRow, rowsByPlace } from "./print-rows";
import type { DueState } from "./state";

const TICKS = ["healed", "better", "same", "worse", "gone"] as const;

/** The list on paper, for the parlour wall: one row a cow, with boxes to tick. */
export function PrintSheet({ state }: { readonly state: DueState }) {
  const lines = openLines(state);
  return (
    <section class="due-print" aria-label="Print sheet">
      <table>
        <caption>
          Due on {isoDate(state.day)}: {summary(state)}
        </caption>
        <thead>
          <tr>
            <th scope="col">Cow</th>
            <th scope="col">To do</th>
            {TICKS.map((tick) => (
              <th key={tick} scope="col" class="tick">
                {tick}
              </th>
            ))}
            <th scope="col" class="notes">
              Notes
            </th>
          </tr>
        </thead>
        {rowsByPlace(lines, placesOf(lines)).map(({ place, rows }) => (
          <tbody key={place}>
            <tr>
              <th scope="rowgroup" colSpan={TICKS.length + 3} class="place">
                {place} ({rows.length})
              </th>
            </tr>
            {rows.map((row) => (
              <PrintRow key={row.cow} row={row} state={state} />
            ))}
          </tbody>
        ))}
      </table>
      <ul>
        {[VETERINARIAN, AS_PRESCRIBED, TRAINED_TRIMMER].map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}

function PrintRow({ row: { cow, lines }, state }: { readonly row: CowRow; readonly state: DueState }) {
  const hasFinding = lines.some(({ finding }) => finding !== undefined);
  return (
    <tr>
      <th scope="row" class="cow">
        {cow === "" ? "–" : cow}
      </th>
      <td>
        {lines.map((line) => (
          <span key={line.key} class="job">
            <span class="box" /> {job(line)} <em>{recheckStatus(line.due, false, state.day)}</em>
          </span>
        ))}
      </td>
      {TICKS.map((tick) => (
        <td key={tick} class="tick">
          {hasFinding && <span class="box" />}
        </td>
      ))}
      <td class="notes" />
    </tr>
  );
}

function job({ what, finding }: DueLine): string {
  return [finding?.foot, finding?.claw, finding?.lesion, what].filter(Boolean).join(" ");
}
