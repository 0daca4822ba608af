import type { Token } from "@borgar/fx";
import { argumentsOf, closingOf, isSpace } from "./formula-tokens";

/** Indexes of the tokens that are names which LET and LAMBDA declare, where declared and where used. */
export function localNames(tokens: readonly Token[]): ReadonlySet<number> {
  const found = new Set<number>();
  tokens.forEach((token, index) => {
    const call = token.type === "func" ? token.value.toUpperCase() : "";
    if (call !== "LET" && call !== "LAMBDA") return;
    const close = closingOf(tokens, index + 1);
    if (close === undefined) return;
    const names = declaredNames(tokens, argumentsOf(tokens, index + 1, close), call);
    for (let inside = index + 1; inside < close; inside++) {
      const { type, value } = tokens[inside]!;
      if ((type === "range_named" || type === "func") && names.has(value.toUpperCase())) found.add(inside);
    }
  });
  return found;
}

/** LET declares every other argument but the last, LAMBDA all but the last. */
function declaredNames(
  tokens: readonly Token[],
  ranges: readonly (readonly [number, number])[],
  call: "LET" | "LAMBDA",
): ReadonlySet<string> {
  const names = new Set<string>();
  ranges.slice(0, -1).forEach(([from, to], position) => {
    if (call === "LET" && position % 2 === 1) return;
    const [name, ...more] = tokens.slice(from, to).filter((token) => !isSpace(token));
    if (name?.type === "range_named" && more.length === 0) names.add(name.value.toUpperCase());
  });
  return names;
}
