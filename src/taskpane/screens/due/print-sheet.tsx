import "./print-sheet.css";
import { Fragment } from "preact";
import { outcomes } from "../../../core/claws/next-look";
import { recheckStatus } from "../../../core/claws/recheck-status";
import { isoDate } from "../../../core/shared/days";
import { AS_PRESCRIBED, TRAINED_TRIMMER, VETERINARIAN } from "../../../functions/cautions";
import { placesOf } from "./grouping";
import type { DueLine } from "./line";
import { openLines, summary } from "./model";
import { type CowRow, rowsByPlace } from "./print-rows";
import type { DueState } from "./state";

/** The list on paper, for the parlour wall: a row a cow and foot, with boxes to tick. */
export function PrintSheet({ state }: { readonly state: DueState }) {
  const lines = openLines(state);
  return (
    <section class="due-print" aria-label="Print sheet">
      <ul>
        {[VETERINARIAN, AS_PRESCRIBED, TRAINED_TRIMMER].map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <table>
        <thead>
          <tr>
            <th colSpan={COLUMNS} class="title">
              Due on {isoDate(state.day)} <span>{summary(state)}</span>
            </th>
          </tr>
          <tr>
            <th scope="col">Cow</th>
            <th scope="col">Foot</th>
            <th scope="col">To do</th>
            {outcomes.map((outcome) => (
              <th key={outcome} scope="col" class="tick">
                {outcome}
              </th>
            ))}
            <th scope="col" class="notes">
              Notes
            </th>
          </tr>
        </thead>
        {rowsByPlace(lines, placesOf(lines)).map(({ place, rows }) => (
          <Fragment key={place}>
            <tbody>
              <tr>
                <th scope="rowgroup" colSpan={COLUMNS} class="place">
                  {place} ({rows.length})
                </th>
              </tr>
            </tbody>
            {rows.map((row) => (
              <CowRows key={row.cow} row={row} state={state} />
            ))}
          </Fragment>
        ))}
      </table>
    </section>
  );
}

/** Cow, foot, what to do and notes beside the outcomes. */
const COLUMNS = outcomes.length + 4;

function CowRows({ row: { cow, feet }, state }: { readonly row: CowRow; readonly state: DueState }) {
  return (
    <tbody>
      {feet.map((lines, index) => (
        <tr key={index}>
          {index === 0 && (
            <th scope="row" rowSpan={feet.length} class="cow">
              {cow === "" ? "–" : cow}
            </th>
          )}
          <td class="foot">{footName(lines[0]!)}</td>
          <td>
            {lines.map((line) => (
              <span key={line.key} class="job">
                <span class="box" /> {line.what} <em>{recheckStatus(line.due, false, state.day)}</em>
              </span>
            ))}
          </td>
          {outcomes.map((outcome) => (
            <td key={outcome} class="tick">
              {lines[0]!.finding !== undefined && <span class="box" />}
            </td>
          ))}
          <td class="notes" />
        </tr>
      ))}
    </tbody>
  );
}

function footName({ finding }: DueLine): string {
  return [finding?.foot, finding?.claw, finding?.lesion].filter(Boolean).join(" ");
}
