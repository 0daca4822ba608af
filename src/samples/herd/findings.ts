import { recheckDays, type RecheckRule, ruleFor } from "../../core/claws/recheck-rules";
import type { DaySerial } from "../../core/shared/days";
import type { RowOf } from "../../workbook/table-definition";
import type { findingsTable } from "../../workbook/tables";
import { type ClawCase, hurtsOn, isHind, openOn } from "./claw-cases";
import { type CowLife, daysInMilkOn, FIRST_RECORD, inHerd, lactationOn, LAST_RECORD } from "./lives";
import { scoringDays } from "./mobility";
import type { Random } from "./random";
import { toeMeasurement } from "./toes";

export type FindingRow = RowOf<typeof findingsTable>;

/** The trimmer comes once a month, on a Wednesday. */
const TRIMMER_EVERY_DAYS = 28;
const FIRST_VISIT: DaySerial = FIRST_RECORD + 1;
/** A lame cow is noticed at a scoring, not always at the first. */
const NOTICED = 0.6;
/** Found by the trimmer when the foot is lifted. */
const FOUND = 0.85;

/** Everything the farm and its trimmer wrote down, in order of date. Marks the cases that were treated. */
export function findingRows(
  lives: readonly CowLife[],
  cases: readonly ClawCase[],
  rules: readonly RecheckRule[],
  random: Random,
): FindingRow[] {
  const rows: FindingRow[] = [];
  const book = new Book(rows, rules, random);
  const lastTrim = new Map<CowLife, DaySerial>();
  for (let date = FIRST_RECORD; date <= LAST_RECORD; date++) {
    book.recheck(date);
    if (scoringDays.includes(date)) noticeLame(cases, date, book, random);
    if ((date - FIRST_VISIT) % TRIMMER_EVERY_DAYS === 0) trimmingDay(lives, cases, date, book, lastTrim, random);
    book.treatWaiting(date);
  }
  return rows.sort((a, b) => a.date - b.date || Number(a.cow) - Number(b.cow));
}

function noticeLame(cases: readonly ClawCase[], date: DaySerial, book: Book, random: Random): void {
  for (const clawCase of cases) {
    if (hurtsOn(clawCase, date) && openOn(clawCase, date) && inHerd(clawCase.life, date) && random.chance(NOTICED))
      book.wait(clawCase, date + random.whole(1, 8));
  }
}

/** Routine trims before drying off and in mid lactation; whatever is on the feet is found and written down. */
function trimmingDay(
  lives: readonly CowLife[],
  cases: readonly ClawCase[],
  date: DaySerial,
  book: Book,
  lastTrim: Map<CowLife, DaySerial>,
  random: Random,
): void {
  for (const life of lives) {
    if (!inHerd(life, date) || date - (lastTrim.get(life) ?? 0) < 70 || !isDueForTrim(life, date)) continue;
    lastTrim.set(life, date);
    const found = cases.filter((open) => open.life === life && openOn(open, date) && random.chance(FOUND));
    found.forEach((clawCase, index) => book.treat(clawCase, date, index === 0));
    if (found.length === 0) book.sound(life, date);
  }
}

/** Trimmed a little before the days that the trim rules name: 117 days in milk, 21 days before dry-off. */
const MID_LACTATION_DAYS = 107;
const DRY_OFF_AHEAD_DAYS = 31;

function isDueForTrim(life: CowLife, date: DaySerial): boolean {
  const lactation = lactationOn(life, date);
  const daysInMilk = daysInMilkOn(life, date);
  if (lactation === undefined || daysInMilk === undefined) return false;
  const beforeDryOff = lactation.dryOff !== undefined && lactation.dryOff - date <= DRY_OFF_AHEAD_DAYS;
  return beforeDryOff || (daysInMilk >= MID_LACTATION_DAYS && daysInMilk < MID_LACTATION_DAYS + TRIMMER_EVERY_DAYS + 7);
}

interface OpenRow {
  readonly index: number;
  readonly clawCase: ClawCase;
  readonly lookOn: DaySerial;
  readonly times: number;
}

/** Writes the rows and keeps track of what has to be looked at again. */
class Book {
  private open: OpenRow[] = [];
  private readonly waiting = new Map<ClawCase, DaySerial>();

  constructor(
    private readonly rows: FindingRow[],
    private readonly rules: readonly RecheckRule[],
    private readonly random: Random,
  ) {}

  wait(clawCase: ClawCase, until: DaySerial): void {
    if (!this.waiting.has(clawCase)) this.waiting.set(clawCase, until);
  }

  treatWaiting(date: DaySerial): void {
    for (const [clawCase, until] of this.waiting) {
      if (until > date) continue;
      this.waiting.delete(clawCase);
      if (openOn(clawCase, date) && inHerd(clawCase.life, date)) this.treat(clawCase, date, this.random.chance(0.5));
    }
  }

  treat(clawCase: ClawCase, date: DaySerial, measured: boolean, times = 1): void {
    const { random } = this;
    clawCase.treated = { on: date, soundFrom: date + random.whole(10, 35) + (times > 1 ? 7 : 0) };
    const { habit, life } = clawCase;
    const index = this.rows.length;
    const days = recheckDays(ruleFor(this.rules, habit.lesion) ?? { lesion: habit.lesion });
    this.rows.push({
      ...this.head(life, date),
      foot: clawCase.foot,
      claw: clawCase.claw,
      zone: clawCase.zone,
      lesion: habit.lesion,
      stage: times > 1 && clawCase.stage === "M2" ? random.pick(["M2", "M4.1"]) : clawCase.stage,
      severity: clawCase.severity,
      ...(measured && isHind(clawCase.foot) ? toeMeasurement(life, date, random) : NOT_MEASURED),
      treatment: random.chance(0.02) ? null : random.weighted(habit.treatments),
      ...NOT_SEEN_AGAIN,
      closedOn: days.length === 0 ? date : null,
      note: null,
    });
    if (days.length > 0) this.open.push({ index, clawCase, lookOn: date + this.nextLook(days, times), times });
  }

  /** People are late, and now and then forget. The second look at a claw horn lesion is the second day of its rule. */
  private nextLook(days: readonly number[], times: number): number {
    const [first = 0, second = 2 * first] = days;
    const late = this.random.weighted([
      [0, 6],
      [1, 3],
      [2, 2],
      [4, 2],
      [12, 1],
    ]);
    return (times === 1 ? first : second - first) + late;
  }

  sound(life: CowLife, date: DaySerial): void {
    this.rows.push({
      ...this.head(life, date),
      foot: this.random.pick(["LH", "RH"]),
      claw: "inner",
      zone: null,
      lesion: "none",
      stage: null,
      severity: null,
      ...toeMeasurement(life, date, this.random),
      treatment: "trim",
      ...NOT_SEEN_AGAIN,
      closedOn: date,
      note: null,
    });
  }

  /** Looks at what is due: closes it, or treats it again and writes another row. A cow that left is closed too. */
  recheck(date: DaySerial): void {
    const due = this.open.filter(({ lookOn, clawCase }) => lookOn <= date || clawCase.life.left === date);
    this.open = this.open.filter((row) => !due.includes(row));
    for (const { index, clawCase, times } of due) {
      const here = inHerd(clawCase.life, date);
      const heals = healsBy(clawCase, times);
      const again = here && times < 4 && !this.random.chance(heals);
      const seen = here ? { seenAgain: date, outcome: again ? "same" : "healed" } : { outcome: "gone" };
      this.rows[index] = { ...this.rows[index]!, ...seen, closedOn: date };
      if (again) this.treat(clawCase, date, false, times + 1);
      else if (here) this.takeBlockOff(this.rows[index]!, date);
    }
  }

  /** A foot with a block is written down once more when the block comes off. */
  private takeBlockOff(row: FindingRow, date: DaySerial): void {
    if (row.treatment?.includes("block") !== true) return;
    const { daysInMilk, date: treatedOn } = row;
    const later = daysInMilk === null ? null : Number(daysInMilk) + date - treatedOn;
    this.rows.push({
      ...row,
      date,
      daysInMilk: later,
      ...NOT_MEASURED,
      severity: 1,
      treatment: "trim",
      ...NOT_SEEN_AGAIN,
      closedOn: date,
      note: "block off, walks sound",
    });
  }

  private head(life: CowLife, date: DaySerial): Pick<FindingRow, "date" | "cow" | "lactation" | "daysInMilk"> {
    return {
      date,
      cow: life.cow,
      lactation: lactationOn(life, date)?.number ?? null,
      daysInMilk: daysInMilkOn(life, date) ?? null,
    };
  }
}

const NOT_SEEN_AGAIN = { seenAgain: null, outcome: null, nextLook: null } as const;
const NOT_MEASURED = { toeMm: null, measuredFrom: null } as const;

/** The chance that a lesion is found healed; claw horn that hurt is seldom done with at the first look. */
function healsBy({ habit, painful }: ClawCase, times: number): number {
  if (habit.lesion === "DD") return 0.62;
  if (habit.infectious || !painful) return 0.9;
  return times === 1 ? 0.5 : 0.88;
}
