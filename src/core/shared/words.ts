/** A column of words with each different word once, as a loop over very many rows reads it. */
export interface Words {
  /** Every word of the column once. */
  readonly words: readonly string[];
  /** For each row the place of its word among them, counted from 1; NO_WORD where it has none. */
  readonly places: Places;
  /** How many words there are, for who does not need them: they may be made only when asked for. */
  readonly count: number;
  /** Whether every word is a number as text. */
  readonly areNumbers: boolean;
}

/** A byte a row where a column has few different words. */
export type Places = Uint8Array | Int32Array;

export const NO_WORD = 0;

/** A column of words row by row, null where a row has none; or the same as `Words`. */
export type WordColumn = readonly (string | null)[] | Words;

export function asWords(column: WordColumn): Words {
  if ("places" in column) return column;
  const places = new Int32Array(column.length);
  const placeOf = new Map<string | null, number>([[null, NO_WORD]]);
  const words: string[] = [];
  for (let row = 0; row < column.length; row++) {
    const word = column[row] ?? null;
    let place = placeOf.get(word);
    if (place === undefined) placeOf.set(word, (place = words.push(word!)));
    places[row] = place;
  }
  return { words, places, count: words.length, areNumbers: false };
}
