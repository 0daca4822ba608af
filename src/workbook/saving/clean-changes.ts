import { cellPosition, SHEET_COLUMNS, SHEET_ROWS } from "../cell-address";
import type { CellEdit } from "../book-host";
import type { CellChanges, RangeToTable } from "../book-port";
import { areaText, cellAt, columnLetters, type PlainSheet } from "../plain-book";
import { meets } from "../plain-room";
import { cellsFilled, cellsMerged, TableError } from "../table-error";
import { cleanValue } from "./clean-values";

/** The edits of a change, every value clean. Throws `unwritable` on what no cell can hold, and on a cell named twice. */
export function cellEditsOf({ cells }: CellChanges): CellEdit[] {
  if (cells.length === 0) throw new TableError("unwritable", "the change must be of at least one cell; got none");
  const seen = new Set<string>();
  return cells.map(({ sheet, address, was, set }) => {
    cellPosition(address);
    const place = `${sheet.toLowerCase()}!${address}`;
    if (seen.has(place)) {
      throw new TableError("unwritable", `a cell must be changed once; got ${address} on sheet ${sheet} twice`);
    }
    seen.add(place);
    return { sheet, address, was: blankIfSpaces(was), set: cleanValue(`cell ${address} on sheet ${sheet}`, set) };
  });
}

function blankIfSpaces<T>(cell: T): T | null {
  return typeof cell === "string" && cell.trim() === "" ? null : cell;
}

/** Throws where a range on a sheet cannot become a table. */
export function checkRange(sheet: PlainSheet, { area }: RangeToTable): void {
  const where = `on sheet ${sheet.name}`;
  const { firstRow, firstColumn, lastRow, lastColumn } = area;
  const isList = firstRow >= 0 && firstColumn >= 0 && lastRow > firstRow && lastColumn >= firstColumn;
  if (!isList || lastRow >= SHEET_ROWS || lastColumn >= SHEET_COLUMNS) {
    throw new TableError(
      "unwritable",
      `the range must be a row of headings and rows below it, on the sheet; got ${areaText(area)}`,
    );
  }
  const merge = sheet.merges.find(meets(area));
  if (merge !== undefined) throw cellsMerged(sheet.name, areaText(merge));
  const met = sheet.tables.find((table) => meets(area)(table.area));
  if (met !== undefined) {
    throw new TableError("occupied", `Range ${areaText(area)} ${where} meets table ${met.name}: choose another range.`);
  }
  const spill = sheet.formulas.find(meets({ ...area, lastRow: area.firstRow }));
  if (spill !== undefined) {
    throw new TableError(
      "headings",
      `Heading ${areaText(spill)} ${where} is filled by a formula: a table needs headings that are typed.`,
    );
  }
  const filled = sheet.spills?.find(meets(area));
  if (filled !== undefined) throw cellsFilled(sheet.name, areaText(filled));
  const seen = new Map<string, string>();
  for (let column = area.firstColumn; column <= area.lastColumn; column++) {
    const address = `${columnLetters(column)}${area.firstRow + 1}`;
    const heading = cellAt(sheet, area.firstRow, column);
    if (heading === null) {
      throw new TableError(
        "headings",
        `Cell ${address} ${where} has no heading: give column ${columnLetters(column)} one.`,
      );
    }
    if (typeof heading !== "string") {
      throw new TableError("headings", `Heading ${address} ${where} must be text; got ${String(heading)}`);
    }
    const first = seen.get(heading.toLowerCase());
    if (first !== undefined) {
      throw new TableError("headings", `Headings ${first} and ${address} ${where} are both "${heading}": rename one.`);
    }
    seen.set(heading.toLowerCase(), address);
  }
}
