import { asWords, type Places, type Words } from "../core/shared/words";

/**
 * A column of cells read row by row. `null` stands for a row that is blank or holds a note ("-", "dry") instead of
 * a value; `notes` counts the latter. Values that look right but are not (number-like text, TRUE, an error, a value
 * beyond its limit) are refused with their row.
 */
export interface Column<T> {
  readonly values: readonly (T | null)[];
  /** Rows holding a note instead of a value. */
  readonly noteRows: number;
  /** The argument's name, for messages. */
  readonly argument: string;
  readonly length: number;
  /** The value of one row, for who wants a few of many. */
  at(row: number): T | null;
  /** Present where the values are numbers: the same, with NaN for null. Read it through `numbersOf`. */
  readonly numbers?: Float64Array;
  /** Present where the values are whole numbers from 1 to 255: the same, with 0 for null. */
  readonly bytes?: Uint8Array;
  /** Present where the values are words or the like: each once, with its place a row. */
  readonly repeated?: RepeatedValues<T>;
}

interface RepeatedValues<T> {
  readonly distinct: readonly T[];
  /** The place of each row's value among them, counted from 1; 0 for null. */
  readonly places: Places;
  readonly count: number;
  /** Whether every value is a number as text. */
  readonly areNumbers: boolean;
}

/** A column of numbers as a loop over very many rows reads it: NaN where there is no value. */
export function numbersOf(column: Column<number>): Float64Array {
  return column.numbers ?? Float64Array.from(column.values, (value) => value ?? NaN);
}

/** A column of whole numbers from 1 as a loop over very many rows reads it: 0 or NaN where there is no value. */
export function smallNumbersOf(column: Column<number>): ArrayLike<number> {
  return column.bytes ?? numbersOf(column);
}

/** A column of words as a loop over very many rows reads it. */
export function wordsOf(column: Column<string>): Words {
  const { repeated } = column;
  if (repeated === undefined) return asWords(column.values);
  const { places, count, areNumbers } = repeated;
  return {
    places,
    count,
    areNumbers,
    get words() {
      return repeated.distinct;
    },
  };
}

/** Numbers are kept unboxed; the list with nulls is made when someone asks for it. */
export class NumberColumn implements Column<number> {
  #values: readonly (number | null)[] | undefined;
  readonly length: number;

  constructor(
    readonly numbers: Float64Array,
    readonly noteRows: number,
    readonly argument: string,
  ) {
    this.length = numbers.length;
  }

  at(row: number): number | null {
    const value = this.numbers[row]!;
    return Number.isNaN(value) ? null : value;
  }

  get values(): readonly (number | null)[] {
    if (this.#values === undefined) {
      const values: (number | null)[] = [];
      for (const value of this.numbers) values.push(Number.isNaN(value) ? null : value);
      this.#values = values;
    }
    return this.#values;
  }
}

/** Values that repeat are kept once each; the list row by row is made when someone asks for it. */
export class RepeatingColumn<T> implements Column<T>, RepeatedValues<T> {
  readonly repeated = this;
  #distinct: readonly T[] | undefined;
  #values: readonly (T | null)[] | undefined;
  readonly length: number;
  readonly count: number;
  /** Each value once; where the values are numbers as text, the numbers. */
  readonly #cells: ArrayLike<unknown>;

  constructor(
    cells: ArrayLike<unknown>,
    readonly areNumbers: boolean,
    readonly places: Places,
    readonly noteRows: number,
    readonly argument: string,
  ) {
    this.#cells = cells;
    this.count = cells.length;
    this.length = places.length;
  }

  get distinct(): readonly T[] {
    return (this.#distinct ??= Array.from(this.#cells, (cell) => (this.areNumbers ? String(cell) : cell) as T));
  }

  at(row: number): T | null {
    const cell = this.#cells[this.places[row]! - 1] ?? null;
    return (cell !== null && this.areNumbers ? String(cell) : cell) as T | null;
  }

  get values(): readonly (T | null)[] {
    if (this.#values === undefined) {
      const { distinct, places } = this;
      const values = new Array<T | null>(places.length);
      for (let row = 0; row < values.length; row++) values[row] = distinct[places[row]! - 1] ?? null;
      this.#values = values;
    }
    return this.#values;
  }
}
