import type { ScannedCell, ScannedRow, ScannedSheet } from "../save/scan";
import { withAttribute } from "../save/tags";

/** The new XML of a cell, made from the one that stands there; "" takes the cell out. */
export type Rewrite = (present: ScannedCell | undefined) => string;
/** Rewrites by row and column. */
export type Rewrites = ReadonlyMap<number, ReadonlyMap<number, Rewrite>>;

/** The sheet's XML with some of its cells written anew; all others keep their bytes. */
export function rewriteCells(xml: string, sheet: ScannedSheet, rewrites: Rewrites): string {
  if (sheet.isEmptyTag) return withFirstRows(xml, sheet, rewrites);
  const present = new Set(sheet.rows.map(({ row }) => row));
  const added = [...rewrites.keys()].filter((row) => !present.has(row)).sort((a, b) => a - b);
  const pieces: string[] = [];
  let at = sheet.start;
  const addRowsBefore = (row: number): void => {
    while (added.length > 0 && added[0]! < row)
      pieces.push(newRow(sheet.prefix, added[0]!, rewrites.get(added.shift()!)!));
  };
  for (const row of sheet.rows) {
    pieces.push(xml.slice(at, row.start));
    addRowsBefore(row.row);
    const cells = rewrites.get(row.row);
    pieces.push(cells ? rewriteRow(xml, sheet.prefix, row, cells) : xml.slice(row.start, row.end));
    at = row.end;
  }
  pieces.push(xml.slice(at, sheet.end));
  addRowsBefore(Infinity);
  return xml.slice(0, sheet.start) + pieces.join("") + xml.slice(sheet.end);
}

/** The sheet had no row yet: its one empty tag becomes an element. */
function withFirstRows(xml: string, { start, end, prefix }: ScannedSheet, rewrites: Rewrites): string {
  const rows = [...rewrites.entries()].sort(([a], [b]) => a - b).map(([row, cells]) => newRow(prefix, row, cells));
  return `${xml.slice(0, start)}<${prefix}sheetData>${rows.join("")}</${prefix}sheetData>${xml.slice(end)}`;
}

function newRow(prefix: string, row: number, cells: ReadonlyMap<number, Rewrite>): string {
  const text = [...cells.entries()]
    .sort(([a], [b]) => a - b)
    .map(([, rewrite]) => rewrite(undefined))
    .join("");
  return text === "" ? "" : `<${prefix}row r="${row + 1}">${text}</${prefix}row>`;
}

function rewriteRow(xml: string, prefix: string, row: ScannedRow, rewrites: ReadonlyMap<number, Rewrite>): string {
  const cells = new Map(row.cells.map((cell) => [cell.column, xml.slice(cell.start, cell.end)]));
  const scanned = new Map(row.cells.map((cell) => [cell.column, cell]));
  for (const [column, rewrite] of rewrites) cells.set(column, rewrite(scanned.get(column)));
  const text = [...cells.entries()]
    .sort(([a], [b]) => a - b)
    .map(([, cell]) => cell)
    .join("");
  // The hint of which columns a row uses may no longer hold; it can be left out.
  return `<${prefix}row${withAttribute(row.attributes, "spans", undefined)}>${text}</${prefix}row>`;
}
