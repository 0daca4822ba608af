import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { ISO_DATE } from "../../number-format";
import type { PlainCell } from "../../port";
import { isDay, type TypedValue } from "../../table-port";

/** Cells by row and column, as the grid takes them. */
export type Cells = Record<number, Record<number, ICellData>>;

/** What a cell shows, as the port gives it. */
export function shownValue(cell: Nullable<ICellData>): PlainCell {
  const value = cell?.v;
  if (value === undefined || value === null || value === "") return textOfDocument(cell);
  return cell?.t === CellValueType.BOOLEAN ? Boolean(Number(value)) : value;
}

/** Text with formats of its own is kept as a small document, which ends with a line of its own. */
function textOfDocument(cell: Nullable<ICellData>): PlainCell {
  const text = cell?.p?.body?.dataStream.replace(/\r\n$/, "") ?? "";
  return text === "" ? null : text;
}

export function hasFormula(cell: Nullable<ICellData>): boolean {
  return Boolean(cell?.f) || Boolean(cell?.si);
}

/** A cell as the grid takes it: a value of a stated kind is never read as a formula. */
export function valueCell(value: TypedValue): ICellData {
  const bare: ICellData = { f: null, si: null, p: null };
  if (value === null) return { ...bare, v: null, t: null };
  if (isDay(value)) return { ...bare, v: value.day, t: CellValueType.NUMBER };
  if (typeof value === "number") return { ...bare, v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { ...bare, v: Number(value), t: CellValueType.BOOLEAN };
  return { ...bare, v: value, t: CellValueType.STRING };
}

export function formulaCell(formula: string): ICellData {
  return { f: formula, si: null, p: null, v: null, t: null };
}

export function formatCell(pattern: string = ISO_DATE): ICellData {
  return { s: { n: { pattern } } };
}

export function put(cells: Cells, row: number, column: number, cell: ICellData): void {
  (cells[row] ??= {})[column] = cell;
}

export function isBlank(cells: Cells): boolean {
  return Object.keys(cells).length === 0;
}
