import type { CellEdit } from "../../book-host";
import { cellAddress, type CellPosition } from "../../cell-address";
import { TEXT_FORMAT } from "../../number-format";
import type { PlainCell } from "../../port";
import { plainCell, plainValue, standsFor } from "../../saving/row-match";
import { cellCalculated, cellChanged } from "../../table-error";
import type { TypedValue } from "../../table-port";
import { enteredValue, isFormula, marksMissing } from "../tables/cells";

/**
 * Cells that are asked or written at once: Excel on the web takes and answers at most 5 MB, and a long note takes
 * some thousand bytes.
 */
export const CELLS_AT_ONCE = 1000;

/** An edit with the cell's own number format. */
export interface CheckedEdit {
  readonly edit: CellEdit;
  readonly at: CellPosition;
  readonly ownFormat: string;
  /** The number format to be given; undefined where the cell's own will do. */
  readonly format: string | undefined;
}

/** Cells below each other in one column. */
type Run = readonly CheckedEdit[];

interface WrittenRun {
  readonly run: Run;
  readonly before: Excel.Range;
  readonly after: Excel.Range;
}

/**
 * Writes cells, as many in one batch as Excel takes. What stands in each is read in the same batch, just before it is
 * written over: nobody can come in between unseen. Whoever did gets their cell back, and all edits are undone.
 */
export async function writeCells(context: Excel.RequestContext, edits: readonly CheckedEdit[]): Promise<void> {
  const done: CheckedEdit[] = [];
  for (const batch of batchesOf(edits)) {
    const written = batch.map((run) => queueRun(context, run));
    await context.sync();
    const conflict = conflictIn(written);
    if (conflict !== undefined) {
      await undoCells(context, done);
      for (const one of written) queueBefore(context, one);
      await context.sync();
      throw conflict;
    }
    done.push(...batch.flat());
    if (markTexts(written)) await context.sync();
  }
}

/** Takes back what stands of edits; cells that someone changed since are theirs. */
export async function undoCells(context: Excel.RequestContext, edits: readonly CheckedEdit[]): Promise<void> {
  for (let from = 0; from < edits.length; from += CELLS_AT_ONCE) {
    const asked = edits.slice(from, from + CELLS_AT_ONCE).map((one) => {
      const cell = rangeAt(context, one.edit.sheet, one.at);
      cell.load("values");
      return { one, cell };
    });
    await context.sync();
    for (const { one, cell } of asked) {
      const { was, set } = one.edit;
      const is = heldBy(cell);
      const wasWritten = is === was || standsFor(is, plainValue(set));
      if (wasWritten) queueCell(rangeAt(context, one.edit.sheet, one.at), one.format && one.ownFormat, was);
    }
    await context.sync();
  }
}

export function rangeAt(
  context: Excel.RequestContext,
  sheet: string,
  { row, column }: CellPosition,
  rows = 1,
): Excel.Range {
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, rows, 1);
}

export function heldBy({ values }: Excel.Range, down = 0): PlainCell {
  const cell = plainCell(values[down]?.[0]);
  return typeof cell === "string" && cell.trim() === "" ? null : cell;
}

/** Neighbours go together, whatever order they come in. */
function batchesOf(edits: readonly CheckedEdit[]): Run[][] {
  const sheets = [...new Set(edits.map(({ edit }) => edit.sheet))];
  const inOrder = sheets.flatMap((sheet) =>
    edits
      .filter(({ edit }) => edit.sheet === sheet)
      .sort(({ at: a }, { at: b }) => a.column - b.column || a.row - b.row),
  );
  const batches: Run[][] = [];
  for (let from = 0; from < inOrder.length; from += CELLS_AT_ONCE) {
    batches.push(runsOf(inOrder.slice(from, from + CELLS_AT_ONCE)));
  }
  return batches;
}

function runsOf(edits: readonly CheckedEdit[]): Run[] {
  const runs: CheckedEdit[][] = [];
  for (const one of edits) {
    const last = runs.at(-1)?.at(-1);
    const isBelow =
      last?.edit.sheet === one.edit.sheet && last.at.column === one.at.column && last.at.row === one.at.row - 1;
    if (isBelow) runs.at(-1)!.push(one);
    else runs.push([one]);
  }
  return runs;
}

function queueRun(context: Excel.RequestContext, run: Run): WrittenRun {
  const { edit, at } = run[0]!;
  const place = (): Excel.Range => rangeAt(context, edit.sheet, at, run.length);
  const before = place();
  before.load("values,formulas");
  const after = place();
  const formats = run.map(({ format, edit: { set } }) => ({ format: format ?? null, isLast: comesLast(format, set) }));
  const queueFormats = (areLast: boolean): void => {
    const chosen = formats.map(({ format, isLast }) => [isLast === areLast ? format : null]);
    if (chosen.some(([format]) => format !== null)) after.numberFormat = chosen;
  };
  queueFormats(false);
  after.values = run.map(({ edit: { set } }) => [enteredValue(set)]);
  queueFormats(true);
  after.load("values");
  return { run, before, after };
}

/** The format comes first, but that of text last: a number put into a cell for text becomes text. */
function comesLast(format: string | undefined, value: TypedValue): boolean {
  return format === TEXT_FORMAT && typeof value !== "string";
}

function queueCell(cell: Excel.Range, format: string | undefined, value: PlainCell): void {
  const isLast = comesLast(format, value);
  if (format !== undefined && !isLast) cell.numberFormat = [[format]];
  cell.values = [[enteredValue(value)]];
  if (format !== undefined && isLast) cell.numberFormat = [[format]];
}

/** Why the writing of cells must be taken back; undefined where each held what it was to hold. */
function conflictIn(written: readonly WrittenRun[]): Error | undefined {
  for (const { run, before } of written) {
    for (const [down, { edit, at }] of run.entries()) {
      if (isFormulaAt(before, down)) return cellCalculated(edit.sheet, cellAddress(at));
      const is = heldBy(before, down);
      if (is !== edit.was) return cellChanged(edit.sheet, edit.address, edit.was, is);
    }
  }
  return undefined;
}

function queueBefore(context: Excel.RequestContext, { run, before }: WrittenRun): void {
  run.forEach(({ edit, at, format, ownFormat }, down) => {
    const cell = rangeAt(context, edit.sheet, at);
    queueCell(cell, format && ownFormat, plainCell(before.values[down]?.[0]));
    if (isFormulaAt(before, down)) cell.formulas = [[before.formulas[down]?.[0]]];
  });
}

function isFormulaAt({ values, formulas }: Excel.Range, down: number): boolean {
  return isFormula(formulas[down]?.[0], values[down]?.[0]);
}

function markTexts(written: readonly WrittenRun[]): boolean {
  const marks = written.map(({ run, after }) => {
    const marked = marksMissing(
      after.values,
      run.map(({ edit: { set } }) => [set]),
    );
    if (marked !== undefined) after.values = marked;
    return marked !== undefined;
  });
  return marks.some(Boolean);
}
