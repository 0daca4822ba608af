import type { PlainCell } from "../../workbook/port";
import { foldHeading } from "../read-rows";
import type { Block } from "./block";
import { bookProblems } from "./book-problems";
import { findBlocks } from "./find-blocks";
import type { SeenBlock, SeenColumn } from "./guess-columns";
import { guessTable, type TableGuess } from "./guess-table";
import { guessDayOrder, guessUnit, type UnitGuess } from "./guess-unit";
import { headingFits } from "./heading-words";
import type { MappedColumn, MappedSource } from "./mapping";
import type { PlainBook } from "../../workbook/plain-book";
import { profileOf } from "./profile";
import { remembered } from "./remembered";
import { mappedColumns, tableNamed } from "./targets";

/** A guess at a column, for the user to confirm. */
export interface GuessedColumn extends MappedColumn {
  /** From 0 to 1; an order of trust. */
  readonly certainty: number;
  readonly because: string;
  readonly examples: readonly PlainCell[];
  /** Present where the values have a unit or an order of day and month. */
  readonly unitGuess?: UnitGuess;
}

/** A column that is not used, with what is in it. */
export interface UnusedColumn {
  readonly heading: string;
  readonly column: number;
  readonly examples: readonly PlainCell[];
}

export interface GuessedSource extends MappedSource {
  readonly columns: readonly GuessedColumn[];
  readonly unused: readonly UnusedColumn[];
  /** Headings of ours without which a row is of no use, and that no column was found for. */
  readonly missing: readonly string[];
  readonly remarks: readonly string[];
  readonly rowCount: number;
  /** One of our own tables: nothing is left to ask. */
  readonly own: boolean;
}

export interface BookGuess {
  readonly sources: readonly GuessedSource[];
  /** Blocks that look like one of our tables too but differ from the one that was chosen. */
  readonly alternatives: readonly GuessedSource[];
  /** What stands in the way, in plain sentences. */
  readonly problems: readonly string[];
}

/** Blocks with the same headings are the same list, one sheet a year. */
const SAME_HEADINGS = 0.8;

/** Finds the farm's lists in a workbook and guesses what each column holds. */
export function guessBook(book: PlainBook): BookGuess {
  const blocks = findBlocks(book);
  const guesses = seeBlocks(blocks)
    .map(guessTable)
    .filter((guess) => guess !== undefined);
  const [chosen, others]: [TableGuess[], TableGuess[]] = [[], []];
  for (const guess of [...guesses].sort((a, b) => b.weight - a.weight)) {
    const first = chosen.find(({ table }) => table === guess.table);
    if (first === undefined || (!first.own && isSameList(first, guess))) chosen.push(guess);
    else if (!first.own) others.push(guess);
  }
  const inOrder = guesses.filter((guess) => chosen.includes(guess));
  return {
    sources: inOrder.map(sourceOf),
    alternatives: others.map(sourceOf),
    problems: bookProblems(book, blocks, chosen.length),
  };
}

function isSameList(one: TableGuess, other: TableGuess): boolean {
  const headings = new Set(one.seen.columns.map(({ at }) => foldHeading(at.heading)));
  const same = other.seen.columns.filter(({ at }) => headings.has(foldHeading(at.heading))).length;
  return same >= SAME_HEADINGS * Math.max(headings.size, other.seen.columns.length);
}

/** Profiles of all columns; a column that shares its values with a list of cows elsewhere is marked. */
export const seeBlocks = remembered((blocks: readonly Block[]): readonly SeenBlock[] => {
  const seen = blocks.map((block) => ({
    block,
    columns: block.columns.map((at): SeenColumn => ({ at, profile: profileOf(block, at), sharesCows: false })),
  }));
  const herds = seen.flatMap(({ block, columns }) =>
    columns
      .filter(({ at, profile }) => isHeadingOfCows(at.heading) && profile.distinct.size >= FEWEST_COWS)
      .map(({ profile }) => ({ block, cows: profile.distinct })),
  );
  return seen.map(({ block, columns }) => ({
    block,
    columns: columns.map((column) => ({
      ...column,
      sharesCows: herds.some((herd) => herd.block !== block && sharesMost(column.profile.distinct, herd.cows)),
    })),
  }));
});

const FEWEST_COWS = 5;
const COW_HEADING = 0.85;

function isHeadingOfCows(heading: string): boolean {
  return (headingFits(heading).get("cow")?.fit ?? 0) >= COW_HEADING;
}

function sharesMost(values: ReadonlySet<string>, cows: ReadonlySet<string>): boolean {
  if (values.size < FEWEST_COWS) return false;
  let shared = 0;
  for (const value of values) if (cows.has(value)) shared++;
  return shared * 2 > Math.min(values.size, cows.size) && shared * 2 > values.size;
}

/** What is shown of a guess. */
export function sourceOf({ seen, table, columns, own }: TableGuess): GuessedSource {
  const { block } = seen;
  const used = new Set(columns.map(({ column }) => column));
  const keys = new Set<string>(columns.map(({ key }) => key));
  return {
    table,
    sheet: block.sheet.name,
    source: block.table,
    headingRow: block.headingRow,
    columns: columns.map((guess): GuessedColumn => {
      const { column, key, certainty, because } = guess;
      const unitGuess = own ? undefined : unitOf(table, key, column);
      return {
        key,
        heading: column.at.heading,
        column: column.at.column,
        certainty,
        because,
        examples: column.profile.examples,
        ...(unitGuess === undefined ? {} : { unit: unitGuess.unit, unitGuess }),
      };
    }),
    unused: seen.columns
      .filter((column) => !used.has(column) && !column.at.calculated)
      .map(({ at, profile }) => ({ heading: at.heading, column: at.column, examples: profile.examples })),
    missing: tableNamed(table)
      .columns.filter((column) => column.required === true && !keys.has(column.key))
      .map(({ heading }) => heading),
    remarks: block.remarks,
    rowCount: block.lastRow - block.firstRow + 1,
    own,
  };
}

/** The unit, or the order of day and month, of a column that is read as the one with a key. */
export function unitOf(table: TableGuess["table"], key: string, { at, profile }: SeenColumn): UnitGuess | undefined {
  const definition = mappedColumns(table).find((column) => column.key === key);
  return definition?.holds === "day" ? guessDayOrder(profile) : guessUnit(key, at.heading, profile);
}
