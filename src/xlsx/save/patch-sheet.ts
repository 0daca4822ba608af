import { areaAddress, cellNumber, parseArea } from "../address";
import type { Area, CellContent } from "../model";
import { type FormulaXml, newCell, patchedCell } from "./cell-xml";
import { type ScannedCell, type ScannedRow, type ScannedSheet, scanSheet } from "./scan";
import { attributeOf, withAttribute } from "./tags";

/** What was computed of one sheet. */
export interface FreshSheet {
  readonly name: string;
  /** Every cell that shows something. */
  readonly cells: readonly { readonly row: number; readonly column: number; readonly value: CellContent }[];
  /** Formulas that fill several cells, and which. */
  readonly spills: readonly { readonly row: number; readonly column: number; readonly area: Area }[];
}

/** The number that cells of dynamic arrays carry in the file; undefined where it has no place for one. */
export type DynamicArrayMark = () => string | undefined;

/** The sheet's XML with fresh values in its formula cells and in the cells that formulas fill. */
export function patchSheet(xml: string, fresh: FreshSheet, dynamicArrayMark: DynamicArrayMark): string {
  const sheet = scanSheet(xml);
  if (sheet === undefined || sheet.isEmptyTag) return xml;
  const plan = planOf(sheet, fresh, dynamicArrayMark);
  const patched = patchRows(xml, sheet, plan);
  return patched === xml ? xml : withDimension(patched, sheet, plan);
}

/** What each cell is to hold. */
interface Plan {
  readonly value: (row: number, column: number) => CellContent;
  /** Formulas whose extent changes, by cell. */
  readonly formulas: ReadonlyMap<number, FormulaXml>;
  /** Cells that a formula in another cell fills, now or when the file was saved; row by row. */
  readonly filled: ReadonlyMap<number, ReadonlySet<number>>;
  /** The style for a filled cell that is not in the file. */
  readonly styleFor: (row: number, column: number) => string | undefined;
}

function planOf(sheet: ScannedSheet, fresh: FreshSheet, dynamicArrayMark: DynamicArrayMark): Plan {
  const values = new Map(fresh.cells.map(({ row, column, value }) => [cellNumber(row, column), value]));
  const spills = new Map(fresh.spills.map((spill) => [cellNumber(spill.row, spill.column), spill.area]));
  const scanned = new Map(
    sheet.rows.flatMap(({ cells }) => cells).map((cell) => [cellNumber(cell.row, cell.column), cell]),
  );
  const formulas = new Map<number, FormulaXml>();
  const filled = new Map<number, Set<number>>();
  const growths: { readonly before: Area; readonly now: Area }[] = [];
  for (const [number, cell] of scanned) {
    if (cell.formula === undefined) continue;
    const kind = attributeOf(cell.formula.attributes, "t");
    const isArray = kind === "array";
    const before =
      (isArray ? parseArea(attributeOf(cell.formula.attributes, "ref") ?? "") : undefined) ?? oneCell(cell);
    const isFixed = isArray && attributeOf(cell.attributes, "cm") === undefined;
    const now = isFixed ? before : (spills.get(number) ?? oneCell(cell));
    addCells(filled, before, cell);
    if (areaAddress(before) === areaAddress(now)) continue;
    // A formula shared with other cells cannot become an array formula: it keeps to its one cell.
    if (kind === "shared") continue;
    const mark = isArray ? attributeOf(cell.attributes, "cm") : dynamicArrayMark();
    if (mark === undefined) continue;
    addCells(filled, now, cell);
    growths.push({ before, now });
    formulas.set(number, withExtent(cell, now, mark));
  }
  return {
    value: (row, column) => values.get(cellNumber(row, column)) ?? null,
    formulas,
    filled,
    styleFor(row, column) {
      const growth = growths.find(({ now }) => contains(now, row, column));
      if (growth === undefined) return undefined;
      // A result that has grown down goes on as its last row looked.
      const last = scanned.get(cellNumber(growth.before.lastRow, column));
      return growth.before.lastRow > growth.before.firstRow ? attributeOf(last?.attributes ?? "", "s") : undefined;
    },
  };
}

function oneCell({ row, column }: ScannedCell): Area {
  return { firstRow: row, lastRow: row, firstColumn: column, lastColumn: column };
}

function contains({ firstRow, firstColumn, lastRow, lastColumn }: Area, row: number, column: number): boolean {
  return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
}

function addCells(filled: Map<number, Set<number>>, area: Area, anchor: ScannedCell): void {
  for (let row = area.firstRow; row <= area.lastRow; row++) {
    for (let column = area.firstColumn; column <= area.lastColumn; column++) {
      if (row === anchor.row && column === anchor.column) continue;
      const columns = filled.get(row);
      if (columns === undefined) filled.set(row, new Set([column]));
      else columns.add(column);
    }
  }
}

/** The formula element with a new extent; one that filled one cell alone becomes an array formula. */
function withExtent(cell: ScannedCell, area: Area, mark: string): FormulaXml {
  const { attributes, text } = cell.formula!;
  const array = withAttribute(withAttribute(attributes, "t", "array"), "ref", areaAddress(area));
  return { text, attributes: withAttribute(array, "cm", mark) };
}

function patchRows(xml: string, sheet: ScannedSheet, plan: Plan): string {
  const { prefix } = sheet;
  const pending = [...plan.filled.keys()].sort((a, b) => a - b);
  const rowOf = new Map(sheet.rows.map((row) => [row.row, row]));
  const added = pending.filter((row) => !rowOf.has(row));
  const pieces: string[] = [];
  let at = 0;
  const addRowsBefore = (row: number): void => {
    while (added.length > 0 && added[0]! < row) pieces.push(newRow(prefix, added.shift()!, plan));
  };
  for (const row of sheet.rows) {
    pieces.push(xml.slice(at, row.start));
    addRowsBefore(row.row);
    pieces.push(patchRow(xml, row, prefix, plan));
    at = row.end;
  }
  pieces.push(xml.slice(at, sheet.end));
  addRowsBefore(Infinity);
  return pieces.join("") + xml.slice(sheet.end);
}

function newRow(prefix: string, row: number, plan: Plan): string {
  const cells = newCells(prefix, row, [...(plan.filled.get(row) ?? [])], plan).map(({ text }) => text);
  return cells.length === 0 ? "" : `<${prefix}row r="${row + 1}">${cells.join("")}</${prefix}row>`;
}

/** Cells to be added to a row, from left to right; those that come out blank are left out. */
function newCells(
  prefix: string,
  row: number,
  columns: readonly number[],
  plan: Plan,
): { column: number; text: string }[] {
  return [...columns]
    .sort((a, b) => a - b)
    .filter((column) => plan.value(row, column) !== null)
    .map((column) => ({
      column,
      text: newCell(prefix, row, column, plan.styleFor(row, column), plan.value(row, column)),
    }));
}

function patchRow(xml: string, row: ScannedRow, prefix: string, plan: Plan): string {
  const filled = plan.filled.get(row.row) ?? new Set<number>();
  const present = new Set(row.cells.map(({ column }) => column));
  const added = newCells(
    prefix,
    row.row,
    [...filled].filter((column) => !present.has(column)),
    plan,
  );
  const isAnyAdded = added.length > 0;
  const pieces: string[] = [];
  let at = row.start;
  for (const cell of row.cells) {
    const patched = cell.formula !== undefined || filled.has(cell.column) ? patchOne(cell, prefix, plan) : undefined;
    pieces.push(xml.slice(at, cell.start));
    while (added.length > 0 && added[0]!.column < cell.column) pieces.push(added.shift()!.text);
    pieces.push(patched ?? xml.slice(cell.start, cell.end));
    at = cell.end;
  }
  const rest = xml.slice(at, row.end);
  const tail = added.map(({ text }) => text).join("");
  if (row.cells.length === 0) return tail === "" ? rest : filledRow(row, prefix, tail);
  const patched = pieces.join("") + tail + rest;
  return isAnyAdded ? withoutSpans(patched, row) : patched;
}

function patchOne(cell: ScannedCell, prefix: string, plan: Plan): string | undefined {
  const number = cellNumber(cell.row, cell.column);
  return patchedCell(cell, prefix, plan.value(cell.row, cell.column), plan.formulas.get(number));
}

function filledRow({ attributes }: ScannedRow, prefix: string, cells: string): string {
  return `<${prefix}row${withAttribute(attributes, "spans", undefined)}>${cells}</${prefix}row>`;
}

/** The hint of which columns a row uses no longer holds once cells were added; it may be left out. */
function withoutSpans(patched: string, { attributes }: ScannedRow): string {
  return patched.replace(attributes, withAttribute(attributes, "spans", undefined));
}

/** The used block of the sheet, made larger where cells were added outside of it. */
function withDimension(xml: string, { rows }: ScannedSheet, { filled, value }: Plan): string {
  const match = /<(?:[\w.-]+:)?dimension\b[^>]*?\sref="([^"]*)"/.exec(xml);
  const area = parseArea(match?.[1] ?? "");
  if (match === null || area === undefined || rows.length === 0) return xml;
  let { firstRow, firstColumn, lastRow, lastColumn } = area;
  for (const [row, columns] of filled) {
    for (const column of columns) {
      if (value(row, column) === null) continue;
      firstRow = Math.min(firstRow, row);
      lastRow = Math.max(lastRow, row);
      firstColumn = Math.min(firstColumn, column);
      lastColumn = Math.max(lastColumn, column);
    }
  }
  const grown = areaAddress({ firstRow, firstColumn, lastRow, lastColumn });
  const start = match.index + match[0].length - match[1]!.length - 1;
  return xml.slice(0, start) + grown + xml.slice(start + match[1]!.length);
}
