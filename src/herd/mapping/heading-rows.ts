import { isLabel } from "./block";
import { headingFits } from "./heading-words";
import { areaText, cellAt, holds, type PlainArea, type PlainSheet } from "../../workbook/plain-book";

/** The headings of a plain range, from one row or two. */
export interface Headings {
  readonly headings: readonly string[];
  /** The lowest row of headings. */
  readonly lastRow: number;
  readonly remarks: readonly string[];
}

/** Rows that are looked at to tell a second row of headings from the first row of values. */
const ROWS_LOOKED_AT = 6;
/** A text fits so well that it is a heading. */
const KNOWN_HEADING = 0.85;

/** Reads the headings that stand in a row, with those of a second row above or below it. */
export function headingsOver(sheet: PlainSheet, row: number, first: number, last: number): Headings {
  const own = textsOf(sheet, row, first, last);
  const remarks = mergedHeadings(sheet, row, first, last);
  if (isSecondRow(sheet, row + 1, first, last)) {
    const below = textsOf(sheet, row + 1, first, last);
    return {
      headings: joined(carried(sheet, row, first, own), below),
      lastRow: row + 1,
      remarks: [...remarks, twoRows(sheet, row, row + 1)],
    };
  }
  const above = row > 0 ? textsOf(sheet, row - 1, first, last) : [];
  const labels = above.filter((text) => text !== "").length;
  if (labels < 2 && !hasMerge(sheet, row - 1, first, last)) return { headings: own, lastRow: row, remarks };
  if (labels === 0 || labels < 2 && own.every((text) => text !== "") && !isPartly(sheet, row - 1, first, last)) return { headings: own, lastRow: row, remarks }; // oxfmt-ignore
  return {
    headings: joined(carried(sheet, row - 1, first, above), own),
    lastRow: row,
    remarks: [...mergedHeadings(sheet, row - 1, first, last), ...remarks, twoRows(sheet, row - 1, row)],
  };
}

function textsOf(sheet: PlainSheet, row: number, first: number, last: number): string[] {
  const texts: string[] = [];
  for (let column = first; column <= last; column++) {
    const cell = cellAt(sheet, row, column);
    texts.push(isLabel(cell) ? cell.trim() : "");
  }
  return texts;
}

/** A row of texts only, above columns of numbers or dates: units, or the finer headings. */
function isSecondRow(sheet: PlainSheet, row: number, first: number, last: number): boolean {
  let [labels, overFigures, known] = [0, 0, 0];
  for (let column = first; column <= last; column++) {
    const cell = cellAt(sheet, row, column);
    if (cell === null) continue;
    if (!isLabel(cell)) return false;
    labels++;
    if ([...headingFits(cell).values()].some(({ fit }) => fit >= KNOWN_HEADING)) known++;
    let [texts, figures] = [0, 0];
    for (let below = row + 1; below <= row + ROWS_LOOKED_AT; below++) {
      const value = cellAt(sheet, below, column);
      if (value === null) continue;
      if (isLabel(value)) texts++;
      else figures++;
    }
    if (figures > texts) overFigures++;
  }
  return labels >= 2 && (overFigures >= 2 || (overFigures === 1 && known * 2 >= labels));
}

/** The text of a merged heading stands over each of its columns. */
function carried(sheet: PlainSheet, row: number, first: number, texts: readonly string[]): string[] {
  return texts.map((text, index) => {
    const area = sheet.merges.find((merge) => holds(merge, row, first + index));
    return area === undefined ? text : (texts[area.firstColumn - first] ?? text);
  });
}

function joined(above: readonly string[], below: readonly string[]): string[] {
  return above.map((text, index) => [text, below[index] ?? ""].filter((part) => part !== "").join(" "));
}

function merged(sheet: PlainSheet, row: number, first: number, last: number): PlainArea[] {
  return sheet.merges.filter(
    (area) =>
      row >= area.firstRow && row <= area.lastRow && area.firstColumn <= last && area.lastColumn >= first &&
      area.lastColumn > area.firstColumn,
  ); // oxfmt-ignore
}

function hasMerge(sheet: PlainSheet, row: number, first: number, last: number): boolean {
  return merged(sheet, row, first, last).length > 0;
}

/** A title lies over all columns, a heading over some. */
function isPartly(sheet: PlainSheet, row: number, first: number, last: number): boolean {
  return merged(sheet, row, first, last).some((area) => area.lastColumn - area.firstColumn < last - first);
}

function mergedHeadings(sheet: PlainSheet, row: number, first: number, last: number): string[] {
  return merged(sheet, row, first, last).map((area) => {
    const text = String(cellAt(sheet, area.firstRow, area.firstColumn) ?? "");
    const columns = area.lastColumn - area.firstColumn + 1;
    return `${sheet.name}: the heading "${text}" in ${areaText(area)} lies over ${columns} columns; give each column a heading of its own.`;
  });
}

function twoRows(sheet: PlainSheet, above: number, below: number): string {
  return `${sheet.name}: the headings stand in two rows (${above + 1} and ${below + 1}); they are read together.`;
}
