import { disorderOf } from "../../../core/claws/disorder-key";
import type { Findings } from "../../../core/claws/due-list";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { DomainError } from "../../../core/shared/domain-error";
import { type InSteps, ROWS_A_STEP } from "../../../core/shared/steps";
import { foot, SOUND_WORDS } from "../../../functions/claws/kinds";
import { columnOf, cowKey } from "../../../herd/cow-rows";
import { type HerdRow, readHerdTableInSteps } from "../../../herd/read-rows";
import type { PlainCell } from "../../../workbook/port";
import type { TableContent } from "../../../workbook/table-port";
import { findingsTable } from "../../../workbook/tables";
import { RowProblems } from "./row-problems";

const WANTED = ["date", "cow", "foot", "claw", "lesion", "treatment", "seenAgain", "nextLook", "closedOn", "note"];

/** A finding that is not closed, and its row in the table, counted from 0. */
export type FindingRow = Pick<
  HerdRow<typeof findingsTable>,
  "date" | "cow" | "foot" | "claw" | "treatment" | "seenAgain" | "nextLook" | "note"
> & {
  readonly index: number;
  /** Code of the claw disorder key; null where none is written or the cow was sound. */
  readonly lesion: string | null;
};

/** The columns that the list needs. Words are taken as written: feet in any wording that the functions take. */
const definition = {
  ...findingsTable,
  columns: findingsTable.columns
    .filter(({ key }) => WANTED.includes(key))
    .map((column) => (column.holds === "choice" ? { ...column, holds: "text" as const } : column)),
};

/** What the list goes by. */
export interface ReadFindings {
  /** Findings with a lesion or a treatment that are not closed. */
  readonly open: readonly FindingRow[];
  /** The latest day up to that of the list on which each cow's feet were lifted, by the key of her name. */
  readonly lastLifted: ReadonlyMap<string, DaySerial>;
  /** What was left out, in plain words. */
  readonly problems: readonly string[];
}

/** Reads the table for the list of a day. A row that contradicts itself is left out and named, never guessed at. */
export function* readFindings(content: TableContent, day: DaySerial): InSteps<ReadFindings> {
  const { lastLifted, left } = yield* settledApart(content, day);
  const rows = left.map((index) => content.rows[index]!);
  const table = yield* readHerdTableInSteps(definition, { ...content, rows, rowCount: rows.length });
  const problems = new RowProblems(content.name);
  for (const { index, heading, cell, expected } of table.doubtful)
    problems.add(`${heading} is not ${expected}`, left[index]!, String(cell));
  const open: FindingRow[] = [];
  for (const [at, row] of table.rows.entries()) {
    if (at % ROWS_A_STEP === 0) yield;
    const lesion = row.lesion === null ? null : lesionCode(row.lesion);
    const wrong = lesion === undefined ? "Lesion is no code of the claw disorder key" : daysWrong(row, day);
    if (wrong !== undefined)
      problems.add(`left out: ${wrong}`, left[at]!, lesion === undefined ? String(row.lesion) : "");
    else if (row.closedOn === null && (lesion !== null || (row.lesion === null && row.treatment !== null)))
      open.push({ ...row, lesion: lesion!, index: left[at]! });
  }
  return { open, lastLifted, problems: problems.texts() };
}

/** The findings column by column, for the list. */
export function columnsOf(open: readonly FindingRow[]): Findings {
  return {
    cows: open.map(({ cow }) => cow),
    lesions: open.map(({ lesion }) => lesion),
    treatedOn: open.map(({ date }) => date),
    treatments: open.map(({ treatment }) => treatment),
    closedOn: open.map(() => null),
    seenAgainOn: open.map(({ seenAgain }) => seenAgain),
    nextLookOn: open.map(({ nextLook }) => nextLook),
  };
}

/** Most rows of a large table are closed and done with: they are passed over before anything is made of them. */
function* settledApart(
  { columns, rows, ...content }: TableContent,
  day: DaySerial,
): InSteps<{ readonly lastLifted: ReadonlyMap<string, DaySerial>; readonly left: readonly number[] }> {
  const place = (heading: string): number => columnOf({ columns, rows, ...content }, heading);
  const [dates, cows, closings] = [place("Date"), place("Cow"), place("Closed on")];
  const keyOf = cached(cowKey);
  const lastLifted = new Map<string, DaySerial>();
  const left: number[] = [];
  for (let index = 0; index < rows.length; index++) {
    if (index % ROWS_A_STEP === ROWS_A_STEP - 1) yield;
    const row = rows[index]!;
    const [date, closed] = [row[dates], row[closings]];
    if (typeof date === "number" && date <= day) {
      const key = keyOf(row[cows] ?? null);
      if (key !== "" && date > (lastLifted.get(key) ?? 0)) lastLifted.set(key, Math.floor(date));
    }
    const settled = typeof date === "number" && typeof closed === "number" && date <= closed && closed <= day;
    if (!settled) left.push(index);
  }
  return { lastLifted, left };
}

/** What of the days of a row cannot be on the day of the list; undefined where all is well. */
function daysWrong(
  { date, seenAgain, closedOn }: Pick<HerdRow<typeof findingsTable>, "date" | "seenAgain" | "closedOn">,
  day: DaySerial,
): string | undefined {
  const on = isoDate(day);
  if (date !== null && date > day) return `Date is after ${on}`;
  for (const [heading, value] of [["Seen again", seenAgain] as const, ["Closed on", closedOn] as const]) {
    if (value === null) continue;
    if (value > day) return `${heading} is after ${on}`;
    if (date !== null && value < date) return `${heading} is before Date`;
  }
  return undefined;
}

/** Code of the lesion, null for a cow found sound, undefined for a word that names none. */
const lesionCode = cached((text: string): string | null | undefined =>
  SOUND_WORDS.test(text) ? null : disorderOf(text)?.code,
);

const footCode = cached((text: string): string => {
  try {
    return foot.readCell(text, "foot");
  } catch (error) {
    if (error instanceof DomainError) return text;
    throw error;
  }
});

/** The foot as LF, RF, LH or RH; as written where it is in no known wording. */
export function footOf({ foot: written }: FindingRow): string {
  return written === null ? "" : footCode(written);
}

function cached<K extends PlainCell, T>(work: (value: K) => T): (value: K) => T {
  const known = new Map<K, T>();
  return (value) => {
    if (!known.has(value)) known.set(value, work(value));
    return known.get(value)!;
  };
}
