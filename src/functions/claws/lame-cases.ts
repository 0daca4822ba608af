import { lamenessStates, type LamenessState } from "../../core/claws/lameness-cases";
import { isOnScale, type MobilityScale } from "../../core/claws/mobility";
import { daros2019 } from "../../core/reference/daros-2019";
import { isoDate } from "../../core/shared/days";
import { DomainError, unavailable } from "../../core/shared/domain-error";
import { commonPractice } from "../../core/shared/source";
import { NO_WORD } from "../../core/shared/words";
import { type Column, numbersOf, rowName, wordsOf } from "../columns";
import { defineFunction } from "../define";
import { cowsParameter, datesParameter, remarkLeftOut } from "./kinds-of-findings";
import { GROUP, isNoScore, refuseOffScale, scaleParameter, scoresParameter, zeroLimit } from "./kinds-of-scores";

/** One row of each state, shared by all cells of the result. */
const CELLS: Readonly<Record<LamenessState, readonly [string]>> = {
  sound: ["sound"],
  new: ["new"],
  lame: ["lame"],
  recovered: ["recovered"],
  unconfirmed: ["unconfirmed"],
};
const EMPTY = [""] as const;

export const lameCases = defineFunction({
  id: "LAME.CASES",
  group: GROUP,
  summary: "State of a cow at each score, so that a single odd score makes no case: sound, new, lame, recovered.",
  parameters: { cows: cowsParameter, dates: datesParameter, scores: scoresParameter, scale: scaleParameter },
  result: { shape: "column", type: "text" },
  sources: [daros2019, commonPractice("the same rule on the scale 0-3, with two scores of 2 or one of 3.")],
  limits: [
    "Lame after two scores in a row of 3 (or 3.5), or one of 4 or more; sound after two in a row below 3. On the scale 0-3: two of 2, or one of 3; two below 2.",
    "A change is dated to the score that confirms it. Before the first confirmation a cow is unconfirmed; lame from the start is no new case.",
    "Made for scores one or two weeks apart: scores far apart do not confirm each other, but are taken so.",
    zeroLimit,
  ],
  cautions: ["Look at a lame cow when she is seen lame: do not wait for a second score."],
  examples: [
    {
      arguments: [
        [[1], [1], [1], [1], [1], [1], [1]],
        [[45_300], [45_307], [45_314], [45_321], [45_328], [45_335], [45_342]],
        [[2], [1], [3], [3], [2], [2], [4]],
        "1-5",
      ],
      result: [["unconfirmed"], ["sound"], ["sound"], ["new"], ["lame"], ["recovered"], ["new"]],
      origin: "printed",
      where: "rule as printed in Daros et al. 2019, worked by hand",
    },
    {
      arguments: [[[5], [5], [6]], [[45_307], [45_300], [45_300]], [[2], [2], ["dry"]], "0-3"],
      result: [["lame"], ["unconfirmed"], [""]],
      origin: "hand",
      where: "rows out of order; lame at the second score, and never known sound before",
    },
  ],
  compute(args, remarks) {
    const { states, leftOut } = statesOf(args);
    remarkLeftOut(remarks, leftOut, "no cow, date or score");
    return Array.from(states, (state) => (state === undefined ? EMPTY : CELLS[state]));
  },
  steps(args) {
    const { states } = statesOf(args);
    const rows = (wanted: LamenessState) => String(states.reduce((sum, state) => sum + (state === wanted ? 1 : 0), 0));
    return [
      { label: "Rule", working: `two scores in a row, or one severe one; scale ${args.scale}`, value: "" },
      { label: "New cases", working: "sound before, now confirmed lame", value: rows("new") },
      { label: "Recovered", working: "lame before, now confirmed sound", value: rows("recovered") },
      { label: "Unconfirmed", working: "scores before the first two that agree", value: rows("unconfirmed") },
    ];
  },
});

interface Arguments {
  readonly cows: Column<string>;
  readonly dates: Column<number>;
  readonly scores: Column<number>;
  readonly scale: MobilityScale;
}

function statesOf({ cows, dates, scores, scale }: Arguments): {
  readonly states: readonly (LamenessState | undefined)[];
  readonly leftOut: number;
} {
  const scored = scoresOn(scale, scores);
  const days = numbersOf(dates);
  const words = wordsOf(cows);
  const states = lamenessStates({ cows: words, dates: days, scores: scored }, scale);
  if ("row" in states) {
    const { row, earlierRow } = states;
    throw new DomainError(
      "invalid",
      `${rowName(dates.argument, Math.max(row, earlierRow))} must be another day than row ${Math.min(row, earlierRow) + 1} of the same cow; got ${isoDate(days[row]!)} twice`,
    );
  }
  let [leftOut, used] = [0, 0];
  for (let row = 0; row < states.length; row++) {
    if (states[row] !== undefined) used++;
    else if (words.places[row] !== NO_WORD || !Number.isNaN(days[row]!) || !Number.isNaN(scored[row]!)) leftOut++;
  }
  if (used === 0) throw unavailable("scores holds no score with its cow and date");
  return { states, leftOut };
}

/** The scores, NaN where there is none. */
function scoresOn(scale: MobilityScale, scores: Column<number>): Float64Array {
  const scored = numbersOf(scores).slice();
  for (let row = 0; row < scored.length; row++) {
    const score = scored[row]!;
    if (isNoScore(score, scale)) scored[row] = NaN;
    else if (!isOnScale(score, scale)) refuseOffScale(score, scale, rowName(scores.argument, row));
  }
  return scored;
}
