import { parseStructRef, type ReferenceStruct, toCol, type Token, tokenize } from "@borgar/fx";
import { isOperator, operandEnd, operandStart } from "../xlsx/formula-tokens";
import { ANCHOR_ARRAY } from "./fixes/anchor-array";
import { SINGLE } from "./fixes/single";
import { aliasColumn, type EngineTable } from "./tables";

/** What a formula may refer to by name. */
export interface Surroundings {
  table(name: string): EngineTable | undefined;
  sheetName(sheetId: string): string;
}

const REFERENCE_ERROR = "#REF!";

/**
 * A formula as typed, in words that the engine's parser understands: table references become addresses, A1# and @A1:A9
 * become calls. A reference to a table's own row stays one, under the table's alias.
 */
export function engineFormula(formula: string, surroundings: Surroundings): string {
  if (!/[[#@]/.test(formula) && !mayNameTable(formula, surroundings)) return formula;
  const tokens = tokenize(formula, { mergeRefs: true });
  const spelled = tokens.map((token, index) => spell(token, tokens[index - 2], tokens[index - 1], surroundings));
  return withOperators(tokens, spelled, 0, tokens.length);
}

/** A word that is a table's name stands for its rows: ROWS(Findings). */
function mayNameTable(formula: string, { table }: Surroundings): boolean {
  return (formula.match(/[\p{L}_\\][\p{L}\p{N}_.\\]*/gu) ?? []).some((word) => table(word) !== undefined);
}

function spell(
  token: Token,
  before2: Token | undefined,
  before: Token | undefined,
  surroundings: Surroundings,
): string {
  const { type, value } = token;
  if (type === "range_named" && surroundings.table(value)) return tableAddress({ table: value }, surroundings);
  if (type === "structured") {
    const reference = parseStructRef(value);
    return reference === undefined ? value : tableAddress(reference, surroundings);
  }
  // Lists that a cell offers are taken from a table with INDIRECT("Codes[Code]"), which the engine reads as no address.
  if (type === "string" && isOperator(before, "(") && before2?.type === "func" && /^INDIRECT$/i.test(before2.value)) {
    const reference = parseStructRef(value.slice(1, -1));
    if (reference?.table && surroundings.table(reference.table)) return `"${tableAddress(reference, surroundings)}"`;
  }
  return value;
}

function tableAddress(reference: ReferenceStruct, { table: find, sheetName }: Surroundings): string {
  const table = find(reference.table ?? "");
  if (table === undefined) return REFERENCE_ERROR;
  const { columns = [], sections = [] } = reference;
  const [first = table.columns[0], last = columns.length === 0 ? table.columns.at(-1) : first] = columns;
  const firstColumn = columnIndex(table, first);
  const lastColumn = columnIndex(table, last);
  if (firstColumn < 0 || lastColumn < 0) return REFERENCE_ERROR;
  const [left, right] = firstColumn <= lastColumn ? [firstColumn, lastColumn] : [lastColumn, firstColumn];
  const has = (section: string): boolean => sections.some((known) => known.toLowerCase() === section);
  if (has("this row")) {
    const one = `[${aliasColumn(left)}]`;
    return `${table.alias}[[#This Row],${left === right ? one : `${one}:[${aliasColumn(right)}]`}]`;
  }
  const { startRow, endRow, startColumn } = table.range;
  const top = has("all") || has("headers") ? startRow : has("totals") && !has("data") ? endRow + 1 : startRow + 1;
  const bottom = has("totals") ? endRow + 1 : has("headers") && !has("data") ? startRow : endRow;
  const from = `$${toCol(startColumn + left)}$${top + 1}`;
  const to = `$${toCol(startColumn + right)}$${bottom + 1}`;
  return `${quoted(sheetName(table.sheetId))}!${from === to ? from : `${from}:${to}`}`;
}

function columnIndex({ columns }: EngineTable, name: string | undefined): number {
  return columns.findIndex((column) => column.toUpperCase() === name?.toUpperCase());
}

function quoted(sheetName: string): string {
  return `'${sheetName.replaceAll("'", "''")}'`;
}

/** Joins the tokens, turning the operators @x and x# into calls of the functions that stand for them. */
function withOperators(tokens: readonly Token[], spelled: readonly string[], from: number, to: number): string {
  let text = "";
  const starts: number[] = [];
  for (let index = from; index < to; index++) {
    starts[index] = text.length;
    if (isOperator(tokens[index], "@")) {
      const end = operandEnd(tokens, index + 1, to);
      text += `${SINGLE}(${withOperators(tokens, spelled, index + 1, end)})`;
      index = end - 1;
    } else if (isOperator(tokens[index], "#")) {
      const start = starts[operandStart(tokens, index - 1)] ?? 0;
      text = `${text.slice(0, start)}${ANCHOR_ARRAY}(${text.slice(start)})`;
    } else {
      text += spelled[index]!;
    }
  }
  return text;
}
