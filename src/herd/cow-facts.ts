import { disorderOf } from "../core/claws/disorder-key";
import { dueList } from "../core/claws/due-list";
import { SOUND, UNKNOWN } from "../core/claws/findings";
import { type MobilityScale, mobilityScales } from "../core/claws/mobility";
import { markNewCases, USUAL_GAP_DAYS } from "../core/claws/new-cases";
import { type RecheckRule, ruleFor } from "../core/claws/recheck-rules";
import { repeatCows } from "../core/claws/repeat-cows";
import type { DaySerial } from "../core/shared/days";
import { DAYS_IN_MILK, type findingsTable, type scoresTable } from "../workbook/tables";
import type { Cow } from "./cow-list";
import type { HerdRecord } from "./cow-rows";
import type { Herd } from "./herd";

export type FindingRecord = HerdRecord<typeof findingsTable>;
export type ScoreRecord = HerdRecord<typeof scoresTable>;

/** Something that is still to be done for a cow. */
export interface OpenJob {
  readonly what: string;
  readonly due: DaySerial;
  readonly finding: FindingRecord;
}

/** What the workbook tells of a cow on a day. */
export interface CowFacts {
  /** Lactation on the day, 0 for a heifer before her first calving; null where not known. */
  readonly lactation: number | null;
  /** Null where not known, and when she is dry or has not calved. */
  readonly daysInMilk: number | null;
  /** Days until she is dried off; null where no day is written or it has passed. */
  readonly dryOffInDays: number | null;
  /** Findings before the day, the latest first. */
  readonly earlier: readonly FindingRecord[];
  /** Findings on the day itself. */
  readonly sameDay: readonly FindingRecord[];
  readonly scoreOnDay: ScoreRecord | undefined;
  /** Jobs of findings that are not closed, the nearest day first. */
  readonly open: readonly OpenJob[];
  /** New cases in the year before, the day included, and the foot that had most. */
  readonly cases: { readonly count: number; readonly worstFoot: string };
  /** Scores in the year before, the day included. */
  readonly scored: { readonly lame: number; readonly all: number };
}

const DAYS_A_YEAR = 365;
/** Beyond the longest first look of any rule a job is not of interest while she stands in the chute. */
const AHEAD_DAYS = 60;

export function cowFacts(
  herd: Herd,
  cow: Cow | undefined,
  name: string,
  day: DaySerial,
  rules: readonly RecheckRule[],
): CowFacts {
  const findings = herd.findings.of(name);
  const scores = herd.scores.of(name);
  const past = findings.filter(({ date }) => date !== null && date <= day);
  return {
    ...lactationOn(cow, day, herd.cows.tellsCalvings),
    earlier: past.filter(({ date }) => date! < day).sort((a, b) => b.date! - a.date! || b.index - a.index),
    sameDay: past.filter(({ date }) => date === day),
    scoreOnDay: scores.find(({ date }) => date === day),
    open: openJobs(past, day, rules),
    cases: newCases(past, day),
    scored: scoresOfYear(scores, herd.scale, day),
  };
}

/** An animal that is older and has no calving written has more likely one missing. Common practice, no source. */
const OLDEST_HEIFER_DAYS = 3 * DAYS_A_YEAR;

function lactationOn(
  cow: Cow | undefined,
  day: DaySerial,
  tellsCalvings: boolean,
): Pick<CowFacts, "lactation" | "daysInMilk" | "dryOffInDays"> {
  const { lactation = null, calved = null, dryOff = null, born = null } = cow ?? {};
  const none = { daysInMilk: null, dryOffInDays: null };
  if (calved !== null && calved > day) return { lactation: lactation === 1 ? 0 : null, ...none };
  if (calved === null) {
    const isYoung = cow !== undefined && (born === null || day - born <= OLDEST_HEIFER_DAYS);
    return { lactation: lactation === null && tellsCalvings && isYoung ? 0 : lactation, ...none };
  }
  const ends = dryOff !== null && dryOff > calved ? dryOff : null;
  const days = day - calved;
  const milking = (ends === null || day < ends) && days <= DAYS_IN_MILK[1];
  return {
    lactation,
    daysInMilk: milking ? days : null,
    dryOffInDays: ends !== null && ends >= day ? ends - day : null,
  };
}

/** Code of the lesion in a cell, SOUND or UNKNOWN. */
export function lesionOf(text: string | null): string | null {
  if (text === null) return null;
  return text.toLowerCase() === SOUND ? SOUND : (disorderOf(text)?.code ?? UNKNOWN);
}

function openJobs(past: readonly FindingRecord[], day: DaySerial, rules: readonly RecheckRule[]): readonly OpenJob[] {
  const lesions = past.map(({ lesion }) => lesionOf(lesion));
  const rows = past.filter(({ closedOn, date }, index) => {
    const known = lesions[index] !== SOUND && lesions[index] !== UNKNOWN;
    return known && (closedOn === null || (closedOn <= day && closedOn >= date!));
  });
  const { due } = dueList(
    {
      cows: rows.map(({ cow }) => cow),
      lesions: rows.map(({ lesion }) => lesionOf(lesion)),
      treatedOn: rows.map(({ date }) => date),
      treatments: rows.map(({ treatment }) => treatment),
      closedOn: rows.map(({ closedOn }) => closedOn),
      seenAgainOn: rows.map(({ date, seenAgain }) =>
        seenAgain !== null && seenAgain >= date! && seenAgain <= day ? seenAgain : null,
      ),
      nextLookOn: rows.map(({ nextLook }) => nextLook),
    },
    (code) => ruleFor(rules, code),
    day,
    AHEAD_DAYS,
  );
  return due
    .list()
    .map(({ finding, what, due }) => ({ what, due, finding: rows[finding]! }))
    .sort((a, b) => Math.abs(a.due - day) - Math.abs(b.due - day));
}

function newCases(past: readonly FindingRecord[], day: DaySerial): CowFacts["cases"] {
  const dates = past.map(({ date }) => date ?? NaN);
  const feet = past.map(({ foot }) => foot);
  const lesions = past.map(({ lesion }) => lesionOf(lesion));
  const marked = markNewCases({ cows: past.map(() => "she"), feet, lesions, dates }, USUAL_GAP_DAYS);
  const [she] = repeatCows(marked, feet, dates, day - DAYS_A_YEAR, day, 1);
  return { count: she?.newCases ?? 0, worstFoot: she?.worstFoot ?? "" };
}

function scoresOfYear(scores: readonly ScoreRecord[], scale: MobilityScale, day: DaySerial): CowFacts["scored"] {
  const year = scores.filter(
    ({ date, score }) => date !== null && score !== null && date <= day && date > day - DAYS_A_YEAR,
  );
  const { lameFrom } = mobilityScales[scale];
  return { lame: year.filter(({ score }) => score! >= lameFrom).length, all: year.length };
}
