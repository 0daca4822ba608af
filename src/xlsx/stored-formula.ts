import { isReference, parseStructRef, stringifyStructRef, type Token, tokenize } from "@borgar/fx";
import { tokenize as tokenizeStored } from "@borgar/fx/xlsx";
import { storedFunctionName, typedFunctionName } from "./future-functions";
import { closingOf, isOperator, operandEnd, operandStart } from "./formula-tokens";
import { localNames } from "./local-names";

/**
 * The two spellings of one formula: as typed into a cell, `HERD.RECHECK.DATE([@Lesion],B2)`, and as a file stores it,
 * `_xldudf_HERD_RECHECK_DATE(Findings[[#This Row],[Lesion]],B2)`. Neither has the leading "=".
 */
export interface FormulaForms {
  typed(stored: string): string;
  stored(typed: string, place?: FormulaPlace): string;
}

/** What must be known of the place of a formula to store it. */
export interface FormulaPlace {
  /** Names of the workbook's tables: a bare table name is stored as `Name[]`. */
  readonly tables?: readonly string[];
  /** The table in which the formula stands: `[@Column]` is stored with its name. */
  readonly ownTable?: string;
}

const NAMESPACE = "HERD.";
/** Prefix of functions that an add-in brings. */
const ADD_IN_PREFIX = "_xldudf_";

/** The forms of formulas that may call the functions with these ids (RECHECK.DATE, ...). */
export function formulaForms(ids: readonly string[]): FormulaForms {
  const typedNames = new Map<string, string>();
  const storedNames = new Map<string, string>();
  for (const id of ids) {
    const name = NAMESPACE + id.toUpperCase();
    const stored = ADD_IN_PREFIX + name.replaceAll(".", "_");
    typedNames.set(stored.toUpperCase(), name);
    storedNames.set(name, stored);
  }
  // A column of a table holds the same formula in every row.
  const known = new Map<string, string>();
  return {
    typed(stored) {
      if (!/_xl|\[#This Row\]|\[\]/i.test(stored)) return stored;
      let typed = known.get(stored);
      if (typed === undefined) {
        const tokens = tokenizeStored(stored, { mergeRefs: true });
        typed = typedTokens(tokens, (name) => typedNames.get(name.toUpperCase()) ?? typedFunctionName(name));
        known.set(stored, typed);
      }
      return typed;
    },
    stored(typed, place = {}) {
      const tokens = tokenize(typed, { mergeRefs: true });
      const names = localNames(tokens);
      const spelled = tokens.map((token, index): string => {
        if (names.has(index)) return `_xlpm.${token.value}`;
        if (token.type === "func") return storedNames.get(token.value.toUpperCase()) ?? storedFunctionName(token.value);
        return storedReference(token, place);
      });
      return storedOperators(tokens, spelled, 0, tokens.length);
    },
  };
}

/** Spells tokens of a stored formula as typed; SINGLE(x) becomes @x and ANCHORARRAY(x) becomes x#. */
function typedTokens(tokens: readonly Token[], nameOf: (name: string) => string): string {
  let text = "";
  for (let index = 0; index < tokens.length; index++) {
    const token = tokens[index]!;
    const operator = token.type === "func" ? OPERATOR_FUNCTIONS.get(token.value.toUpperCase()) : undefined;
    const end = operator === undefined ? undefined : closingOf(tokens, index + 1);
    if (operator === undefined || end === undefined) {
      text += typedToken(token, nameOf);
      continue;
    }
    const inner = tokens.slice(index + 2, end);
    const operand = isPrimary(inner) ? typedTokens(inner, nameOf) : `(${typedTokens(inner, nameOf)})`;
    text += operator === "@" ? `@${operand}` : `${operand}#`;
    index = end;
  }
  return text;
}

const OPERATOR_FUNCTIONS: ReadonlyMap<string, "@" | "#"> = new Map([
  ["_XLFN.SINGLE", "@"],
  ["_XLFN.ANCHORARRAY", "#"],
]);

function typedToken(token: Token, nameOf: (name: string) => string): string {
  const { type, value } = token;
  if (type === "func") return nameOf(value.replace(/^_xlpm\./i, ""));
  if (type === "range_named") return value.replace(/^_xl(pm|eta)\./i, "");
  if (type !== "structured") return value;
  const reference = parseStructRef(value);
  if (reference === undefined) return value;
  const { table, columns = [], sections = [] } = reference;
  return table && columns.length === 0 && sections.length === 0 ? table : stringifyStructRef(reference);
}

/** Whether the tokens are one reference or one function call, needing no parentheses beside an operator. */
function isPrimary(tokens: readonly Token[]): boolean {
  const [first] = tokens;
  if (first === undefined) return false;
  if (tokens.length === 1) return isReference(first);
  return first.type === "func" && closingOf(tokens, 1) === tokens.length - 1;
}

function storedReference(token: Token, { tables = [], ownTable }: FormulaPlace): string {
  const { type, value } = token;
  if (type === "range_named") {
    return tables.some((table) => table.toUpperCase() === value.toUpperCase()) ? `${value}[]` : value;
  }
  const reference = type === "structured" ? parseStructRef(value) : undefined;
  if (reference === undefined) return value;
  const table = reference.table || ownTable;
  return stringifyStructRef(table === undefined ? reference : { ...reference, table }, { thisRow: true });
}

/** Joins tokens already spelled for storage, turning the operators @x and x# into the functions that store them. */
function storedOperators(tokens: readonly Token[], spelled: readonly string[], from: number, to: number): string {
  const parts: { readonly text: string; readonly start: number }[] = [];
  for (let index = from; index < to; index++) {
    const token = tokens[index]!;
    if (isOperator(token, "@")) {
      const end = operandEnd(tokens, index + 1, to);
      parts.push({ text: `_xlfn.SINGLE(${operandText(tokens, spelled, index + 1, end)})`, start: index });
      index = end - 1;
    } else if (isOperator(token, "#")) {
      const start = operandStart(tokens, index - 1);
      while (parts.length > 0 && parts[parts.length - 1]!.start >= start) parts.pop();
      parts.push({ text: `_xlfn.ANCHORARRAY(${operandText(tokens, spelled, start, index)})`, start });
    } else {
      parts.push({ text: spelled[index]!, start: index });
    }
  }
  return parts.map(({ text }) => text).join("");
}

/** The operand's text; parentheses that only hold it together are left out. */
function operandText(tokens: readonly Token[], spelled: readonly string[], from: number, to: number): string {
  const grouped = isOperator(tokens[from], "(") && closingOf(tokens, from) === to - 1;
  return grouped ? storedOperators(tokens, spelled, from + 1, to - 1) : storedOperators(tokens, spelled, from, to);
}
