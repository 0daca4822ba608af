import { disorderOf } from "../../../core/claws/disorder-key";
import type { Findings } from "../../../core/claws/due-list";
import { type DaySerial, isoDate } from "../../../core/shared/days";
import { DomainError } from "../../../core/shared/domain-error";
import { foot, SOUND_WORDS } from "../../../functions/claws/kinds";
import { type HerdRow, readHerdTable } from "../../../herd/read-rows";
import type { TableContent } from "../../../workbook/table-port";
import { findingsTable } from "../../../workbook/tables";

const WANTED = [
  "date",
  "cow",
  "foot",
  "claw",
  "lesion",
  "treatment",
  "seenAgain",
  "nextLook",
  "closedOn",
  "note",
] as const;

export type FindingRow = Pick<HerdRow<typeof findingsTable>, (typeof WANTED)[number]>;

/** The columns that the list needs. Feet are taken in any wording that the functions take. */
const definition = {
  ...findingsTable,
  columns: findingsTable.columns
    .filter(({ key }) => WANTED.some((wanted) => wanted === key))
    .map((column) => (column.key === "foot" ? { ...column, holds: "text" as const } : column)),
};

/** Findings that the list can go by, column by column, and what it had to leave out. */
export interface ReadFindings {
  readonly columns: Findings;
  readonly rows: readonly FindingRow[];
  /** Row of the table for each place in the columns. */
  readonly index: readonly number[];
  readonly problems: readonly string[];
  /** Rows that are not closed and tell of a lesion or a treatment. */
  isOpen(row: number): boolean;
}

/** Reads the table for the list of a day. A row that contradicts itself is left out and named, never guessed at. */
export function readFindings(content: TableContent, day: DaySerial): ReadFindings {
  const table = readHerdTable(definition, content);
  const rows = table.rows as readonly FindingRow[];
  const lesionOf = cached(lesionCode);
  const problems = new Problems();
  for (const { index, heading, cell, expected } of table.doubtful)
    problems.add(`${heading} is not ${expected}`, index, String(cell));
  const index: number[] = [];
  const lesions: (string | null)[] = [];
  rows.forEach((row, at) => {
    const lesion = row.lesion === null ? null : lesionOf(row.lesion);
    const wrong = lesion === undefined ? "Lesion is no code of the claw disorder key" : daysWrong(row, day);
    if (wrong !== undefined) problems.add(`left out: ${wrong}`, at, lesion === undefined ? row.lesion! : "");
    else {
      index.push(at);
      lesions.push(lesion!);
    }
  });
  const column = <K extends keyof FindingRow>(key: K): FindingRow[K][] => index.map((at) => rows[at]![key]);
  return {
    columns: {
      cows: column("cow"),
      lesions,
      treatedOn: column("date"),
      treatments: column("treatment"),
      closedOn: column("closedOn"),
      seenAgainOn: column("seenAgain"),
      nextLookOn: column("nextLook"),
    },
    rows,
    index,
    problems: problems.texts(),
    isOpen(at) {
      const { closedOn, lesion, treatment } = rows[at]!;
      if (closedOn !== null) return false;
      return lesion === null ? treatment !== null : lesionOf(lesion) !== null;
    },
  };
}

/** What of the days of a row cannot be on the day of the list; undefined where all is well. */
function daysWrong({ date, seenAgain, closedOn }: FindingRow, day: DaySerial): string | undefined {
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
function lesionCode(text: string): string | null | undefined {
  return SOUND_WORDS.test(text) ? null : disorderOf(text)?.code;
}

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

function cached<T>(work: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    if (!known.has(text)) known.set(text, work(text));
    return known.get(text)!;
  };
}

/** Rows named one by one before the rest is counted. */
const NAMED_ROWS = 3;

class Problems {
  readonly #rows = new Map<string, string[]>();

  add(what: string, index: number, value: string): void {
    const rows = this.#rows.get(what) ?? [];
    rows.push(value === "" ? String(index + 1) : `${index + 1} ("${value}")`);
    this.#rows.set(what, rows);
  }

  texts(): readonly string[] {
    return [...this.#rows].map(([what, rows]) => {
      const more = rows.length > NAMED_ROWS ? ` and ${rows.length - NAMED_ROWS} more` : "";
      const named = `${rows.slice(0, NAMED_ROWS).join(", ")}${more}`;
      return `Findings, row${rows.length > 1 ? "s" : ""} ${named} below the headings: ${what}.`;
    });
  }
}
