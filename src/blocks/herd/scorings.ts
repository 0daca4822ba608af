import { call } from "../expression/call";
import { columns } from "../expression/columns";
import type { Expression } from "../expression/expression";
import { filtered } from "../expression/filtered";
import { arithmetic, iff, ifNa, isNumber } from "../expression/operators";

const { date, score } = columns("Scores", "date", "score");
const scoredOn = filtered(date, { column: score, is: "a number" });

export const SCORING_NOTE =
  "A scoring is a day on which more than half as many cows were scored as on the fullest day of the year up to it: single cows scored at the chute make none. Common practice, no source.";

/** The last day up to `day` on which the herd was scored; `none` where there is no such day. */
export function scoringUpTo(day: Expression, none: string): Expression {
  return ifNa(call("LAME.SCORING", scoredOn, day), none);
}

/** The scoring before a day; `none` where there is none, or where `day` is none. */
export function scoringBefore(day: Expression, none: string): Expression {
  return iff(isNumber(day), scoringUpTo(arithmetic(day, "-", 1), none), none);
}
