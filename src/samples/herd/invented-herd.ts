import type { RecheckRule } from "../../core/claws/recheck-rules";
import type { RowOf } from "../../workbook/table-definition";
import type { cowsTable } from "../../workbook/tables";
import { clawCases } from "./claw-cases";
import { type FindingRow, findingRows } from "./findings";
import { AS_OF_DAY, type CowLife, daysInMilkOn, herdLives, lactationOn } from "./lives";
import { type TestRow, testRows } from "./milk-tests";
import { type ScoreRow, scoreRows } from "./mobility";
import { withNotes } from "./notes";
import { Random } from "./random";

export type CowRow = RowOf<typeof cowsTable>;

export interface InventedHerd {
  readonly cows: readonly CowRow[];
  readonly findings: readonly FindingRow[];
  readonly scores: readonly ScoreRow[];
  readonly tests: readonly TestRow[];
}

/** One seed for each part, so that a change to one part leaves the others as they are. */
const SEEDS = { lives: 1401, cases: 248, findings: 80, scores: 1404, tests: 1405 } as const;

/** The invented herd: the same rows on every machine. No cow, farm or person in it exists. */
export function inventedHerd(rules: readonly RecheckRule[]): InventedHerd {
  const lives = herdLives(new Random(SEEDS.lives));
  const cases = clawCases(lives, new Random(SEEDS.cases));
  const findings = findingRows(lives, cases, rules, new Random(SEEDS.findings));
  return {
    cows: lives.map(cowRow),
    findings: withNotes(findings),
    scores: scoreRows(lives, cases, new Random(SEEDS.scores)),
    tests: testRows(lives, new Random(SEEDS.tests)),
  };
}

/** A dry-off day is planned once she is far enough on to be known in calf. */
const KNOWN_IN_CALF_DAYS_IN_MILK = 120;

function cowRow(life: CowLife): CowRow {
  const date = life.left ?? AS_OF_DAY;
  const lactation = lactationOn(life, date - 1)!;
  const { dryOff } = lactation;
  const planned = date - lactation.calved >= KNOWN_IN_CALF_DAYS_IN_MILK ? dryOff : undefined;
  return {
    cow: life.cow,
    born: life.born,
    lactation: lactation.number,
    calved: lactation.calved,
    dryOff: planned ?? null,
    entered: life.entered,
    left: life.left ?? null,
    group: life.left === undefined ? groupOf(daysInMilkOn(life, AS_OF_DAY)) : null,
  };
}

function groupOf(daysInMilk: number | undefined): string {
  if (daysInMilk === undefined) return "dry";
  return daysInMilk <= 30 ? "fresh" : daysInMilk <= 200 ? "high" : "low";
}
