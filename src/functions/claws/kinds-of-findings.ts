import type { RowTally } from "../../core/claws/findings";
import type { LesionSelection } from "../../core/claws/lesion-selection";
import { type MarkedRows, markNewCases, USUAL_GAP_DAYS } from "../../core/claws/new-cases";
import { type DaySerial, isoDate } from "../../core/shared/days";
import { DomainError, unavailable } from "../../core/shared/domain-error";
import { commonPractice } from "../../core/shared/source";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { type Column, columnOf, wholeNumbersOf, wordsOf } from "../columns";
import { optional, type Remarks, required, type Step, withDefault } from "../define";
import { counted } from "../figure";
import { choice, date, number } from "../scalars";
import { settingsTable } from "../tables";
import { cows, dates, feet, lesions, lesionSelection } from "./kinds";

export const GROUP = "Lesions and rates";

export const cowsParameter = required(cows, "Cow of each row");
export const feetParameter = required(feet, "Foot of each row: LF, RF, LH, RH or in words; may be blank");
export const lesionsParameter = required(lesions, 'Lesion of each row, by code or name; "none" for a sound cow');
export const datesParameter = required(dates, "Day of each row");
export const fromParameter = required(date(), "First day of the period");
export const toParameter = required(date(), "Last day of the period");
export const selectionParameter = required(
  lesionSelection,
  "Lesion by code or name (a parent takes its forms with it), horn, infectious, shape, other, or all",
);

const gapDays = number({
  unit: "days",
  min: 1,
  max: 365,
  whole: true,
  reason: "a longer gap would join the cases of two lactations",
  zeroIsBlank: true,
});
export const gapParameter = withDefault(
  gapDays,
  "A record is a repeat while the same lesion of that foot was last recorded so many days before, or fewer",
  USUAL_GAP_DAYS,
  `${USUAL_GAP_DAYS} days (common practice)`,
);
const yesOrNo = columnOf(choice(["yes", "no"]), { notes: "refuse" });
/** Without it a group of cows would have its own first records, and a repeat could count as new. */
export const countedParameter = optional(
  yesOrNo,
  'Which rows are counted, "yes" or "no" a row; the others and blank ones only tell whether a later record is a repeat',
  "all rows",
);
export const gapSource = commonPractice(
  `days without a record after which a lesion is a new case; papers use 14 to 30, the default is ${USUAL_GAP_DAYS}.`,
);
export const gapLimits = [
  "There is no agreed number of days that makes a repeat a new case: compare rates only under the same gapDays.",
  "The gap counts from the last record of that lesion (forms count as their parent) on that foot of that cow, new or repeat; a row without a foot counts as one more foot.",
  "The first record of a lesion is a new case, also where it stood before the sheet begins.",
] as const;

export const cowDaysParameter = required(
  number({
    unit: "cow-days",
    min: 0,
    exclusiveMin: true,
    reason: "days at risk, from HERD.COW.DAYS",
    zeroIsBlank: true,
  }),
  "Days that all cows together were at risk in the period, from HERD.COW.DAYS",
);

const LOWEST_LEVEL = 0.5;
const HIGHEST_LEVEL = 0.999;
export const levelParameter = withDefault(
  number({
    min: LOWEST_LEVEL,
    max: HIGHEST_LEVEL,
    reason: "a fraction: 0.95 stands for 95 %",
    zeroIsBlank: true,
  }),
  "Level of confidence",
  USUAL_LEVEL,
  `${USUAL_LEVEL} (95 %)`,
);

export const targetsTable = settingsTable("targets", {
  lesion: { headings: ["Lesion", "Code", "Disorder"], kind: lesionSelection },
  per100CowYears: {
    headings: ["Target per 100 cow-years", "Target"],
    kind: number({ unit: "new cases per 100 cow-years", min: 0, max: 10_000, reason: "a rate" }),
    optional: true,
  },
});
export type Targets = readonly { readonly lesion: LesionSelection; readonly per100CowYears: number | undefined }[];

interface FindingColumns {
  readonly cows: Column<string>;
  readonly feet: Column<string>;
  readonly lesions: Column<string>;
  readonly dates: Column<number>;
  readonly gapDays: number;
  readonly counted?: Column<"yes" | "no"> | undefined;
}

/** The rows of the columns marked as new cases and repeats. */
export function markedRows({ cows, feet, lesions, dates, gapDays, counted }: FindingColumns): MarkedRows {
  const findings = {
    cows: wordsOf(cows),
    feet: wordsOf(feet),
    lesions: wordsOf(lesions),
    dates: wholeNumbersOf(dates),
  };
  const chosen = counted === undefined ? {} : { isCounted: (row: number) => counted.at(row) === "yes" };
  return markNewCases({ ...findings, ...chosen }, gapDays);
}

/** Refuses columns without one finding, sound cows included: no rate comes out of nothing. */
export function refuseNoFindings({ used, sound, unknownLesion }: RowTally, argument: string): void {
  if (used + sound + unknownLesion > 0) return;
  throw unavailable(`${argument} holds no findings: enter a code a row, or "none" for a sound cow`);
}

/** Below this number of cows a share says little: one cow more or less moves it by five points. */
export const FEW_COWS_EXAMINED = 20;

/** A share needs the cows that have nothing. */
export function refuseNoSound(soundCows: number): void {
  if (soundCows > 0) return;
  throw unavailable('lesions holds no sound cow: record sound cows too, as "none", or a share cannot be told');
}

/** Says which rows were left out, and the gap. */
export function remarkRows(remarks: Remarks, tally: RowTally, gapDays: number): void {
  remarkLeftOut(remarks, tally.withoutLesion, 'no lesion ("none" is the word for a sound cow; a 0 is read as a blank)');
  remarkLeftOut(remarks, tally.withoutCow, "no cow");
  remarkLeftOut(remarks, tally.withoutDate, "no date");
  remarkLeftOut(remarks, tally.unknownLesion, "no known lesion");
  if (tally.withoutFoot > 0)
    remarks.add(`${counted(tally.withoutFoot, "row")} without a foot: counted as one more foot of each cow`);
  remarks.add(gapText(gapDays));
}

export function remarkLeftOut(remarks: Remarks, rows: number, why: string): void {
  if (rows > 0) remarks.add(`${counted(rows, "row")} left out: ${why}`);
}

/** How many of the rows are lesions that count. */
export function lesionsStep({ used, sound }: RowTally, rows: number): Step {
  const working = `${counted(rows, "row")} − ${sound} sound − ${rows - sound - used} not counted`;
  return { label: "Lesions counted", working, value: String(used) };
}

export function gapText(gapDays: number): string {
  return `New case: more than ${counted(gapDays, "day")} after the last record of that lesion on that foot`;
}

export function refusePeriod(from: DaySerial, to: DaySerial): void {
  if (to < from) throw new DomainError("invalid", `to must be ${isoDate(from)} (from) or later; got ${isoDate(to)}`);
}

/** Cow-days of less than one cow a day are most often a number of cows. */
export function refuseFewCowDays(cowDays: number, from: DaySerial, to: DaySerial): void {
  const days = to - from + 1;
  if (cowDays >= days) return;
  throw new DomainError(
    "invalid",
    `cowDays must be at least ${days} (one cow on every day of the period); got ${cowDays}: cow-days are cows times days, from HERD.COW.DAYS`,
  );
}

/** A day column in which text is refused: a note such as "sold" without its day would make the figure wrong. */
export const datesOnly = columnOf(date(), { notes: "refuse" });
