import { parseStructRef, type Token, tokenize } from "@borgar/fx";
import { isOperator } from "../formula-tokens";
import { parseArea } from "../address";

/**
 * A formula that the file does not mark as an array takes of a range that stands alone, or beside an operator, only
 * the cell in its own row or column. As typed, the range then has an @ before it. Source: Microsoft, "Implicit
 * intersection operator: @". What a function gives back is left as it is: programs that write workbooks often leave
 * out the mark for functions that fill cells.
 */
export function withIntersection(formula: string, isBlock: (name: string) => boolean): string {
  if (!/[:[]/.test(formula) && !isBlock(formula) && !/^[^("]*[-+*/^&=<>]/.test(formula)) return formula;
  const tokens = tokenize(formula, { mergeRefs: true });
  let depth = 0;
  return tokens
    .map((token, index) => {
      if (isOperator(token, "(") || isOperator(token, "{")) depth++;
      if (isOperator(token, ")") || isOperator(token, "}")) depth--;
      const isLeft = isOperator(tokens[index - 1], "@") || isOperator(tokens[index - 1], ":");
      const goesOn = isOperator(tokens[index + 1], ":") || isOperator(tokens[index + 1], "#");
      return depth === 0 && !isLeft && !goesOn && mayBeBlock(token, isBlock) ? `@${token.value}` : token.value;
    })
    .join("");
}

/** Whether a token may stand for several cells. */
function mayBeBlock({ type, value }: Token, isBlock: (name: string) => boolean): boolean {
  if (type === "range_beam") return true;
  if (type === "range_named") return isBlock(value);
  if (type === "range") return isSeveral(value);
  const sections = type === "structured" ? parseStructRef(value)?.sections : undefined;
  return type === "structured" && !sections?.some((section) => /^this row$/i.test(section));
}

/** Whether a reference such as Sheet!A1:B2 has more than one cell. */
export function isSeveral(reference: string): boolean {
  const area = parseArea(reference.slice(reference.lastIndexOf("!") + 1));
  return area === undefined || area.firstRow !== area.lastRow || area.firstColumn !== area.lastColumn;
}
