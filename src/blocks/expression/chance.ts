import { chanceOfDifference } from "../../core/shared/statistics/two-counts";
import { single } from "./elementwise";
import type { Expression, Run } from "./expression";
import { Fault } from "./fault";

/**
 * How often chance alone parts two counts so far, or farther, where `expected` is the first count's part of the time
 * at risk. Excel's own binomial distribution tells the two tails.
 */
export function chanceOf(cases: Expression, casesBefore: Expression, expected: Expression): Expression {
  return {
    text(names) {
      const [now, before, share] = [cases, casesBefore, expected].map((each) => each.text(names));
      const both = `${now}+${before}`;
      const tail = (from: string, to: string): string => `BINOM.DIST.RANGE(${both},${share},${from},${to})`;
      return `MIN(1,2*MIN(${tail("0", now!)},${tail(now!, both)}))`;
    },
    compute(run) {
      const [now, before] = [cases, casesBefore].map((each) => numberOf(each, run, "Two counts are needed."));
      const share = numberOf(expected, run, NO_DAYS);
      if (now! + before! === 0) return 1;
      if (share <= 0 || share >= 1) throw new Fault("#NUM!", NO_DAYS);
      return chanceOfDifference(now!, before!, share);
    },
  };
}

const NO_DAYS = "One of the two times has no cow-days.";

function numberOf(expression: Expression, run: Run, sentence: string): number {
  const value = single(expression.compute(run));
  if (typeof value !== "number") throw new Fault("#VALUE!", sentence);
  return value;
}
