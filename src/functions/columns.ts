import { DomainError } from "../core/shared/domain-error";
import { NO_WORD, type Places } from "../core/shared/words";
import { type Column, numbersMet, RepeatingColumn } from "./column";
import { KnownCells, NOT_KNOWN } from "./known-cells";
import type { Kind, ScalarKind } from "./kind";
import { readNumbers } from "./read-numbers";
import { type ColumnOptions, RowReader, type Rows } from "./row-reader";

export { type Column, numbersOf, wholeNumbersOf, wordsOf } from "./column";
export { rowName } from "./row-reader";

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
      if (item.asWritten === undefined) return readRepeating(reader);
      return readNumbers(reader, item.asWritten) as Column<unknown> as Column<T>;
    },
  };
}

/** So many different values have no room in a byte each. */
const MORE_THAN_A_BYTE = 256;

/** Most columns of words repeat a few: a cell like one above is not read again. */
function readRepeating<T>(reader: RowReader<T>): Column<T> {
  const { rows, argument, item } = reader;
  let places: Places = new Uint8Array(rows.length);
  /** The different values, once one of them is not just the number of its cell: numbers stand in the rows. */
  let values: unknown[] | undefined;
  let count = 0;
  const known = new KnownCells();
  let textsAsWritten = true;
  for (let row = 0; row < rows.length; row++) {
    const cells = rows[row];
    const raw = cells?.length === 1 ? cells[0] : undefined;
    if (raw === null) continue;
    let place = known.placeOf(raw);
    if (place === NOT_KNOWN) {
      const isNumber = item.takesAnyText === true && typeof raw === "number" && raw !== 0 && Number.isFinite(raw);
      const value = isNumber ? raw : reader.read(row);
      if (value === null) place = NO_WORD;
      else {
        if (!isNumber) values ??= numbersMet(rows, places, count);
        values?.push(value);
        place = ++count;
        if (place === MORE_THAN_A_BYTE) places = widened(places, row);
        known.add(raw, place);
        textsAsWritten &&= !isNumber && raw === value;
      }
    }
    places[row] = place;
  }
  // Different cells may read as one value, unless every value is its cell.
  if (values !== undefined && !textsAsWritten) values = mergeEqual(values, item.takesAnyText === true, places);
  const distinct = (values as T[] | undefined) ?? { rows, count };
  return new RepeatingColumn(distinct, places, reader.noteRows, argument);
}

/** Room for more places; those of the rows above are taken along. */
function widened(places: Places, rowsAbove: number): Int32Array {
  const wide = new Int32Array(places.length);
  wide.set(places.subarray(0, rowsAbove));
  return wide;
}

/** The values without their doubles; moves the places along. */
function mergeEqual(cells: readonly unknown[], areTexts: boolean, places: Places): unknown[] {
  const distinct: unknown[] = [];
  const placeOf = new Map<unknown, number>();
  const newPlaces = cells.map((cell) => {
    const value = areTexts ? String(cell) : cell;
    let place = placeOf.get(value);
    if (place === undefined) placeOf.set(value, (place = distinct.push(value)));
    return place;
  });
  for (let row = 0; row < places.length; row++) places[row] = newPlaces[places[row]! - 1] ?? NO_WORD;
  return distinct;
}

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
