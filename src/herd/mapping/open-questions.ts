import { LANDMARKS } from "../../workbook/tables";
import type { GuessedSource } from "./guess-book";
import { UNIT_CERTAIN } from "./guess-unit";
import { DAY_ORDERS, placeOf, type Unit, unitsOf } from "./mapping";
import { type HerdTableName, mappedColumns } from "./targets";

/** Something that the cells do not tell and the user has to say once. */
export interface OpenQuestion {
  readonly table: HerdTableName;
  readonly sheet: string;
  /** Key of our column that it is about. */
  readonly key: string;
  readonly question: string;
  readonly answers: readonly string[];
  /** The answer that is taken until one is given; undefined where none is. */
  readonly taken: string | undefined;
}

/** What is still to be asked about a guessed list: units that look alike, and where toes were measured from. */
export function openQuestions(source: GuessedSource): readonly OpenQuestion[] {
  const { table, sheet, columns, landmark } = source;
  const units = columns
    .filter(({ unitGuess }) => unitGuess !== undefined && unitGuess.certainty < UNIT_CERTAIN)
    .map(({ key, heading, unit, unitGuess }): OpenQuestion => {
      const question = `How is "${heading}" on ${placeOf(source)} written? It was taken for ${unit!}: ${unitGuess!.because}.`;
      return { table, sheet, key, question, answers: answersTo(table, key), taken: unit };
    });
  const has = (key: string): boolean => columns.some((column) => column.key === key);
  if (!has("toeMm") || has("measuredFrom") || landmark !== undefined) return units;
  const question = `Where were the toes on ${placeOf(source)} measured from? Lengths from the two places differ by more than a cut.`;
  return [...units, { table, sheet, key: "measuredFrom", question, answers: LANDMARKS, taken: undefined }];
}

function answersTo(table: HerdTableName, key: string): readonly Unit[] {
  const isDay = mappedColumns(table).find((column) => column.key === key)?.holds === "day";
  return isDay ? DAY_ORDERS : (unitsOf[key] ?? []);
}
