import { DomainError } from "../core/shared/domain-error";
import { asWords, NO_WORD, type Words } from "../core/shared/words";
import { looksLikeDate, looksLikeNumber, readCell } from "./cell";
import { KnownCells } from "./known-cells";
import type { Kind, NumberRange, ScalarKind } from "./kind";

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
  /** Present where the values are numbers: the same, with NaN for null. Read it through `numbersOf`. */
  readonly numbers?: Float64Array;
  /** Present where the values are words or the like: each once, and for every row its place, -1 for null. */
  readonly distinct?: readonly T[];
  readonly places?: Int32Array;
}

/** A column of numbers as a loop over very many rows reads it: NaN where there is no value. */
export function numbersOf(column: Column<number>): Float64Array {
  return column.numbers ?? Float64Array.from(column.values, (value) => value ?? NaN);
}

/** A column of words as a loop over very many rows reads it. */
export function wordsOf(column: Column<string>): Words {
  const { distinct, places } = column;
  return distinct === undefined || places === undefined ? asWords(column.values) : { words: distinct, places };
}

interface ColumnOptions {
  /**
   * What to do with text that is no value of the kind: "leave out" for numbers and dates (a note such as "dry"),
   * "leave out words" where text with a digit in it is meant as a value (a score "2b"), "refuse" where every text is
   * meant as a value (lesion codes, words).
   */
  readonly notes: "leave out" | "leave out words" | "refuse";
}

/** A column kind made of a scalar kind. */
export function columnOf<T>(item: ScalarKind<T>, options: ColumnOptions): Kind<Column<T>> {
  return {
    name: `column of ${plural(item.name)}`,
    shape: "column",
    ...(item.unit === undefined ? {} : { unit: item.unit }),
    limits: item.limits,
    must: `a column, each row ${item.must}`,
    read(raw, argument) {
      const rows = columnRows(raw, argument);
      const reader = new RowReader(item, options, rows, argument);
      if (item.asWritten === undefined) return readAny(reader);
      return readNumbers(reader, item.asWritten) as Column<unknown> as Column<T>;
    },
  };
}

/** Most columns of words repeat a few: a cell like one above is not read again. */
function readAny<T>(reader: RowReader<T>): Column<T> {
  const { rows, argument, item } = reader;
  const places = new Int32Array(rows.length);
  const distinct: T[] = [];
  const known = new KnownCells();
  let [asWritten, numbersAsText] = [true, item.takesAnyText === true];
  for (let row = 0; row < rows.length; row++) {
    const raw = rows[row]![0];
    let place = known.placeOf(raw);
    if (place < 0) {
      const value = reader.read(row);
      if (value === null) place = NO_WORD;
      else {
        place = distinct.push(value) - 1;
        known.add(raw, place);
        asWritten &&= raw === value;
        numbersAsText &&= typeof raw === "number";
      }
    }
    places[row] = place;
  }
  // Different cells may read as one value, unless every cell is its own value or its number as text.
  const values = asWritten || numbersAsText ? distinct : mergeEqual(distinct, places);
  return new RepeatingColumn(values, places, reader.noteRows, argument);
}

/** The values without their doubles; moves the places along. */
function mergeEqual<T>(values: readonly T[], places: Int32Array): readonly T[] {
  const distinct: T[] = [];
  const placeOf = new Map<T, number>();
  const newPlaces = values.map((value) => {
    let place = placeOf.get(value);
    if (place === undefined) placeOf.set(value, (place = distinct.push(value) - 1));
    return place;
  });
  for (let row = 0; row < places.length; row++) places[row] = newPlaces[places[row]!] ?? NO_WORD;
  return distinct;
}

function readNumbers(reader: RowReader<unknown>, { min, max, whole }: NumberRange): Column<number> {
  const { rows, argument } = reader;
  const numbers = new Float64Array(rows.length);
  for (let row = 0; row < rows.length; row++) {
    const raw = rows[row]![0];
    numbers[row] =
      typeof raw === "number" && raw >= min && raw <= max && (!whole || Number.isInteger(raw))
        ? raw
        : ((reader.read(row) as number | null) ?? NaN);
  }
  return new NumberColumn(numbers, reader.noteRows, argument);
}

/** Values are kept once each; the list row by row is made when someone asks for it. */
class RepeatingColumn<T> implements Column<T> {
  #values: readonly (T | null)[] | undefined;
  readonly length: number;

  constructor(
    readonly distinct: readonly T[],
    readonly places: Int32Array,
    readonly noteRows: number,
    readonly argument: string,
  ) {
    this.length = places.length;
  }

  get values(): readonly (T | null)[] {
    if (this.#values === undefined) {
      const values = new Array<T | null>(this.length);
      for (let row = 0; row < values.length; row++) values[row] = this.distinct[this.places[row]!] ?? null;
      this.#values = values;
    }
    return this.#values;
  }
}

/** Numbers are kept unboxed; the list with nulls is made when someone asks for it. */
class NumberColumn implements Column<number> {
  #values: readonly (number | null)[] | undefined;
  readonly length: number;

  constructor(
    readonly numbers: Float64Array,
    readonly noteRows: number,
    readonly argument: string,
  ) {
    this.length = numbers.length;
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

/** Reads single rows with all their checks. */
class RowReader<T> {
  noteRows = 0;
  /** The note read last: lists repeat theirs, and a repeated one needs no second look. */
  #note: string | undefined;

  constructor(
    readonly item: ScalarKind<T>,
    readonly options: ColumnOptions,
    readonly rows: Rows,
    readonly argument: string,
  ) {}

  read(row: number): T | null {
    const { item, rows, argument } = this;
    const raw = rows[row]![0];
    if (raw === null || raw === undefined || raw === "" || (raw === 0 && item.zeroIsBlank)) return null;
    if (raw === this.#note) {
      this.noteRows++;
      return null;
    }
    const cell = readCell(raw, () => rowName(argument, row));
    if (cell === null || (cell === 0 && item.zeroIsBlank)) return null;
    if (typeof cell === "string" && isNote(cell, this.options.notes)) {
      if (row === 0) refuseHeading(cell, rows, argument);
      this.noteRows++;
      return null;
    }
    return this.#readValue(cell, row);
  }

  /** The message of a bad row names the row as counted in the range handed over. */
  #readValue(cell: number | string | boolean, row: number): T {
    const { item, rows, argument } = this;
    try {
      return item.readCell(cell, argument);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      if (row === 0 && typeof cell === "string" && item.asWritten !== undefined && isWord(cell))
        refuseHeading(cell, rows, argument);
      throw new DomainError(error.kind, error.message.replace(argument, rowName(argument, row)));
    }
  }
}

export function rowName(argument: string, row: number): string {
  return `${argument} row ${row + 1}`;
}

function isNote(text: string, notes: ColumnOptions["notes"]): boolean {
  if (notes === "refuse" || (notes === "leave out words" && /\d/.test(text))) return false;
  return isWord(text);
}

function isWord(text: string): boolean {
  return !looksLikeNumber(text) && !looksLikeDate(text);
}

/** Marks that farms write where there is no value; any other text on top of numbers is taken for the heading. */
const NO_VALUE_MARKS = /^(-+|–|—|\?|\.|x|n\/?a|none|no|dry|missing|absent|sold|dead|gone|not tested|not scored)$/i;

function refuseHeading(cell: string, rows: Rows, argument: string): void {
  if (NO_VALUE_MARKS.test(cell)) return;
  for (let row = 1; row < rows.length; row++) {
    if (typeof rows[row]![0] === "number") {
      throw new DomainError(
        "invalid",
        `${argument} row 1 holds the text "${cell}", which looks like the heading: pass the column without its heading`,
      );
    }
  }
}

/** Rows of one cell each. */
type Rows = readonly (readonly unknown[])[];

/** One column as handed over, a list laid across, or a lone cell, as rows of one cell. */
function columnRows(raw: unknown, argument: string): Rows {
  if (!Array.isArray(raw)) return [[raw]];
  const rows = raw as readonly unknown[];
  const first = rows[0];
  if (!Array.isArray(first)) throw new DomainError("invalid", `${argument} must be a column of cells`);
  const width = first.length;
  if (rows.length === 1) return (first as readonly unknown[]).map((cell) => [cell]);
  if (width === 1) return rows as Rows;
  throw new DomainError("invalid", `${argument} must be one column; got ${rows.length} rows by ${width} columns`);
}

function plural(name: string): string {
  return /s$|counts/.test(name) ? name : `${name}s`;
}
