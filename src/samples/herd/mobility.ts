import type { DaySerial } from "../../core/shared/days";
import type { RowOf } from "../../workbook/table-definition";
import type { scoresTable } from "../../workbook/tables";
import { type ClawCase, hurtsOn } from "./claw-cases";
import { type CowLife, daysInMilkOn, FIRST_RECORD, LAST_RECORD, lactationOn } from "./lives";
import type { Random } from "./random";

export type ScoreRow = RowOf<typeof scoresTable>;

const FORTNIGHT = 14;
const FIRST_SCORING: DaySerial = FIRST_RECORD + 2;

/** The cows are scored every second week. */
export const scoringDays: readonly DaySerial[] = Array.from(
  { length: Math.floor((LAST_RECORD - FIRST_SCORING) / FORTNIGHT) + 1 },
  (_, index) => FIRST_SCORING + index * FORTNIGHT,
);

/** Scores 0-3 of the cows in milk, after the findings have marked which cases were treated and when. */
export function scoreRows(lives: readonly CowLife[], cases: readonly ClawCase[], random: Random): ScoreRow[] {
  return scoringDays.flatMap((date) =>
    lives
      .filter((life) => daysInMilkOn(life, date) !== undefined)
      .map((life) => ({ date, cow: life.cow, score: scoreOn(life, cases, date, random) })),
  );
}

/** Now and then a cow is not seen. */
const NOT_SEEN = 0.004;
const NOT_SEEN_MARK = "-";

function scoreOn(life: CowLife, cases: readonly ClawCase[], date: DaySerial, random: Random): number | string {
  if (random.chance(NOT_SEEN)) return NOT_SEEN_MARK;
  const hurting = cases.filter((clawCase) => clawCase.life === life && hurtsOn(clawCase, date));
  const worst = Math.max(0, ...hurting.map(({ severity }) => severity));
  if (worst === 3)
    return random.weighted([
      [3, 5],
      [2, 4],
      [1, 1],
    ]);
  if (worst === 2)
    return random.weighted([
      [3, 1],
      [2, 6],
      [1, 2],
    ]);
  // Stiff and old cows walk badly without a lesion that anyone finds.
  const stiff = 0.025 + 0.03 * ((lactationOn(life, date)?.number ?? 1) - 1) * life.hornRisk;
  return random.weighted([
    [0, 0.62],
    [1, 0.34],
    [2, stiff],
    [3, stiff / 12],
  ]);
}
