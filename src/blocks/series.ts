import type { Series } from "./block";
import type { Expression } from "./expression/expression";
import { iff, is } from "./expression/operators";
import { cellOfSeries, part } from "./expression/places";

/** The day of the row above one of a series; nothing where that row has none already. */
export function dayAbove({ id, before }: Series, row: number): Expression {
  const day = part(cellOfSeries(id, row, 0));
  return iff(is(day, "=", ""), "", before(day));
}

/** The figures of a row of a series; nothing where it has no day. */
export function figuresOfDay({ id, figures }: Series, row: number): readonly Expression[] {
  const day = part(cellOfSeries(id, row, 0));
  return figures(day).map((figure) => iff(is(day, "=", ""), "", figure));
}
