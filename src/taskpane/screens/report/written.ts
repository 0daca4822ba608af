import type { BlockCell, CellBlock, PastSave } from "../../../workbook/table-port";
import { isoDate } from "../../../core/shared/days";
import type { Thing } from "./things";
import { DUE_HEADINGS } from "./due-part";
import { noneNamed, type Report } from "./report";

/** What the report says in words, as cells: they stand above the live figures. */
export function writtenWords(
  report: Report,
  things: readonly Thing[],
  { heading, notes }: { readonly heading: string; readonly notes: string },
): readonly (readonly BlockCell[])[] {
  const { title, period, found, due, nothingDue, missing, cautions } = report;
  const rows: (readonly BlockCell[])[] = [[title], [heading.trim()], [period], []];
  rows.push(["Three things to look at"]);
  for (const [index, { title: name, why, look }] of things.entries()) rows.push([`${index + 1}. ${name}`, why, look]);
  if (things.length === 0) rows.push([noneNamed(report)]);
  rows.push([], ["What was found", "now", "before", "change"]);
  for (const { name, now, before, change } of found) rows.push([name, now, before, change]);
  if (due !== undefined) {
    rows.push([], ["What is due", ...DUE_HEADINGS]);
    for (const { name, overdue, today, ahead } of due.counts) rows.push([name, overdue, today, ahead]);
    rows.push(due.counts.length === 0 ? [nothingDue] : ["Cow", "Foot", "What to do", "Due"]);
    for (const { cow, finding, what, due: day } of due.first) rows.push([cow, finding?.foot ?? "", what, { day }]);
    if (due.more > 0) rows.push([`and ${due.more} more: see what is due in the pane`]);
  }
  if (notes.trim() !== "")
    rows.push(
      [],
      ["Notes"],
      ...notes
        .trim()
        .split(/\r?\n/)
        .map((line) => [line]),
    );
  if (missing.length > 0) rows.push([], ["Not in the report"], ...missing.map((text) => [text]));
  rows.push([], ["Cautions"], ...cautions.map((text) => [text]));
  return rows.map((row) => row.map((cell) => (cell === "" ? null : cell)));
}

/** The sheet of a report. `attempt` 1 and more: earlier reports of the same day keep theirs. */
export function sheetName(visit: number, attempt: number): string {
  return `Visit ${isoDate(visit)}${attempt === 0 ? "" : ` ${attempt + 1}`}`;
}

/** A report that stands in the workbook. */
export interface WrittenReport {
  readonly id: string;
  readonly sheet: string;
}

const TITLE_START = "Visit report on sheet ";

/** What a written report is called among the saves of the workbook, which outlast the pane. */
export function saveTitle(sheet: string): string {
  return `${TITLE_START}${sheet}`;
}

/** The reports, of whatever day, among the saves that can be taken back, in their order. */
export function writtenAmong(saves: readonly PastSave[]): readonly WrittenReport[] {
  return saves
    .filter(({ title }) => title.startsWith(TITLE_START))
    .map(({ id, title }) => ({ id, sheet: title.slice(TITLE_START.length) }));
}

/** Words above, live figures below, a row free between, as one block that is written whole or not at all. */
export function joined(sheet: string, words: readonly (readonly BlockCell[])[], live: CellBlock): CellBlock {
  const width = Math.max(...words.map((row) => row.length), ...live.cells.map((row) => row.length));
  const rows = [...words, [], ...live.cells];
  const { room = { rows: live.cells.length, columns: width } } = live;
  return {
    ...live,
    sheet,
    address: "A1",
    cells: rows.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? null)),
    room: { rows: words.length + 1 + room.rows, columns: Math.max(width, room.columns) },
  };
}
