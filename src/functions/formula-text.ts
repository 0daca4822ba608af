import { dateOf, LAST_DAY } from "../core/shared/days";
import { ERROR_TEXT } from "./cell";
import type { Example, ExampleArgument, FunctionSpec } from "./define";
import { worksheetName } from "./names";

/**
 * The formula that computes an example, as it is typed into a cell: text in quotes, a date as DATE(2024,2,20), a
 * column as {1;2}. Arguments left out at the end are dropped; one left out in between is an empty place.
 */
export function formulaText(spec: FunctionSpec, example: Pick<Example, "arguments">): string {
  const texts = example.arguments.map((argument, index) => {
    const isDate = /^(column of )?dates?$/.test(spec.parameters[index]?.kind.name ?? "");
    return argumentText(argument, isDate);
  });
  while (texts.at(-1) === "") texts.pop();
  return `=${worksheetName(spec.id)}(${texts.join(",")})`;
}

function argumentText(argument: ExampleArgument, isDate: boolean): string {
  if (argument === null || typeof argument !== "object") return scalarText(argument, isDate);
  const cells = argument.map((row) => row.map((cell) => elementText(cell, isDate)));
  // An array constant holds no calls, so dates are stacked instead.
  if (cells.flat().some((text) => text.startsWith("DATE("))) return stacked(cells);
  return `{${cells.map((row) => row.join(",")).join(";")}}`;
}

function stacked(cells: readonly (readonly string[])[]): string {
  const rows = cells.map((row) => (row.length === 1 ? row[0]! : `HSTACK(${row.join(",")})`));
  return `VSTACK(${rows.join(",")})`;
}

/** A blank cannot stand in an array; empty text is read as a blank. */
function elementText(cell: number | string | boolean | null, isDate: boolean): string {
  return cell === null ? '""' : scalarText(cell, isDate);
}

function scalarText(cell: number | string | boolean | null, isDate: boolean): string {
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number") return isDate && isDay(cell) ? dateText(cell) : String(cell).toUpperCase();
  return ERROR_TEXT.test(cell) ? cell : `"${cell.replaceAll('"', '""')}"`;
}

/** Examples of refused dates hold numbers that are none; they stay numbers. */
function isDay(serial: number): boolean {
  return Number.isInteger(serial) && serial > 0 && serial <= LAST_DAY;
}

function dateText(serial: number): string {
  const { year, month, day } = dateOf(serial);
  return `DATE(${year},${month},${day})`;
}
