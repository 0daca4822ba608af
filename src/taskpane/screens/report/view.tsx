import { Note, TextList } from "../../parts/blocks";
import { isBusy, LiveStatus } from "../../parts/live-blocks/live-status";
import type { LiveEvent, LiveState } from "../../parts/live-blocks/state";
import { NumbersTable } from "../../parts/pictures/numbers-table";
import { SlowStatus } from "../../parts/slow-status";
import { TypedField } from "../../parts/typed-field";
import type { FoundRow } from "./changes";
import { DUE_HEADINGS, type DuePart } from "./due-part";
import { type DrawnUp, namedThings, type NoReport, type Report } from "./report";
import { isAtWork, type ReportEvent, type ReportState } from "./state";
import { THINGS_NAMED } from "./things";
import type { WrittenReport } from "./written";

export interface ReportViewProps {
  readonly live: LiveState;
  readonly state: ReportState;
  /** undefined while it is being drawn up. */
  readonly report: DrawnUp | undefined;
  /** The report that was written last, of those that the workbook can take back. */
  readonly written: WrittenReport | undefined;
  /** Whether the report is of the days in the fields, and of the workbook as it was read last. */
  readonly isReady: boolean;
  /** The days that the report stands on, as date fields hold them. */
  readonly days: { readonly visit: string; readonly since: string };
  onLive(event: LiveEvent): void;
  dispatch(event: ReportEvent): void;
}

/** Letters of notes that find room on two pages. */
const LONGEST_NOTES = 1000;

/** The report as the adviser makes it ready. */
export function ReportView(props: ReportViewProps) {
  const { live, state, report, written, days, onLive, dispatch } = props;
  const problemOf = (field: NoReport["field"]) =>
    report !== undefined && "problem" in report && report.field === field ? report.problem : undefined;
  return (
    <div class="report" aria-busy={isBusy(live)}>
      <h1>Visit report</h1>
      <LiveStatus state={live} dispatch={onLive} />
      <div class="typed-fields">
        <TypedField
          label="Day of the visit"
          type="date"
          value={days.visit}
          problem={problemOf("visit")}
          onText={(text) => onLive({ type: "typed", field: "visit", text })}
        />
        <TypedField
          label="Visit before"
          type="date"
          value={days.since}
          problem={problemOf("since")}
          onText={(text) => onLive({ type: "typed", field: "since", text })}
        />
      </div>
      {report !== undefined && "title" in report && <Body {...props} report={report} />}
      <SlowStatus doing={doingOf(state)} />
      <p class="readers-only" role="status">
        {state.notice?.text ?? ""}
      </p>
      {state.notice !== undefined && (
        <Note
          kind={state.notice.kind === "done" ? "remark" : "error"}
          title={state.notice.kind === "done" ? "Done" : "Not done"}
        >
          <p>{state.notice.text}</p>
          <p class="report-buttons">
            <button type="button" onClick={() => dispatch({ type: "notice read" })}>
              Close
            </button>
          </p>
        </Note>
      )}
      {written !== undefined && (
        <p class="report-buttons">
          <button
            type="button"
            disabled={isAtWork(state)}
            onClick={() => dispatch({ type: "take back pressed", written })}
          >
            Take back the report on sheet {written.sheet}
          </button>
        </p>
      )}
    </div>
  );
}

function doingOf({ writing, takingBack }: ReportState): string | undefined {
  if (writing !== undefined) return "Writing the report …";
  return takingBack !== undefined ? "Taking the report back …" : undefined;
}

function Body({ report, isReady, state, dispatch }: ReportViewProps & { readonly report: Report }) {
  return (
    <>
      <p>{report.period}</p>
      <Things report={report} state={state} dispatch={dispatch} />
      <FoundSection title="What was found, and what changed" rows={report.found} />
      {report.lesions.length > 0 && (
        <FoundSection
          title="Lesions: new cases per 100 cow-years"
          rows={report.lesions.map((row) => ({ ...row, name: `${row.name}: ${row.cases}` }))}
        />
      )}
      {report.due !== undefined && <DueSection due={report.due} nothing={report.nothingDue} />}
      {report.missing.length > 0 && (
        <Note kind="remark" title="Not in the report">
          <TextList texts={report.missing} />
        </Note>
      )}
      <TypedField
        label="Heading of the report, such as the farm"
        value={state.heading}
        onText={(text) => dispatch({ type: "heading typed", text })}
      />
      <div class="typed-field">
        <label for="report-notes">Your notes</label>
        <textarea
          id="report-notes"
          rows={4}
          maxLength={LONGEST_NOTES}
          value={state.notes}
          aria-describedby={state.notesOf === undefined ? undefined : "report-notes-kept"}
          onInput={(event) => dispatch({ type: "notes typed", text: event.currentTarget.value })}
        />
        {state.notesOf !== undefined && (
          <small id="report-notes-kept">Kept from {state.notesOf}. Clear them where they are not of this visit.</small>
        )}
      </div>
      <p class="report-buttons">
        <button type="button" disabled={!isReady} onClick={() => dispatch({ type: "print pressed" })}>
          Print
        </button>
        <button
          type="button"
          disabled={!isReady || isAtWork(state)}
          onClick={() => dispatch({ type: "write pressed" })}
        >
          Write as a sheet
        </button>
      </p>
    </>
  );
}

function Things({
  report,
  state,
  dispatch,
}: Pick<ReportViewProps, "state" | "dispatch"> & { readonly report: Report }) {
  const named = new Set(namedThings(report, state.chosen).map(({ id }) => id));
  const isFull = named.size >= THINGS_NAMED;
  return (
    <fieldset class="report-things">
      <legend>Three things to look at</legend>
      {report.things.length === 0 && <p>{report.noThings}</p>}
      {report.things.map(({ id, title, why, look }) => (
        <label key={id} class="report-thing">
          <input
            type="checkbox"
            checked={named.has(id)}
            disabled={isFull && !named.has(id)}
            onChange={() => dispatch({ type: "thing pressed", id, report })}
          />
          <span>
            <b>{title}</b>
            <span>{why}</span>
            <span class="quiet">{look}</span>
          </span>
        </label>
      ))}
      {isFull && report.things.length > THINGS_NAMED && (
        <p class="quiet">To name another, take one of the three out first.</p>
      )}
    </fieldset>
  );
}

function FoundSection({ title, rows }: { readonly title: string; readonly rows: readonly FoundRow[] }) {
  return (
    <section aria-label={title}>
      <h2 class="strong">{title}</h2>
      <ul class="report-found">
        {rows.map(({ name, now, before, change }) => (
          <li key={name}>
            <b>{name}</b>
            <span>
              Now {now}; before {before}
            </span>
            {change !== "" && <span class="quiet">{change}</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}

function DueSection({ due: { counts }, nothing }: { readonly due: DuePart; readonly nothing: string }) {
  return (
    <section aria-label="What is due">
      <h2 class="strong">What is due</h2>
      {counts.length === 0 ? (
        <p>{nothing}</p>
      ) : (
        <NumbersTable
          caption="Counts of what is due"
          columns={[{ heading: "Work" }, ...DUE_HEADINGS.map((heading) => ({ heading, format: "0" }))]}
          rows={counts.map(({ name, overdue, today, ahead }) => [name, overdue, today, ahead])}
        />
      )}
      {counts.length > 0 && <p class="quiet">The first lines stand in the printed report, all of them under Due.</p>}
    </section>
  );
}
