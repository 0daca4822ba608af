import type { PlainCell } from "../../workbook/port";
import { rowsOf } from "./elementwise";
import type { Expression, Run } from "./expression";
import { type ErrorCode, Fault, isError } from "./fault";
import type { Rows } from "./values";

/** A cell of a list; a Fault that says where to mend it where it shows an error. `row` is counted from 0. */
export function soundCell(cell: PlainCell, row: number, cells: Expression, run: Run): PlainCell {
  if (isError(cell)) throw new Fault(cell, `${placeOf(cell, row, cells, run)} shows ${cell}: mend that cell first.`);
  return cell;
}

/** Where in the workbook the error of a computed column comes from: its own row, else the first that shows it. */
function placeOf(error: ErrorCode, row: number, cells: Expression, run: Run): string {
  const columns = columnsIn(cells).map(({ called, compute }) => ({ called: called!, rows: rowsOf(compute(run)) }));
  const place = ({ rows }: { readonly rows: Rows }): number =>
    rows[row]?.[0] === error ? row : rows.findIndex(([cell]) => cell === error);
  const source = columns.find(({ rows }) => rows[row]?.[0] === error) ?? columns.find((each) => place(each) >= 0);
  return source === undefined ? "A cell" : `${source.called}, row ${place(source) + 1} below the headings,`;
}

function columnsIn(cells: Expression): readonly Expression[] {
  return cells.called === undefined ? (cells.steps ?? []).flatMap(columnsIn) : [cells];
}
