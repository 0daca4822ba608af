import * as z from "zod/mini";
import { FIRST_DAY, LAST_DAY } from "../core/shared/days";
import { type ColumnDefinition, inputColumns, type TableDefinition } from "./table-definition";

/** Text that stands where a number or a day should: a figure typed as text, which would be left out unseen. */
const FIGURE_AS_TEXT = /^[\s+-]*[\d.,/\s:-]*\d[\d.,/\s:-]*$/;

/** Checks a row of a table by key. Blank cells are null; a number column may hold a note such as "no sample". */
export function rowSchema(table: TableDefinition) {
  return z.strictObject(Object.fromEntries(inputColumns(table).map((column) => [column.key, cellSchema(column)])));
}

function cellSchema(column: ColumnDefinition) {
  const value = valueSchema(column);
  if (column.required === true) return value;
  return z.nullable(isNumeric(column) ? z.union([value, noteSchema]) : value);
}

function isNumeric({ holds }: ColumnDefinition): boolean {
  return holds === "day" || holds === "whole number" || holds === "number";
}

const textSchema = z.string().check(z.trim(), z.minLength(1));
const noteSchema = textSchema.check(z.refine((text) => !FIGURE_AS_TEXT.test(text), "a number or a day, not text"));

function valueSchema({ holds, limits, choices }: ColumnDefinition) {
  const [min, max] = limits ?? [-Infinity, Infinity];
  switch (holds) {
    case "day":
      return z.int().check(z.gte(FIRST_DAY), z.lte(LAST_DAY));
    case "whole number":
      return z.int().check(z.gte(min), z.lte(max));
    case "number":
      return z.number().check(z.gte(min), z.lte(max));
    case "cow":
      return z.union([z.int().check(z.positive()), textSchema]);
    case "choice":
      return z.enum(choices ?? []);
    case "lesion":
    case "text":
      return textSchema;
  }
}
