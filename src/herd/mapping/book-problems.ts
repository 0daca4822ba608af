import type { Block } from "./block";
import type { PlainBook } from "../../workbook/plain-book";

/** So many sheets are more than a herd's workbook has: most are copies or pages for reading. */
const MANY_SHEETS = 30;

/** What stands in the way of reading a workbook, in plain sentences; none where all is well. */
export function bookProblems(book: PlainBook, blocks: readonly Block[], mapped: number): readonly string[] {
  const problems = [...wrongDays(book)];
  if (mapped === 0) problems.push(nothingFound(book, blocks));
  if (book.sheets.length >= MANY_SHEETS) {
    problems.push(`The workbook has ${book.sheets.length} sheets; only those with a list of cows, findings, scores or milk tests are read.`); // oxfmt-ignore
  }
  return problems;
}

/** A workbook that counts its days from another year than ours. */
export function wrongDays({ from1904 }: PlainBook): readonly string[] {
  if (from1904 !== true) return [];
  return ["The workbook counts its days from 1904: dates are read as if from 1900 and would be four years off, so switch that setting off in the program that made it."]; // oxfmt-ignore
}

function nothingFound({ sheets }: PlainBook, blocks: readonly Block[]): string {
  const filled = sheets.filter(({ rows }) => rows.some((row) => row.some((cell) => cell !== null && cell !== "")));
  if (sheets.length === 0) return "The workbook has no sheet of cells.";
  if (filled.length === 0) {
    return "No cell of the workbook holds anything: it is empty, or holds pictures only. Lists must stand in cells.";
  }
  if (blocks.length === 0) {
    return "No list was found: a list has its headings side by side in one row and its rows directly below.";
  }
  const names = [...new Set(blocks.map(({ sheet }) => sheet.name))];
  const shown = names.slice(0, 3).join(", ") + (names.length > 3 ? ` and ${names.length - 3} more` : "");
  return `There are lists (${shown}), but none of cows, findings, mobility scores or milk tests: each needs a column of cow numbers and one of what was found, scored or measured.`;
}
