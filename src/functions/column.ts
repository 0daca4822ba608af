import { asWords, NO_WORD, type Places, type Repeated, type Words } from "../core/shared/words";

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
  /** Present where the values are whole numbers from 1: the same, with 0 for null. Read it through `wholeNumbersOf`. */
  readonly whole?: WholeNumbers;
  /** Present where the values are words or the like: each once, with its place a row. */
  readonly repeated?: Repeated<T>;
}

/** Whole numbers from 1, in as few bytes each as they need. */
export type WholeNumbers = Uint8Array | Int32Array;

/** A column of numbers as a loop over very many rows reads it: NaN where there is no value. */
export function numbersOf(column: Column<number>): Float64Array {
  return column.numbers ?? Float64Array.from(column.values, (value) => value ?? NaN);
}

/** A column of whole numbers from 1 as a loop over very many rows reads it: 0 or NaN where there is no value. */
export function wholeNumbersOf(column: Column<number>): ArrayLike<number> {
  return column.whole ?? numbersOf(column);
}

/** A column of words as a loop over very many rows reads it. */
export function wordsOf(column: Column<string>): Words {
  return column.repeated ?? asWords(column.values);
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

/** Rows of one cell each, every cell a number or blank, and how many different numbers there are. */
export interface RowsOfNumbers {
  readonly rows: readonly (readonly unknown[])[];
  readonly count: number;
}

/** Values that repeat are kept once each; the list row by row is made when someone asks for it. */
export class RepeatingColumn<T> implements Column<T>, Repeated<T> {
  readonly repeated = this;
  readonly areNumbers: boolean;
  readonly length: number;
  readonly count: number;
  #distinct: readonly T[] | undefined;
  #values: readonly (T | null)[] | undefined;
  readonly #rows: RowsOfNumbers["rows"];

  /** `distinct` are the values; numbers that are to be read as text stay in their rows until someone asks for them. */
  constructor(
    distinct: readonly T[] | RowsOfNumbers,
    readonly places: Places,
    readonly noteRows: number,
    readonly argument: string,
  ) {
    this.areNumbers = "rows" in distinct;
    this.#distinct = "rows" in distinct ? undefined : distinct;
    this.#rows = "rows" in distinct ? distinct.rows : [];
    this.count = "rows" in distinct ? distinct.count : distinct.length;
    this.length = places.length;
  }

  get distinct(): readonly T[] {
    return (this.#distinct ??= numbersMet(this.#rows, this.places, this.count).map((number) => String(number) as T));
  }

  at(row: number): T | null {
    const place = this.places[row]!;
    if (place === NO_WORD) return null;
    return this.#distinct === undefined ? (String(this.#rows[row]![0]) as T) : this.#distinct[place - 1]!;
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

/** The first `count` different numbers of rows, in the order in which they were met: so their places were given. */
export function numbersMet(rows: RowsOfNumbers["rows"], places: Places, count: number): unknown[] {
  const numbers = new Array<unknown>(count);
  for (let [row, met] = [0, 0]; met < count; row++) if (places[row] === met + 1) numbers[met++] = rows[row]![0];
  return numbers;
}
