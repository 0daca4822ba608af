import type { DaySerial } from "../../../core/shared/days";
import { bucketOf } from "../due/grouping";
import { type DueLine, WORK_NAMES, WORKS } from "../due/line";

/** How much of a kind of work is due. */
export interface DueCount {
  readonly name: string;
  readonly overdue: number;
  readonly today: number;
  readonly ahead: number;
}

/** What is due, as the report shows it. */
export interface DuePart {
  readonly counts: readonly DueCount[];
  /** The most pressing lines: severely lame cows, other lame cows, then the longest overdue. */
  readonly first: readonly DueLine[];
  /** Lines that are not among the first. */
  readonly more: number;
}

/** Headings of the counts: the list is drawn up a week ahead. */
export const DUE_HEADINGS = ["Overdue", "On the day", "In the week after"] as const;

/** Counts what is due by kind of work, and takes the first lines of the list. Kinds without a line are left out. */
export function duePart(lines: readonly DueLine[], day: DaySerial, most: number): DuePart {
  const counts = WORKS.flatMap((work): DueCount[] => {
    const own = lines.filter((line) => line.work === work);
    if (own.length === 0) return [];
    const count = { overdue: 0, today: 0, ahead: 0 };
    for (const line of own) count[bucketOf(line, day)]++;
    return [{ name: WORK_NAMES[work], ...count }];
  });
  // The sort keeps lines of one rank in their order, the longest overdue first.
  const pressing = [...lines].sort((a, b) => rank(a) - rank(b));
  const first = pressing.slice(0, most);
  return { counts, first, more: lines.length - first.length };
}

/** Fewer first lines, so that notes find room on the same two pages; some always stay. */
export function besideNotes({ counts, first, more }: DuePart, notes: string): DuePart {
  const lines =
    notes.trim() === ""
      ? 0
      : notes
          .trim()
          .split(/\r?\n/)
          .reduce((sum, text) => sum + linesOf(text), 0);
  const shown = first.slice(0, Math.max(FEWEST_LINES, first.length - lines));
  return { counts, first: shown, more: more + first.length - shown.length };
}

const FEWEST_LINES = 4;
/** Letters of a printed line of notes. */
const LINE_LETTERS = 95;

function linesOf(text: string): number {
  return Math.max(1, Math.ceil(text.length / LINE_LETTERS));
}

function rank({ work, what }: DueLine): number {
  if (work !== "lame") return 2;
  return what.startsWith("severely") ? 0 : 1;
}
