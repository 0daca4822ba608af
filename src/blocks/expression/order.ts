import type { PlainCell } from "../../workbook/port";

export type Comparison = "=" | "<>" | "<" | "<=" | ">" | ">=";

/** Excel puts numbers before texts and texts before TRUE and FALSE. */
const RANKS = { number: 0, string: 1, boolean: 2 } as const;

/** Compares two cells as Excel's operators do: capitals do not matter, and a blank is 0, "" or FALSE as the other asks. */
export function compare(left: PlainCell, operator: Comparison, right: PlainCell): boolean {
  const order = orderOf(left ?? blankAs(right), right ?? blankAs(left));
  switch (operator) {
    case "=":
      return order === 0;
    case "<>":
      return order !== 0;
    case "<":
      return order < 0;
    case "<=":
      return order <= 0;
    case ">":
      return order > 0;
    case ">=":
      return order >= 0;
  }
}

type Filled = Exclude<PlainCell, null>;

function blankAs(other: PlainCell): Filled {
  return typeof other === "string" ? "" : typeof other === "boolean" ? false : 0;
}

function orderOf(left: Filled, right: Filled): number {
  if (typeof left === "number" && typeof right === "number") return left - right;
  const ranks = RANKS[typeof left as keyof typeof RANKS] - RANKS[typeof right as keyof typeof RANKS];
  if (ranks !== 0) return ranks;
  const [a, b] = [foldedCell(left), foldedCell(right)];
  return a < b ? -1 : a > b ? 1 : 0;
}

/** A cell for looking up: texts that differ in capitals alone are one. */
export function foldedCell(cell: Filled): Filled {
  return typeof cell === "string" ? cell.toLowerCase() : cell;
}
