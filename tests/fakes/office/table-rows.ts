import { HostError } from "./entry";
import { bodyArea, type FakeDocument, type FakeTable, meet, shiftRows, tableArea } from "./document";

/** Takes out a row of a table's body; the last one left is emptied instead. */
export function deleteTableRow(document: FakeDocument, table: FakeTable, index: number): void {
  document.refuseProtected(table.sheet);
  if (table.filtered) throw new HostError("InsertDeleteConflict");
  if (index < 0 || index >= table.bodyRows) throw new HostError("InvalidArgument");
  const { sheet, column, width } = table;
  const row = table.row + 1 + index;
  for (let at = column; at < column + width; at++) {
    const { formula, numberFormat, value } = sheet.cell(row, at);
    const keeps = table.bodyRows === 1 && formula !== undefined;
    if (keeps) sheet.put(row, at, { value, formula, numberFormat });
    else if (table.bodyRows === 1) sheet.put(row, at, { value: "", numberFormat });
    else sheet.cells.get(row)?.delete(at);
  }
  if (table.bodyRows === 1) return;
  moveTablesBelow(document, table, -1);
  shiftRows(sheet, row + 1, column, width, -1);
  table.bodyRows -= 1;
}

/** Puts rows into a table's body and moves what is below down. */
export function insertTableRows(document: FakeDocument, table: FakeTable, index: number, count: number): void {
  document.refuseProtected(table.sheet);
  if (index < 0 || index > table.bodyRows) throw new HostError("InvalidArgument");
  moveTablesBelow(document, table, count);
  shiftRows(table.sheet, table.row + 1 + index, table.column, table.width, count);
  table.bodyRows += count;
}

function moveTablesBelow(document: FakeDocument, table: FakeTable, by: number): void {
  const below = { ...bodyArea(table), row: table.row + table.bodyRows, rows: Number.MAX_SAFE_INTEGER };
  const met = document.tables.filter((other) => other !== table && meet(below, tableArea(other)));
  const inside = met.every(
    ({ column, width }) => column >= table.column && column + width <= table.column + table.width,
  );
  if (!inside) throw new HostError("InsertDeleteConflict");
  for (const other of met) other.row += by;
}
