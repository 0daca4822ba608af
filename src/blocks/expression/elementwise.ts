import type { PlainCell } from "../../workbook/port";
import { isRows, type Rows, type Value } from "./values";
import { type ErrorCode, Fault, isError } from "./fault";

/** What an ordinary formula makes of two kinds of cells that do not go together. */
const WRONG_KIND = "#VALUE!";

/**
 * Runs a computation over cells, and over columns row by row, as Excel does: a single cell goes with every row. An
 * error in a row stays in that row; one in single cells is a Fault.
 */
export function elementwise(values: readonly Value[], compute: (...cells: PlainCell[]) => PlainCell): Value {
  const run = (cells: readonly PlainCell[]): PlainCell => cells.find(isError) ?? compute(...cells);
  const lengths = values.filter(isRows).map((rows) => rows.length);
  if (lengths.length === 0) return orFault(run(values as readonly PlainCell[]));
  const length = Math.max(...lengths);
  const rows = new Array<PlainCell[]>(length);
  // Long lists go through here: the cells of a row are handed over in one array, filled anew for each.
  const cells = new Array<PlainCell>(values.length);
  for (let row = 0; row < length; row++) {
    for (let place = 0; place < values.length; place++) cells[place] = cellOf(values[place]!, row);
    rows[row] = [run(cells)];
  }
  return rows;
}

/** The cell of a row; a column of one row goes with every row, a shorter one has an error below its end. */
export function cellOf(value: Value, row: number): PlainCell {
  if (!isRows(value)) return value;
  const cells = value.length === 1 ? value[0] : value[row];
  return cells === undefined ? "#N/A" : (cells[0] ?? null);
}

/** A single cell, or a Fault where it holds an error. */
export function orFault(cell: PlainCell): PlainCell {
  if (isError(cell)) throw new Fault(cell, meaningOf(cell));
  return cell;
}

/** A number as arithmetic takes it: a blank is 0, a text is an error. */
export function asNumber(cell: PlainCell): number | ErrorCode {
  if (typeof cell === "number") return cell;
  if (cell === null) return 0;
  return typeof cell === "boolean" ? Number(cell) : WRONG_KIND;
}

const MEANINGS: Readonly<Partial<Record<ErrorCode, string>>> = {
  "#VALUE!": "A value is of the wrong kind, such as text in place of a number.",
  "#DIV/0!": "Something is divided by zero or by a blank cell.",
  "#N/A": "A value that is needed is not there.",
};

function meaningOf(code: ErrorCode): string {
  return MEANINGS[code] ?? `A cell that is needed shows ${code}.`;
}

/** Single cells or the one cell of a range. */
export function single(value: Value): PlainCell {
  return orFault(cellOf(value, 0));
}

export function rowsOf(value: Value): Rows {
  return isRows(value) ? value : [[value]];
}
