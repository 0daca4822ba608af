import type { ComputedCell, ComputedSheet, ComputedWorkbook } from "../../engine/results";
import { cellAddress } from "../../xlsx/address";

type JsonValue = number | string | boolean | { readonly error: string; readonly message?: string };

/** Every cell that holds something, by sheet and address. */
export function valuesAsJson({ sheets }: ComputedWorkbook): Record<string, Record<string, JsonValue>> {
  return Object.fromEntries(
    sheets.map(({ name, cells }) => [
      name,
      Object.fromEntries(cells.map((cell) => [cellAddress(cell.row, cell.column), jsonValue(cell)])),
    ]),
  );
}

function jsonValue({ value, message }: ComputedCell): JsonValue {
  if (typeof value !== "object") return value;
  return message === undefined ? { error: value.error } : { error: value.error, message };
}

/** Errors of a sheet that are shown; the others are counted. */
const MOST_ERRORS_SHOWN = 5;

/** What was computed and what went wrong, for the person at the terminal. */
export function summary(title: string, { sheets }: ComputedWorkbook): string {
  const tallies = sheets.map((sheet) => ({ sheet, computed: computedCells(sheet), errors: errorsOf(sheet) }));
  const total = tallies.reduce((sum, { computed }) => sum + computed, 0);
  const failed = tallies.reduce((sum, { errors }) => sum + errors.length, 0);
  const width = Math.max(...sheets.map(({ name }) => name.length));
  const lines = tallies
    .filter(({ computed, errors }) => computed > 0 || errors.length > 0)
    .flatMap(({ sheet, computed, errors }) => [
      `  ${sheet.name.padEnd(width)}  ${count(computed, "cell")} computed${errors.length === 0 ? "" : `, ${count(errors.length, "error")}`}`,
      ...errors.slice(0, MOST_ERRORS_SHOWN).map(errorLine),
      ...(errors.length > MOST_ERRORS_SHOWN ? [`    and ${errors.length - MOST_ERRORS_SHOWN} more`] : []),
    ]);
  return [`${title}: ${count(total, "cell")} computed, ${count(failed, "error")}`, ...lines].join("\n");
}

/** Cells with a formula, and cells that a formula elsewhere fills. */
function computedCells({ cells, spills }: ComputedSheet): number {
  const filled = spills.reduce((sum, { area }) => {
    const { firstRow, lastRow, firstColumn, lastColumn } = area;
    return sum + (lastRow - firstRow + 1) * (lastColumn - firstColumn + 1) - 1;
  }, 0);
  return cells.filter(({ formula }) => formula !== undefined).length + filled;
}

function errorsOf({ cells }: ComputedSheet): ComputedCell[] {
  return cells.filter(({ value }) => typeof value === "object");
}

function errorLine({ row, column, value, message }: ComputedCell): string {
  const error = typeof value === "object" ? value.error : String(value);
  return `    ${cellAddress(row, column)} ${error}${message === undefined ? "" : `: ${message}`}`;
}

function count(number: number, what: string): string {
  return `${number.toLocaleString("en-US")} ${what}${number === 1 ? "" : "s"}`;
}
