import { type Block, type BlockColumn } from "./block";
import { contentFit } from "./content-fit";
import { headingFits } from "./heading-words";
import type { Profile } from "./profile";
import { type HerdTableName, mappedColumns, type Meaning } from "./targets";

/** A column of a block with what its cells are like. */
export interface SeenColumn {
  readonly at: BlockColumn;
  readonly profile: Profile;
  /** Its values stand in a column of cows of another block too. */
  readonly sharesCows: boolean;
}

export interface SeenBlock {
  readonly block: Block;
  readonly columns: readonly SeenColumn[];
}

/** A column and what it is taken for. */
export interface ColumnGuess {
  readonly column: SeenColumn;
  readonly key: Meaning;
  /** From 0 to 1; an order of trust, not a share that was measured. */
  readonly certainty: number;
  /** Why, in plain words. */
  readonly because: string;
}

/** How much heading and cells count. */
const HEADING_WEIGHT = 0.8;
const CONTENT_WEIGHT = 0.2;
/** The most that cells alone can tell. */
const CONTENT_ALONE = 0.6;
/** Cells alone must speak so clearly. */
const CLEAR_CONTENT = 0.6;
const LEAST_CERTAINTY = 0.35;
/** Numbers or names that stand in another list of cows too. */
const SHARED_COWS = 0.4;

/** Meanings that cells can show without a heading: words of their own, or the one date of a list. */
const SHOWN_BY_CELLS: ReadonlySet<Meaning> = new Set<Meaning>([
  "date",
  "foot",
  "claw",
  "lesion",
  "stage",
  "measuredFrom",
]);

/** Each column of a block with the column of ours that it fits best, none twice. */
export function guessColumns({ columns }: SeenBlock, table: HerdTableName): readonly ColumnGuess[] {
  const keys = mappedColumns(table).map(({ key }) => key as Meaning);
  const guesses = columns
    .filter(({ at, profile }) => !at.calculated && (profile.filled > 0 || at.heading !== ""))
    .flatMap((column) => keys.map((key) => guessOf(column, key)).filter((guess) => guess !== undefined))
    .sort((a, b) => b.certainty - a.certainty || a.column.at.column - b.column.at.column);
  const [takenColumns, takenKeys] = [new Set<SeenColumn>(), new Set<Meaning>()];
  const chosen: ColumnGuess[] = [];
  for (const guess of guesses) {
    if (takenColumns.has(guess.column) || takenKeys.has(guess.key)) continue;
    takenColumns.add(guess.column);
    takenKeys.add(guess.key);
    chosen.push(guess);
  }
  if (!takenKeys.has("cow")) {
    const cows = columns.find((column) => !takenColumns.has(column) && couldBeCows(column));
    if (cows !== undefined) chosen.push({ column: cows, key: "cow", certainty: CONTENT_ALONE * CLEAR_CONTENT, because: "the first column of whole numbers that differ, where no heading names the cow" }); // oxfmt-ignore
  }
  return chosen.sort((a, b) => a.column.at.column - b.column.at.column);
}

/** So many numbers must differ to be numbers of cows. */
const FEWEST_COWS = 5;

function couldBeCows({ at, profile }: SeenColumn): boolean {
  const { numbers, whole, low, days, distinct, filled } = profile;
  const unused = headingFits(at.heading).get("other")?.fit ?? 0;
  const isNumbering = numbers > 0.9 && whole > 0.9 && low >= 1 && days === 0;
  return !at.calculated && unused < CLEAR_CONTENT && isNumbering && distinct.size >= FEWEST_COWS && distinct.size > filled / 3; // oxfmt-ignore
}

function guessOf(column: SeenColumn, key: Meaning): ColumnGuess | undefined {
  const { at, profile, sharesCows } = column;
  const cells = contentFit(profile, key);
  if (cells.fit <= -1) return undefined;
  const shared = key === "cow" && sharesCows ? SHARED_COWS : 0;
  const content = Math.min(1, cells.fit + shared);
  const fits = headingFits(at.heading);
  const heading = fits.get(key);
  const unused = fits.get("other")?.fit ?? 0;
  if (heading === undefined || unused > heading.fit) {
    if (unused > 0.8 || !(SHOWN_BY_CELLS.has(key) || shared > 0) || content < CLEAR_CONTENT) return undefined;
    return { column, key, certainty: CONTENT_ALONE * content, because: sentence("", cells.seen, shared > 0) };
  }
  const certainty = HEADING_WEIGHT * heading.fit + CONTENT_WEIGHT * content;
  if (certainty < LEAST_CERTAINTY) return undefined;
  const named =
    heading.fit === 1
      ? `"${at.heading}" is a heading for it (${heading.language})`
      : `"${at.heading}" is like the heading "${heading.word}" (${heading.language})`;
  return { column, key, certainty: Math.min(1, certainty), because: sentence(named, cells.seen, shared > 0) };
}

function sentence(heading: string, seen: string, shared: boolean): string {
  return [heading, seen, shared ? "they stand in another list of cows too" : ""]
    .filter((part) => part !== "")
    .join("; ");
}
