import { type Block, type BlockColumn, isLabel, mostlyIn } from "./block";
import { headingFits } from "./heading-words";
import { remembered } from "./remembered";
import { headingsOver } from "./heading-rows";
import {
  areaText,
  cellAt,
  holds,
  type PlainArea,
  type PlainBook,
  type PlainSheet,
  type PlainTable,
} from "../../workbook/plain-book";

/** Headings of a plain range are looked for in so many rows from the top. */
const TOP_ROWS = 40;
/** So many plain ranges of a sheet are looked at; more of them are pages for reading, not lists. */
const MOST_RANGES = 6;
/** A list ends where more rows than this are blank. */
const MOST_BLANK_ROWS = 15;
/** Rows below the headings that are looked at to tell headings from rows. */
const ROWS_LOOKED_AT = 8;
/** A heading fits so well that its row is one of headings. */
const KNOWN_HEADING = 0.7;

/** All tables of a workbook and all plain ranges that look like tables. */
export const findBlocks = remembered((book: PlainBook): readonly Block[] => book.sheets.flatMap(blocksOn));

const blocksOn = remembered((sheet: PlainSheet): readonly Block[] => [
  ...sheet.tables.map((table) => tableBlock(sheet, table)).filter((block) => block !== undefined),
  ...plainRanges(sheet),
]);

function tableBlock(sheet: PlainSheet, { name, area, calculated }: PlainTable): Block | undefined {
  const columns: BlockColumn[] = [];
  for (let column = area.firstColumn; column <= area.lastColumn; column++) {
    const heading = String(cellAt(sheet, area.firstRow, column) ?? "");
    columns.push({ heading, column, calculated: calculated.includes(heading) });
  }
  if (area.lastRow <= area.firstRow) return undefined;
  const firstRow = area.firstRow + 1;
  const lastRow = lastFilledRow(sheet, columns, firstRow, area.lastRow);
  return { sheet, table: name, headingRow: area.firstRow, columns, firstRow, lastRow, remarks: [] };
}

/** A stretch of headings side by side. */
interface Candidate {
  readonly row: number;
  readonly first: number;
  readonly last: number;
  readonly score: number;
}

function plainRanges(sheet: PlainSheet): Block[] {
  const blocks: Block[] = [];
  const taken: PlainArea[] = sheet.tables.map(({ area }) => area);
  const candidates = candidatesOf(sheet, taken).sort((a, b) => b.score - a.score || a.row - b.row);
  for (const candidate of candidates) {
    if (blocks.length === MOST_RANGES) break;
    const { row, first, last } = candidate;
    if (taken.some((area) => row >= area.firstRow && row <= area.lastRow && first <= area.lastColumn && last >= area.firstColumn)) continue; // oxfmt-ignore
    const block = rangeBlock(sheet, candidate, taken);
    if (block === undefined) continue;
    blocks.push(block);
    taken.push({ firstRow: Math.min(row, block.headingRow) - 1, lastRow: block.lastRow, firstColumn: first, lastColumn: last }); // oxfmt-ignore
  }
  return blocks.sort((a, b) => a.headingRow - b.headingRow);
}

function candidatesOf(sheet: PlainSheet, taken: readonly PlainArea[]): Candidate[] {
  const found: Candidate[] = [];
  const free = (row: number, column: number): boolean => !taken.some((area) => holds(area, row, column));
  for (let row = 0; row < Math.min(TOP_ROWS, sheet.rows.length); row++) {
    const width = sheet.rows[row]?.length ?? 0;
    let first = -1;
    for (let column = 0; column <= width; column++) {
      const isHeading = column < width && free(row, column) && isLabel(cellAt(sheet, row, column));
      const isGap =
        first >= 0 && !isHeading && column < width && free(row, column) && isGapInHeadings(sheet, row, column);
      if (isHeading && first < 0) first = column;
      if (isHeading || isGap || first < 0) continue;
      const candidate = scored(sheet, row, first, lastLabel(sheet, row, first, column - 1));
      if (candidate !== undefined) found.push(candidate);
      first = -1;
    }
  }
  return found;
}

function lastLabel(sheet: PlainSheet, row: number, first: number, last: number): number {
  let column = last;
  while (column > first && cellAt(sheet, row, column) === null && !hasRowsBelow(sheet, row, column)) column--;
  return column;
}

/** A blank cell with values below it: a heading that is missing or lies under a merged one. */
function isGapInHeadings(sheet: PlainSheet, row: number, column: number): boolean {
  return cellAt(sheet, row, column) === null && hasRowsBelow(sheet, row, column);
}

function hasRowsBelow(sheet: PlainSheet, row: number, column: number): boolean {
  for (let below = row + 1; below <= row + ROWS_LOOKED_AT; below++) {
    if (cellAt(sheet, below, column) !== null) return true;
  }
  return false;
}

/** Words that are known and columns whose rows differ in kind from the heading speak for a row of headings. */
function scored(sheet: PlainSheet, row: number, first: number, last: number): Candidate | undefined {
  let [labels, known, contrast, filled] = [0, 0, 0, 0];
  const seen = new Set<string>();
  for (let column = first; column <= last; column++) {
    const heading = cellAt(sheet, row, column);
    if (!isLabel(heading)) continue;
    labels++;
    seen.add(heading.trim().toLowerCase());
    if ([...headingFits(heading).values()].some(({ fit }) => fit >= KNOWN_HEADING)) known++;
    let [below, figures] = [0, 0];
    for (let next = row + 1; next <= row + ROWS_LOOKED_AT; next++) {
      const cell = cellAt(sheet, next, column);
      if (cell !== null) below++;
      if (cell !== null && !isLabel(cell)) figures++;
    }
    if (below > 0) filled++;
    if (figures > below / 2) contrast++;
  }
  const isUnclear = labels < 2 || filled < 2 || seen.size < labels * 0.7;
  if (isUnclear || (known < 2 && contrast === 0)) return undefined;
  return { row, first, last, score: known * 2 + contrast + labels * 0.1 - row * 0.01 };
}

function rangeBlock(
  sheet: PlainSheet,
  { row, first, last }: Candidate,
  taken: readonly PlainArea[],
): Block | undefined {
  const over = headingsOver(sheet, row, first, last);
  const firstRow = over.lastRow + 1;
  const ends = taken.filter((area) => area.firstRow > over.lastRow && first <= area.lastColumn && last >= area.firstColumn); // oxfmt-ignore
  const limit = Math.min(sheet.rows.length - 1, ...ends.map((area) => area.firstRow - 1));
  const columns = over.headings.map((heading, index): BlockColumn => ({
    heading,
    column: first + index,
    calculated: false,
  }));
  const lastRow = endOfList(sheet, columns, firstRow, limit);
  if (lastRow < firstRow) return undefined;
  return {
    sheet,
    table: undefined,
    headingRow: over.lastRow,
    columns: columns
      .map((column) => ({ ...column, calculated: mostlyIn(sheet.formulas, column.column, firstRow, lastRow) }))
      .filter((column) => column.heading !== "" || hasRowsBelow(sheet, over.lastRow, column.column)),
    firstRow,
    lastRow,
    remarks: [...over.remarks, ...mergedRows(sheet, first, last, firstRow, lastRow)],
  };
}

function endOfList(sheet: PlainSheet, columns: readonly BlockColumn[], firstRow: number, limit: number): number {
  let last = firstRow - 1;
  for (let row = firstRow; row <= limit && row - last <= MOST_BLANK_ROWS; row++) {
    if (columns.some(({ column }) => cellAt(sheet, row, column) !== null)) last = row;
  }
  return last;
}

function lastFilledRow(sheet: PlainSheet, columns: readonly BlockColumn[], firstRow: number, lastRow: number): number {
  const typed = columns.filter(({ calculated }) => !calculated);
  let row = lastRow;
  while (row >= firstRow && typed.every(({ column }) => cellAt(sheet, row, column) === null)) row--;
  return Math.max(row, firstRow);
}

function mergedRows(
  { name, merges }: PlainSheet,
  first: number,
  last: number,
  firstRow: number,
  lastRow: number,
): string[] {
  // oxfmt-ignore
  const merged = merges.filter((area) => area.lastRow >= firstRow && area.firstRow <= lastRow && area.lastColumn >= first && area.firstColumn <= last); // oxfmt-ignore
  if (merged.length === 0) return [];
  const more = merged.length === 1 ? "" : ` and ${merged.length - 1} more`;
  return [`${name}: cells are merged among the rows (${areaText(merged[0]!)}${more}); only the first cell of each holds a value, so unmerge them.`]; // oxfmt-ignore
}
