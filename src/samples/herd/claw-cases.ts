import { dateOf, type DaySerial } from "../../core/shared/days";
import { LESION_HABITS, type LesionHabit } from "./lesion-habits";
import { type CowLife, daysInMilkOn, FIRST_RECORD, inHerd, lactationOn, LAST_RECORD } from "./lives";
import type { Random } from "./random";

/** A lesion as it is in the cow, whether or not anyone has seen it yet. */
export interface ClawCase {
  readonly life: CowLife;
  readonly habit: LesionHabit;
  readonly onset: DaySerial;
  readonly foot: string;
  readonly claw: string | null;
  readonly zone: number | null;
  readonly stage: string | null;
  readonly severity: number;
  readonly painful: boolean;
  /** The day it is over by itself when nobody treats it. */
  readonly fades: DaySerial;
  /** Set once it is treated: how long she walks badly afterwards. */
  treated?: { readonly on: DaySerial; readonly soundFrom: DaySerial };
}

const WEEK = 7;
const DAYS_PER_YEAR = 365.25;
/** A cow that has had a lesion takes it again more readily (Randall et al. 2018 for lameness; the number is ours). */
const AGAIN = 2.4;
/** Lesions that began before the records do are found in them. */
const RUN_IN_DAYS = 90;

/** All lesions of the herd, cow by cow and week by week, in order of onset. */
export function clawCases(lives: readonly CowLife[], random: Random): ClawCase[] {
  const cases: ClawCase[] = [];
  for (const life of lives) {
    const latest = new Map<LesionHabit, ClawCase>();
    for (let week = FIRST_RECORD - RUN_IN_DAYS; week <= LAST_RECORD; week += WEEK) {
      if (!inHerd(life, week)) continue;
      for (const habit of LESION_HABITS) {
        const before = latest.get(habit);
        if (before !== undefined && week < before.onset + 35) continue;
        if (!random.chance(weeklyRisk(life, habit, week) * (before === undefined ? 1 : AGAIN))) continue;
        const started = startCase(life, habit, week + random.whole(0, 6), before, random);
        latest.set(habit, started);
        cases.push(started);
      }
    }
  }
  return cases.sort((a, b) => a.onset - b.onset || a.life.cow - b.life.cow);
}

function weeklyRisk(life: CowLife, habit: LesionHabit, date: DaySerial): number {
  const lactation = lactationOn(life, date);
  if (lactation === undefined) return 0;
  const byLactation = habit.lactations[Math.min(lactation.number, 3) - 1]!;
  const byStage = habit.stages[stageOf(daysInMilkOn(life, date))]!;
  const bySeason = habit.season.months.includes(dateOf(date).month) ? habit.season.factor : 1;
  const own = habit.infectious ? life.infectionRisk : life.hornRisk;
  return (habit.per100CowYears / 100) * (WEEK / DAYS_PER_YEAR) * byLactation * byStage * bySeason * own;
}

/** Early, mid, late lactation, dry. */
function stageOf(daysInMilk: number | undefined): 0 | 1 | 2 | 3 {
  if (daysInMilk === undefined) return 3;
  return daysInMilk <= 60 ? 0 : daysInMilk <= 150 ? 1 : 2;
}

function startCase(
  life: CowLife,
  habit: LesionHabit,
  onset: DaySerial,
  before: ClawCase | undefined,
  random: Random,
): ClawCase {
  const painful = random.chance(habit.painful);
  const sameFoot = before !== undefined && random.chance(0.75);
  const foot = sameFoot ? before.foot : randomFoot(habit, random);
  return {
    life,
    habit,
    onset,
    foot,
    claw:
      habit.outer === undefined
        ? null
        : random.chance(isHind(foot) ? habit.outer : 1 - habit.outer)
          ? "outer"
          : "inner",
    zone: habit.zones.length === 0 ? null : random.weighted(habit.zones),
    stage: habit.lesion === "DD" ? dermatitisStage(painful, before, random) : null,
    severity: painful
      ? random.weighted([
          [2, 3],
          [3, 1],
        ])
      : random.weighted([
          [1, 3],
          [2, 1],
        ]),
    painful,
    fades: onset + random.whole(90, 180),
  };
}

function randomFoot(habit: LesionHabit, random: Random): string {
  const side = random.chance(0.5) ? "L" : "R";
  return side + (random.chance(habit.hind) ? "H" : "F");
}

function dermatitisStage(painful: boolean, before: ClawCase | undefined, random: Random): string {
  if (painful) return "M2";
  return random.weighted(
    before === undefined
      ? [
          ["M2", 4],
          ["M1", 4],
          ["M4", 1],
        ]
      : [
          ["M4.1", 4],
          ["M2", 2],
          ["M4", 3],
        ],
  );
}

export function isHind(foot: string): boolean {
  return foot.endsWith("H");
}

/** Whether she walks badly from it on a day. */
export function hurtsOn(clawCase: ClawCase, date: DaySerial): boolean {
  const { painful, onset, fades, treated } = clawCase;
  return painful && onset <= date && date < (treated?.soundFrom ?? fades);
}

/** Whether it can be found on a day by someone who lifts the foot. */
export function openOn(clawCase: ClawCase, date: DaySerial): boolean {
  const { onset, fades, treated } = clawCase;
  return treated === undefined && onset <= date && date < fades;
}
