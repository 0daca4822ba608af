import { isOnScale, type MobilityScale, mobilityScales, mobilityState } from "../../core/claws/mobility";
import { DomainError, invalid, unavailable } from "../../core/shared/domain-error";
import { type Column, columnOf, numbersOf, rowName } from "../columns";
import { optional, type Remarks, required } from "../define";
import { choice, number, scalarKind } from "../scalars";
import { remarkLeftOut } from "./kinds-of-findings";

export const GROUP = "Lame cows";

const scales = choice(["0-3", "1-5"], { "0 to 3": "0-3", "1 to 5": "1-5" });

/** Typed into a cell, 1-5 becomes a day: the message says how to keep it a text. */
const scale = scalarKind<MobilityScale>({
  ...scales,
  readCell(cell, where) {
    if (typeof cell !== "number") return scales.readCell(cell, where);
    throw invalid(where, `${scales.must} (in a cell, as text: it turns into a date)`, cell);
  },
});
export const scaleParameter = required(scale, '"0-3" (lame from 2, severe 3) or "1-5" (lame from 3, severe from 4)');

/** A mobility score of either scale; the scale's own limits are checked with `refuseOffScale`. */
const score = number({ min: 0, max: 5, reason: "the scales are 0-3 and 1-5" });
export const scoreParameter = required(score, "Mobility score of a cow");
/** Words stand for "not scored"; text with a digit, such as 2b, is refused. */
export const scores = columnOf(score, { notes: "leave out words" });
export const scoresParameter = required(scores, "Mobility score of each cow; blank = not scored");

export const cutoffParameter = optional(
  number({ min: 0, max: 5, reason: "the scales are 0-3 and 1-5", zeroIsBlank: true }),
  "Score from which a cow is called lame",
  '2 on "0-3", 3 on "1-5"',
);

export const zeroLimit =
  'On Windows and Mac, Excel hands a blank cell over as 0, a sound cow on the scale 0-3: pass scored rows only, or IF(scores="","",scores).';
export const scaleLimits = [
  "The two scales cannot be converted into each other: compare shares of lame cows only within a scale and a cut-off.",
  "A sound score does not rule out a lesion: at pasture, scoring found about 2 to 4 of 10 cows with one.",
] as const;

/** The cut-off to use, on the scale and above its lowest score. */
export function cutoffOn(scale: MobilityScale, cutoff: number | undefined): number {
  const { lowest, highest, lameFrom } = mobilityScales[scale];
  if (cutoff === undefined) return lameFrom;
  if (cutoff > lowest && isOnScale(cutoff, scale)) return cutoff;
  throw invalid("cutoff", `a score above ${lowest} and up to ${highest} on the scale ${scale}`, cutoff);
}

export function refuseOffScale(score: number, scale: MobilityScale, where: string): void {
  if (isOnScale(score, scale)) return;
  throw invalid(
    where,
    scale === "0-3" ? "0, 1, 2 or 3 on the scale 0-3" : "1 to 5, halves allowed, on the scale 1-5",
    score,
  );
}

export interface LameCount {
  readonly scored: number;
  readonly lame: number;
  /** Of the lame ones. */
  readonly severe: number;
  /** Rows with a word instead of a score, and zeros where the scale has none. */
  readonly leftOut: number;
}

/** Counts scores; on the scale 1-5 a 0 is a blank as hosts hand it over. */
export function countLame(column: Column<number>, scale: MobilityScale, cutoff: number | undefined): LameCount {
  const from = cutoffOn(scale, cutoff);
  const values = numbersOf(column);
  let [scored, lame, severe] = [0, 0, 0];
  for (let row = 0; row < values.length; row++) {
    const value = values[row]!;
    if (isNoScore(value, scale)) continue;
    if (!isOnScale(value, scale)) refuseOffScale(value, scale, rowName(column.argument, row));
    const state = mobilityState(value, scale, from);
    scored++;
    if (state !== "sound") lame++;
    if (state === "severe") severe++;
  }
  if (scored === 0) throw unavailable(`${column.argument} holds no scores: enter a score a cow`);
  return { scored, lame, severe, leftOut: column.noteRows };
}

export function isNoScore(value: number, scale: MobilityScale): boolean {
  return Number.isNaN(value) || (value === 0 && mobilityScales[scale].lowest > 0);
}

export function remarkScores(remarks: Remarks, count: LameCount): void {
  remarkLeftOut(remarks, count.leftOut, "no score");
}

export function refuseBlankScore(score: number, scale: MobilityScale): void {
  if (isNoScore(score, scale)) throw new DomainError("unavailable", "score is blank: enter a score from 1 to 5");
}
