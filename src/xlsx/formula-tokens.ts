import type { Token } from "@borgar/fx";

export function isOperator(token: Token | undefined, value: string): boolean {
  return token?.type === "operator" && token.value === value;
}

export function isSpace(token: Token | undefined): boolean {
  return token?.type === "whitespace" || token?.type === "newline";
}

/** Index of the parenthesis that closes the one at `open`; undefined when there is none. */
export function closingOf(tokens: readonly Token[], open: number): number | undefined {
  if (!isOperator(tokens[open], "(")) return undefined;
  let depth = 0;
  for (let index = open; index < tokens.length; index++) {
    if (isOperator(tokens[index], "(")) depth++;
    else if (isOperator(tokens[index], ")") && --depth === 0) return index;
  }
  return undefined;
}

/** Index of the parenthesis that opens the one closed at `close`; undefined when there is none. */
function openingOf(tokens: readonly Token[], close: number): number | undefined {
  let depth = 0;
  for (let index = close; index >= 0; index--) {
    if (isOperator(tokens[index], ")")) depth++;
    else if (isOperator(tokens[index], "(") && --depth === 0) return index;
  }
  return undefined;
}

/** Where each argument of the call whose parenthesis opens at `open` stands: [first, after last]. */
export function argumentsOf(tokens: readonly Token[], open: number, close: number): [number, number][] {
  const ranges: [number, number][] = [];
  let start = open + 1;
  let depth = 0;
  for (let index = open + 1; index < close; index++) {
    const token = tokens[index];
    if (isOperator(token, "(") || isOperator(token, "{")) depth++;
    else if (isOperator(token, ")") || isOperator(token, "}")) depth--;
    else if (depth === 0 && isOperator(token, ",")) {
      ranges.push([start, index]);
      start = index + 1;
    }
  }
  ranges.push([start, close]);
  return ranges;
}

/** Index after the operand that begins here: a reference, a call or a group, with its "#" and ":" parts. */
export function operandEnd(tokens: readonly Token[], from: number, to: number): number {
  let index = from;
  while (index < to && isSpace(tokens[index])) index++;
  if (tokens[index]?.type === "func") index++;
  if (isOperator(tokens[index], "(")) index = closingOf(tokens, index) ?? to - 1;
  index++;
  while (index < to && isOperator(tokens[index], "#")) index++;
  return isOperator(tokens[index], ":") ? operandEnd(tokens, index + 1, to) : Math.min(index, to);
}

/** Index at which the operand that ends here begins. */
export function operandStart(tokens: readonly Token[], last: number): number {
  if (!isOperator(tokens[last], ")")) return Math.max(last, 0);
  const open = openingOf(tokens, last) ?? 0;
  return tokens[open - 1]?.type === "func" ? open - 1 : open;
}
