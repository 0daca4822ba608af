import "./print.css";
import { isoDate } from "../../../core/shared/days";
import type { FoundRow } from "./changes";
import { besideNotes, DUE_HEADINGS, type DuePart } from "./due-part";
import { noneNamed, type Report } from "./report";
import type { Thing } from "./things";
import { linesThatFit } from "./untold";

interface PrintProps {
  readonly report: Report;
  readonly things: readonly Thing[];
  readonly heading: string;
  readonly notes: string;
  /** Names of the papers and standards behind the figures. */
  readonly sources: readonly string[];
}

/** The report on paper: two pages at most. */
export function ReportPrint({ report, things, heading, notes, sources }: PrintProps) {
  const { title, period, found, lesions, due, missing, cautions } = report;
  return (
    <section class="report-print" aria-label="Report on paper">
      <header class="report-head">
        <h1>{title}</h1>
        {heading.trim() !== "" && <p class="for">{heading}</p>}
        <p>{period}</p>
      </header>
      <h2>Three things to look at</h2>
      <ol class="things">
        {things.map(({ id, title: name, why, look }) => (
          <li key={id}>
            <b>{name}.</b> {why} <span class="look">{look}</span>
          </li>
        ))}
      </ol>
      {things.length === 0 && <p>{noneNamed(report)}</p>}
      <h2>What was found, and what changed</h2>
      <FoundTable rows={found} first="Figure" />
      {lesions.length > 0 && (
        <>
          <h2>Lesions: new cases per 100 cow-years (95 % limits)</h2>
          <FoundTable
            rows={lesions.map((row) => ({ ...row, name: `${row.name}: ${row.cases}` }))}
            first="Lesion: new cases"
          />
        </>
      )}
      {due !== undefined && <DuePages due={besideNotes(due, notes)} nothing={report.nothingDue} />}
      {notes.trim() !== "" && (
        <>
          <h2>Notes</h2>
          <p class="notes">{notes}</p>
        </>
      )}
      <footer>
        {missing.length > 0 && (
          <>
            <h2>Not in the report</h2>
            <Lines texts={linesThatFit(missing, MISSING_SHOWN)} />
          </>
        )}
        <h2>Cautions</h2>
        <Lines texts={cautions} />
        <h2>Sources</h2>
        <p>{sources.join("; ")}. In full beside the figures, when the report is written as a sheet.</p>
      </footer>
    </section>
  );
}

/** More lines than this would run over two pages. */
const MISSING_SHOWN = 6;

function Lines({ texts }: { readonly texts: readonly string[] }) {
  return (
    <ul>
      {texts.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

function FoundTable({ rows, first }: { readonly rows: readonly FoundRow[]; readonly first: string }) {
  return (
    <table class="found">
      <thead>
        <tr>
          <th scope="col">{first}</th>
          <th scope="col">Now</th>
          <th scope="col">Before</th>
          <th scope="col">Change</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, now, before, change }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{now}</td>
            <td>{before}</td>
            <td>{change}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function DuePages({ due, nothing }: { readonly due: DuePart; readonly nothing: string }) {
  const { counts, first, more } = due;
  if (counts.length === 0) {
    return (
      <>
        <h2>What is due</h2>
        <p>{nothing}</p>
      </>
    );
  }
  return (
    <>
      <h2>What is due</h2>
      <table class="counts">
        <thead>
          <tr>
            <th scope="col">Work</th>
            {DUE_HEADINGS.map((heading) => (
              <th key={heading} scope="col">
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {counts.map(({ name, overdue, today, ahead }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{overdue}</td>
              <td>{today}</td>
              <td>{ahead}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table class="lines">
        <thead>
          <tr>
            <th scope="col">Cow</th>
            <th scope="col">Foot</th>
            <th scope="col">What to do</th>
            <th scope="col">Due</th>
          </tr>
        </thead>
        <tbody>
          {first.map(({ key, cow, finding, what, due }) => (
            <tr key={key}>
              <th scope="row">{cow === "" ? "whole herd" : cow}</th>
              <td>{[finding?.foot, finding?.lesion].filter(Boolean).join(" ")}</td>
              <td>{what}</td>
              <td>{isoDate(due)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {more > 0 && <p>and {more} more, on the list of what is due.</p>}
    </>
  );
}
