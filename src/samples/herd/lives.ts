import { type DaySerial, day } from "../../core/shared/days";
import type { Random } from "./random";

/** The records run over fourteen whole months, up to the day before the workbook is looked at. */
export const FIRST_RECORD: DaySerial = day("2025-07-01");
export const LAST_RECORD: DaySerial = day("2026-08-31");
export const AS_OF_DAY: DaySerial = day("2026-09-01");

export interface Lactation {
  readonly number: number;
  readonly calved: DaySerial;
  /** The day she goes dry, planned or done; undefined when she leaves before. */
  readonly dryOff: DaySerial | undefined;
}

/** One cow of the invented herd, from birth to the end of the records and a little beyond. */
export interface CowLife {
  readonly cow: number;
  readonly born: DaySerial;
  readonly entered: DaySerial;
  readonly left: DaySerial | undefined;
  readonly lactations: readonly Lactation[];
  /** How readily she takes horn lesions, infections of the foot and high counts; 1 is the usual. */
  readonly hornRisk: number;
  readonly infectionRisk: number;
  readonly udderRisk: number;
}

const HERD_SIZE = 140;
/** Shares of first, second, third ... lactations in the herd. */
const LACTATION_SHARES = [0.29, 0.25, 0.18, 0.12, 0.08, 0.05, 0.03];
/** Share of cows that leave in their first, second, third ... lactation. */
const LEAVING_SHARES = [0.2, 0.22, 0.28, 0.34, 0.42, 0.5, 0.6];
const FIRST_NUMBER = 207;
const BOUGHT_IN: { readonly cows: number; readonly on: DaySerial } = { cows: 4, on: day("2026-02-10") };

const calvingInterval = (random: Random): number => clamp(Math.round(random.normal(398, 26)), 345, 500);
const ageAtFirstCalving = (random: Random): number => Math.round(random.normal(760, 32));
const dryDays = (random: Random): number => Math.round(random.normal(57, 4));

/** The lives of all cows that were in the herd at any time of the records, numbered in order of birth. */
export function herdLives(random: Random): readonly CowLife[] {
  const lives: Omit<CowLife, "cow">[] = [];
  for (let place = 0; place < HERD_SIZE; place++) lives.push(residentLife(random));
  for (let place = 0; place < BOUGHT_IN.cows; place++) {
    lives.push(lifeFrom(random, 2, BOUGHT_IN.on - random.whole(20, 60), BOUGHT_IN.on));
  }
  // A heifer calves in for each cow that leaves; the list grows while it is walked.
  for (let index = 0; index < lives.length && lives.length < 2 * HERD_SIZE; index++) {
    const { left } = lives[index]!;
    const calves = left === undefined ? LAST_RECORD + 1 : Math.max(FIRST_RECORD, left + random.whole(-20, 25));
    if (calves <= LAST_RECORD) lives.push(lifeFrom(random, 1, calves, calves));
  }
  return numbered(lives, random);
}

/** A cow that is in the herd when the records begin, somewhere in her lactation. */
function residentLife(random: Random): Omit<CowLife, "cow"> {
  const number = random.weighted(LACTATION_SHARES.map((share, index) => [index + 1, share] as const));
  let calved = FIRST_RECORD - random.whole(0, 390);
  const latest = calved;
  for (let earlier = 1; earlier < number; earlier++) calved -= calvingInterval(random);
  return lifeFrom(random, number, latest, calved);
}

function lifeFrom(random: Random, number: number, calved: DaySerial, entered: DaySerial): Omit<CowLife, "cow"> {
  const firstCalving = Math.min(calved - (number - 1) * 395, entered);
  const lactations: Lactation[] = [];
  let left: DaySerial | undefined;
  for (let current = number, start = calved; start <= LAST_RECORD + 1 && left === undefined; current++) {
    const leaves = leavingDay(random, current, start);
    const next = start + calvingInterval(random);
    if (leaves !== undefined && leaves > FIRST_RECORD && leaves > entered + 10 && leaves <= LAST_RECORD) left = leaves;
    lactations.push({
      number: current,
      calved: start,
      dryOff: left === undefined ? next - dryDays(random) : undefined,
    });
    start = next;
  }
  return {
    born: firstCalving - ageAtFirstCalving(random),
    entered,
    left,
    lactations,
    hornRisk: Math.exp(random.normal(-0.2, 0.65)),
    infectionRisk: Math.exp(random.normal(-0.2, 0.65)),
    udderRisk: Math.exp(random.normal(-0.25, 0.7)),
  };
}

/** Most cows that leave do so late, not in calf; some soon after calving. */
function leavingDay(random: Random, number: number, calved: DaySerial): DaySerial | undefined {
  const share = LEAVING_SHARES[Math.min(number, LEAVING_SHARES.length) - 1]!;
  if (!random.chance(share)) return undefined;
  return calved + (random.chance(0.2) ? random.whole(5, 70) : random.whole(180, 420));
}

/** Numbers in order of birth, with the gaps of a living herd. */
function numbered(lives: readonly Omit<CowLife, "cow">[], random: Random): readonly CowLife[] {
  let cow = FIRST_NUMBER;
  return [...lives]
    .sort((a, b) => a.born - b.born)
    .map((life) => {
      cow += random.chance(0.3) ? random.whole(2, 3) : 1;
      return { cow, ...life };
    });
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}

export function inHerd(life: CowLife, date: DaySerial): boolean {
  return life.entered <= date && (life.left === undefined || date < life.left);
}

/** The lactation she is in, dry period included, on a day on which she is in the herd. */
export function lactationOn(life: CowLife, date: DaySerial): Lactation | undefined {
  return [...life.lactations].reverse().find(({ calved }) => calved <= date);
}

/** Days in milk on a day; undefined when she is dry or not there. */
export function daysInMilkOn(life: CowLife, date: DaySerial): number | undefined {
  const lactation = inHerd(life, date) ? lactationOn(life, date) : undefined;
  if (lactation === undefined || (lactation.dryOff !== undefined && lactation.dryOff <= date)) return undefined;
  return date - lactation.calved;
}
