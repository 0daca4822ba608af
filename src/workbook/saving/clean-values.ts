import { FIRST_DAY, isoDate, LAST_DAY } from "../../core/shared/days";
import { cellText, LONGEST_CELL_TEXT } from "../plain-text";
import { TableError } from "../table-error";
import type { Edit } from "../table-host";
import {
  type BlockCell,
  type CellBlock,
  type Change,
  isDay,
  type NewRow,
  type NewTable,
  type Save,
  type TypedValue,
} from "../table-port";

/** The edits of a save, every value clean. Throws `unwritable` on a value that no cell can hold. */
export function editsOf({ changes }: Save): Edit[] {
  const edits = changes.map(editOf);
  if (edits.length === 0) throw unwritable("the save", "at least one change", "none");
  return edits;
}

function editOf(change: Change): Edit {
  if ("update" in change) return { kind: "set", row: change.update, cells: cleanRow(change.set) };
  const rows = change.rows.map(cleanRow);
  if (rows.length === 0) throw unwritable(`the change of ${change.append}`, "at least one row", "none");
  if (rows.some((row) => Object.values(row).every((value) => value === null))) {
    throw unwritable(`a new row of ${change.append}`, "at least one filled cell", "blanks");
  }
  return { kind: "append", table: change.append, rows };
}

function cleanRow(row: NewRow): NewRow {
  return Object.fromEntries(Object.entries(row).map(([heading, value]) => [heading, cleanValue(heading, value)]));
}

export function cleanValue(name: string, value: TypedValue): TypedValue {
  if (value === null || typeof value === "boolean") return value;
  if (typeof value === "number") {
    if (Number.isFinite(value)) return value;
    throw unwritable(name, "a finite number", String(value));
  }
  if (typeof value === "object") {
    if (Number.isInteger(value.day) && value.day >= FIRST_DAY && value.day <= LAST_DAY) return value;
    throw unwritable(name, `a day from ${isoDate(FIRST_DAY)} to ${isoDate(LAST_DAY)}`, String(value.day));
  }
  if (value.length > LONGEST_CELL_TEXT) {
    throw unwritable(name, `at most ${LONGEST_CELL_TEXT} characters`, `${value.length} characters`);
  }
  return cellText(value);
}

export function cleanTable(table: NewTable): NewTable {
  return { ...table, rows: table.rows.map(cleanRow) };
}

export function cleanBlock(block: CellBlock): CellBlock {
  const clean = (cell: BlockCell): BlockCell => {
    if (typeof cell !== "object" || cell === null || isDay(cell)) return cleanValue("a cell", cell);
    return "formula" in cell ? cell : { ...cell, value: cleanValue("a cell", cell.value) };
  };
  return { ...block, cells: block.cells.map((row) => row.map(clean)) };
}

function unwritable(what: string, limit: string, got: string): TableError {
  return new TableError("unwritable", `${what} must be ${limit}; got ${got}`);
}
