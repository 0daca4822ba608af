import {
  isArrayNode,
  isCallNode,
  isErrorNode,
  isLiteralNode,
  isReferenceNode,
  isUnaryNode,
  parseA1Ref,
  parseStructRef,
  type ReferenceIdentifier,
} from "@borgar/fx";
import type { PlainArgument, PlainCell } from "../port";
import type { ArgumentNode } from "../written-calls";
import { lookUpTable } from "./table-reference";

/** What an argument is, once Excel has answered: a value that the formula holds, or a range to be read. */
export type Found = { readonly value: PlainArgument } | { readonly range: Excel.Range } | undefined;

/** Where the formula stands, and the names that it gives itself. */
export interface Home {
  readonly context: Excel.RequestContext;
  readonly sheet: Excel.Worksheet;
  readonly cell: Excel.Range;
  readonly localNames: ReadonlySet<string>;
}

/**
 * Queues what must be asked of Excel to know an argument. The answer is undefined for what is computed inside the
 * formula and for names, sheets and tables that are not there; it may be taken after the next sync.
 */
export function lookUp(node: ArgumentNode, home: Home): () => Found {
  if (node === null) return () => ({ value: null });
  if (isLiteralNode(node) || isErrorNode(node)) return () => ({ value: node.value });
  if (isArrayNode(node)) return () => arrayValue(node.elements);
  if (isReferenceNode(node)) return lookUpReference(node, home);
  if (isUnaryNode(node)) return lookUpMarked(node.operator, node.arguments[0] ?? null, home);
  if (isCallNode(node)) return lookUpDay(node.callee.name, node.arguments, home);
  return () => undefined;
}

function arrayValue(elements: readonly (readonly ArgumentNode[])[]): Found {
  const rows: PlainCell[][] = [];
  for (const row of elements) {
    const cells: PlainCell[] = [];
    for (const node of row) {
      if (!isLiteralNode(node) && !isErrorNode(node)) return undefined;
      cells.push(node.value);
    }
    rows.push(cells);
  }
  return { value: rows };
}

/** A1# is the range filled from A1; @A1 is the cell itself. */
function lookUpMarked(mark: string, node: ArgumentNode, home: Home): () => Found {
  if (node === null || !isReferenceNode(node)) return () => undefined;
  const find = lookUpReference(node, home);
  if (mark === "@" && node.kind === "range" && !node.value.includes(":")) return find;
  if (mark !== "#") return () => undefined;
  return () => {
    const found = find();
    return found !== undefined && "range" in found ? { range: found.range.getSpillingToRange() } : undefined;
  };
}

function lookUpReference(node: ReferenceIdentifier, home: Home): () => Found {
  if (node.kind === "table") return lookUpTableReference(node.value, home);
  const reference = parseA1Ref(node.value);
  const [sheetName, ...more] = reference?.context ?? [];
  if (reference === undefined || more.length > 0) return () => undefined;
  const sheet = sheetName === undefined ? home.sheet : home.context.workbook.worksheets.getItem(sheetName);
  if ("name" in reference) return lookUpName(reference.name, sheet, home);
  const address = node.value.slice(node.value.lastIndexOf("!") + 1);
  return () => ({ range: sheet.getRange(address) });
}

/** A name of the sheet goes before the same name of the workbook; a table's name alone is its data. */
function lookUpName(name: string, sheet: Excel.Worksheet, { context, localNames }: Home): () => Found {
  if (localNames.has(name.toLowerCase())) return () => undefined;
  const { workbook } = context;
  const ofSheet = sheet.names.getItemOrNullObject(name);
  const ofWorkbook = workbook.names.getItemOrNullObject(name);
  const table = workbook.tables.getItemOrNullObject(name);
  ofSheet.load("type");
  ofWorkbook.load("type");
  return () => {
    const named = [ofSheet, ofWorkbook].find((item) => !item.isNullObject);
    if (named !== undefined) return named.type === "Range" ? { range: named.getRange() } : undefined;
    return table.isNullObject ? undefined : { range: table.getDataBodyRange() };
  };
}

function lookUpTableReference(text: string, { context, cell }: Home): () => Found {
  const reference = parseStructRef(text);
  if (reference === undefined) return () => undefined;
  const answer = lookUpTable(context, cell, reference);
  return () => {
    const range = answer();
    return range === undefined ? undefined : { range };
  };
}

/** TODAY() and a DATE of plain numbers, which formulas often hold, are asked of Excel. */
function lookUpDay(name: string, nodes: readonly ArgumentNode[], { context }: Home): () => Found {
  const numbers = nodes.map((node) => (node !== null && isLiteralNode(node) ? node.value : undefined));
  const [year, month, day] = numbers;
  const { functions } = context.workbook;
  const result =
    name.toUpperCase() === "TODAY" && numbers.length === 0
      ? functions.today()
      : name.toUpperCase() === "DATE" &&
          typeof year === "number" &&
          typeof month === "number" &&
          typeof day === "number"
        ? functions.date(year, month, day)
        : undefined;
  result?.load("value");
  return () => (result === undefined ? undefined : { value: result.value });
}
