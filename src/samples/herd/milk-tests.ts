import { dateOf, day, type DaySerial } from "../../core/shared/days";
import type { RowOf } from "../../workbook/table-definition";
import type { testsTable } from "../../workbook/tables";
import { type CowLife, daysInMilkOn, lactationOn } from "./lives";
import type { Random } from "./random";

export type TestRow = RowOf<typeof testsTable>;

/** Once a month, on a Tuesday. */
export const testDays: readonly DaySerial[] = [
  "2025-07-15",
  "2025-08-12",
  "2025-09-16",
  "2025-10-14",
  "2025-11-18",
  "2025-12-16",
  "2026-01-13",
  "2026-02-17",
  "2026-03-17",
  "2026-04-14",
  "2026-05-12",
  "2026-06-16",
  "2026-07-14",
  "2026-08-18",
].map(day);

/** Milk of the first days after calving is not tested. */
const FIRST_TEST_DAYS_IN_MILK = 5;
/** Highest count that the laboratory reports, in thousand cells/mL. */
const LABORATORY_CAP = 9999;

/** A month's chance of a new udder infection and of losing it, about those of Fauteux et al. 2014 (0.11 and 0.27). */
const NEW_INFECTION = 0.075;
const CURE = 0.27;
const WARM_MONTHS = [6, 7, 8, 9];
/** Cows whose infection stays for good. */
const LASTING = 0.07;

export function testRows(lives: readonly CowLife[], random: Random): TestRow[] {
  const rows: TestRow[] = [];
  for (const life of lives) {
    const level = random.normal(0, 0.11);
    let infected = random.chance(0.16);
    let lasting = false;
    for (const date of testDays) {
      const daysInMilk = daysInMilkOn(life, date);
      const lactation = lactationOn(life, date)?.number;
      if (daysInMilk === undefined || lactation === undefined || daysInMilk < FIRST_TEST_DAYS_IN_MILK) continue;
      if (infected) infected = lasting || !random.chance(CURE);
      else if (random.chance(newInfectionRisk(life, lactation, date))) {
        infected = true;
        lasting = lactation > 1 && random.chance(LASTING * life.udderRisk);
      }
      const milkKg = milkOn(lactation, daysInMilk, date, level, random);
      rows.push({
        date,
        cow: life.cow,
        lactation,
        daysInMilk,
        milkKg,
        count: countOn(lactation, daysInMilk, infected, random),
      });
    }
  }
  rows.sort((a, b) => a.date - b.date || Number(a.cow) - Number(b.cow));
  return withGaps(rows, random);
}

function newInfectionRisk(life: CowLife, lactation: number, date: DaySerial): number {
  const season = WARM_MONTHS.includes(dateOf(date).month) ? 1.4 : 1;
  return NEW_INFECTION * season * life.udderRisk * (0.7 + 0.15 * Math.min(lactation, 5));
}

/** A lactation curve of the form a n^b e^(-cn) (Wood 1967, Nature 216:164-165), numbers ours. */
function milkOn(lactation: number, daysInMilk: number, date: DaySerial, level: number, random: Random): number {
  const scale = [14.8, 20.2, 22.2][Math.min(lactation, 3) - 1]!;
  const fall = [0.0018, 0.0031, 0.0036][Math.min(lactation, 3) - 1]!;
  const season = WARM_MONTHS.includes(dateOf(date).month) ? 0.97 : 1.01;
  const milk =
    scale * daysInMilk ** 0.2 * Math.exp(-fall * daysInMilk) * season * Math.exp(level + random.normal(0, 0.07));
  return Math.round(Math.max(milk, 6) * 10) / 10;
}

/** Counts double and halve: the score (log2 of the count over 100 thousand, plus 3) is normally distributed. */
function countOn(lactation: number, daysInMilk: number, infected: boolean, random: Random): number {
  const older = 0.12 * Math.min(lactation - 1, 4);
  const stage = daysInMilk < 15 ? 0.5 : daysInMilk > 250 ? 0.4 : 0;
  const score = infected ? random.normal(4.9 + older, 1.25) : random.normal(1.4 + older + stage, 1.05);
  return Math.min(Math.max(Math.round(100 * 2 ** (score - 3)), 3), LABORATORY_CAP - 1);
}

/** What a year's file has: samples lost, a note instead of a count, and one count at the laboratory's cap. */
function withGaps(rows: readonly TestRow[], random: Random): TestRow[] {
  const gaps = rows.map((row) => (random.chance(0.012) ? { ...row, count: null } : row));
  const lastTest = rows.findIndex(({ date }) => date === testDays[testDays.length - 1]);
  const highest = rows.reduce((best, { count }, index) => {
    return index >= lastTest && Number(count) > Number(rows[best]!.count) ? index : best;
  }, lastTest);
  gaps[highest] = { ...rows[highest]!, count: LABORATORY_CAP };
  const noted = lastTest + 17;
  gaps[noted] = { ...rows[noted]!, count: "no sample" };
  return gaps;
}
