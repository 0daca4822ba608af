import { cellPosition } from "../../../src/workbook/cell-address";
import type { StartTable } from "../../workbook/contract/test-book";
import { FakeDocument, type FakeTable, type Habits } from "./document";

/** A workbook open in Excel, with these tables. */
export function startDocument(tables: readonly StartTable[], habits: Habits): FakeDocument {
  const document = new FakeDocument(habits);
  for (const { name, sheet: sheetName, address, headings, days = [], calculated, rows } of tables) {
    const sheet = document.sheets.find((known) => known.name === sheetName) ?? document.addSheet(sheetName);
    const { row, column } = cellPosition(address);
    headings.forEach((heading, at) => sheet.put(row, column + at, { value: heading, numberFormat: "General" }));
    rows.forEach((cells, down) =>
      headings.forEach((heading, at) => {
        const numberFormat = days.includes(heading) ? "dd/mm/yyyy" : "General";
        const formula = heading === calculated?.heading ? `=[@${calculated.from}]+${calculated.add}` : undefined;
        const cell = { value: formula === undefined ? (cells[at] ?? "") : 1, numberFormat };
        sheet.put(row + 1 + down, column + at, formula === undefined ? cell : { ...cell, formula });
      }),
    );
    document.addTable({ sheet, row, column, rows: rows.length + 1, columns: headings.length }).name = name;
  }
  return document;
}

export function tableOf(document: FakeDocument, name: string): FakeTable {
  const table = document.tables.find((known) => known.name === name);
  if (table === undefined) throw new Error(`no table ${name}`);
  return table;
}

/** Place of a column on its sheet. */
export function columnOf({ sheet, row, column, width }: FakeTable, heading: string): number {
  for (let at = column; at < column + width; at++) if (sheet.cell(row, at).value === heading) return at;
  throw new Error(`no column ${heading}`);
}
