/** A column with each different value once, as a loop over very many rows reads it. */
export interface Repeated<T> {
  /** Every value of the column once. */
  readonly distinct: readonly T[];
  /** For each row the place of its value among them, counted from 1; NO_WORD where it has none. */
  readonly places: Places;
  /** How many values there are, for who does not need them: they may be made only when asked for. */
  readonly count: number;
  /** Whether every value is a number as text. */
  readonly areNumbers: boolean;
}

export type Words = Repeated<string>;

/** A byte a row where a column has few different words. */
export type Places = Uint8Array | Int32Array;

export const NO_WORD = 0;

/** A column of words row by row, null where a row has none; or the same as `Words`. */
export type WordColumn = readonly (string | null)[] | Words;

export function asWords(column: WordColumn): Words {
  if ("places" in column) return column;
  const places = new Int32Array(column.length);
  const placeOf = new Map<string | null, number>([[null, NO_WORD]]);
  const distinct: string[] = [];
  for (let row = 0; row < column.length; row++) {
    const word = column[row] ?? null;
    let place = placeOf.get(word);
    if (place === undefined) placeOf.set(word, (place = distinct.push(word!)));
    places[row] = place;
  }
  return { distinct, places, count: distinct.length, areNumbers: false };
}
