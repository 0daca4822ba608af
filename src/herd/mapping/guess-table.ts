import { foldHeading } from "../read-rows";
import { type ColumnGuess, guessColumns, type SeenBlock } from "./guess-columns";
import { type HerdTableName, herdTables, mappedColumns, type Meaning, tableNamed } from "./targets";

/** A block taken for one of our tables. */
export interface TableGuess {
  readonly seen: SeenBlock;
  readonly table: HerdTableName;
  readonly columns: readonly ColumnGuess[];
  /** How much speaks for this table, to compare with the others. */
  readonly weight: number;
  /** It is one of our own tables. */
  readonly own: boolean;
}

/** How much a column speaks for a table: what only one table has speaks loudest. */
const WEIGHTS: Readonly<Record<HerdTableName, Readonly<Partial<Record<Meaning, number>>>>> = {
  Cows: { cow: 1, born: 3, calved: 2.5, dryOff: 2, entered: 2, left: 2, group: 0.5, lactation: 1 },
  Findings: {
    cow: 1, date: 1, lesion: 4, foot: 2, claw: 2, zone: 1, stage: 1, severity: 1, toeMm: 3, measuredFrom: 1, treatment: 2,
    nextLook: 1, seenAgain: 0.5, outcome: 0.5, closedOn: 0.5, drug: 0.5, withdrawal: 0.5, lactation: 0.3, daysInMilk: 0.3,
  },
  Scores: { cow: 1, date: 1, score: 4 },
  Tests: { cow: 1, date: 1, count: 4, milkKg: 3, lactation: 0.5, daysInMilk: 0.7 },
}; // oxfmt-ignore

/** A table is nothing without one of these. */
const NEEDED: Readonly<Record<HerdTableName, readonly Meaning[]>> = {
  Cows: ["born", "calved", "entered", "left", "dryOff", "lactation"],
  Findings: ["lesion", "toeMm", "treatment"],
  Scores: ["score"],
  Tests: ["count", "milkKg"],
};

const LEAST_WEIGHT = 3.5;
/** A list of cows names each cow once; a few may stand twice by mistake. */
const COWS_DIFFER = 0.85;
/** Share of the columns of a range that formulas may fill: a range of results is no list that is kept. */
const MOST_CALCULATED = 0.6;

/** The table that a block is most likely to be; undefined where it is none. */
export function guessTable(seen: SeenBlock): TableGuess | undefined {
  const own = ownTable(seen);
  if (own !== undefined) return own;
  const calculated = seen.columns.filter(({ at }) => at.calculated).length;
  if (calculated > MOST_CALCULATED * seen.columns.length) return undefined;
  const guesses = herdTables
    .map(({ name }): TableGuess => {
      const columns = guessColumns(seen, name);
      return { seen, table: name, columns, weight: weightOf(name, columns), own: false };
    })
    .filter(({ weight, columns, table }) => weight >= LEAST_WEIGHT && isWhole(table, columns))
    .sort((a, b) => b.weight - a.weight);
  return guesses[0];
}

function weightOf(table: HerdTableName, columns: readonly ColumnGuess[]): number {
  return columns.reduce((sum, { key, certainty }) => sum + (WEIGHTS[table][key] ?? 0) * certainty, 0);
}

function isWhole(table: HerdTableName, columns: readonly ColumnGuess[]): boolean {
  const has = (key: Meaning): boolean => columns.some((column) => column.key === key);
  const cow = columns.find(({ key }) => key === "cow")?.column.profile;
  if (cow === undefined || !NEEDED[table].some(has)) return false;
  return table !== "Cows" || cow.filled === 0 || cow.distinct.size >= COWS_DIFFER * cow.filled;
}

/** One of our own tables, known by its name and headings. */
function ownTable(seen: SeenBlock): TableGuess | undefined {
  const definition = herdTables.find(({ name }) => name === seen.block.table);
  if (definition === undefined) return undefined;
  const byHeading = new Map(mappedColumns(definition.name).map((column) => [foldHeading(column.heading), column.key]));
  const columns = seen.columns.flatMap((column): ColumnGuess[] => {
    const key = byHeading.get(foldHeading(column.at.heading));
    return key === undefined || column.at.calculated
      ? []
      : [{ column, key: key as Meaning, certainty: 1, because: "it is a heading of ours" }];
  });
  const keys = new Set<string>(columns.map(({ key }) => key));
  const isOurs = tableNamed(definition.name).columns.every(
    ({ key, ...column }) => !("required" in column) || keys.has(key),
  );
  return isOurs ? { seen, table: definition.name, columns, weight: Infinity, own: true } : undefined;
}
