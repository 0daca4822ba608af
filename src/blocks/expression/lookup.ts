import type { PlainCell } from "../../workbook/port";
import { asTexts } from "./aggregates";
import { cellOf, rowsOf } from "./elementwise";
import type { Expression, Run } from "./expression";
import { isRows, literalText, type Value } from "./values";
import { foldedCell } from "./order";
import { stepsOf } from "./steps";

/**
 * XLOOKUP of each cell of `wanted` among others: the cell of `results` beside the first that is equal, else `none`.
 * Wrap cows in `asTexts`: 114 and "114" are one for the worksheet functions, and two for a lookup.
 */
export function lookUp(wanted: Expression, among: Expression, results: Expression, none: PlainCell): Expression {
  const expression: Expression = {
    isKept: true,
    steps: stepsOf(among, results, wanted),
    text(names) {
      const texts = [wanted, among, results].map((part) => part.text(names));
      return `XLOOKUP(${[...texts, literalText(none)].join(",")})`;
    },
    compute: (run) => run.once(expression, () => lookedUp(run)),
  };
  const lookedUp = (run: Run): Value => {
    const places = placesOf(among, run);
    const found = results.compute(run);
    const find = (cell: PlainCell): PlainCell => {
      const place = places.get(foldedCell(cell ?? ""));
      return place === undefined ? none : cellOf(found, place);
    };
    const given = wanted.compute(run);
    return isRows(given) ? given.map(([cell = null]) => [find(cell)]) : find(given);
  };
  return expression;
}

/**
 * How many different cows of a column stand also among others: COUNT(XMATCH(UNIQUE(...), ...)). As for the worksheet
 * functions 114 and "114" are one.
 */
export function countFound(cows: Expression, amongCows: Expression): Expression {
  const [wanted, among] = [asTexts(cows), asTexts(amongCows)];
  return {
    steps: stepsOf(wanted, among),
    text: (names) => `COUNT(XMATCH(UNIQUE(${wanted.text(names)}),UNIQUE(${among.text(names)})))`,
    compute(run) {
      const places = placesOf(among, run);
      const different = new Set(rowsOf(wanted.compute(run)).map(([cell = null]) => foldedCell(cell ?? "")));
      let found = 0;
      for (const cell of different) if (places.has(cell)) found++;
      return found;
    },
  };
}

/** First place of each cell. */
function placesOf(among: Expression, run: Run): ReadonlyMap<PlainCell, number> {
  const places = new Map<PlainCell, number>();
  rowsOf(among.compute(run)).forEach(([cell = null], place) => {
    const key = foldedCell(cell ?? "");
    if (!places.has(key)) places.set(key, place);
  });
  return places;
}
