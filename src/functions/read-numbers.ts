import { type Column, NumberColumn, type WholeNumbers } from "./column";
import type { NumberRange } from "./kind";
import type { RowReader } from "./row-reader";
import { WholeColumn } from "./whole-column";

/** A column of numbers, in as little memory as its limits allow. */
export function readNumbers(reader: RowReader<unknown>, range: NumberRange): Column<number> {
  const whole = roomForWhole(range, reader.rows.length);
  return whole === undefined ? readAnyNumbers(reader, range) : readWhole(reader, range, whole);
}

const LARGEST_BYTE = 255;
const LARGEST_WHOLE = 2 ** 31 - 1;

/** Room for whole numbers within those limits, with 0 left for none; undefined where they do not fit. */
function roomForWhole({ min, max, whole }: NumberRange, rows: number): WholeNumbers | undefined {
  if (whole !== true || min <= 0 || max > LARGEST_WHOLE) return undefined;
  return max <= LARGEST_BYTE ? new Uint8Array(rows) : new Int32Array(rows);
}

function readWhole(reader: RowReader<unknown>, range: NumberRange, numbers: WholeNumbers): Column<number> {
  const { min, max } = range;
  const { rows, argument } = reader;
  for (let row = 0; row < numbers.length; row++) {
    const cells = rows[row];
    const raw = cells?.length === 1 ? cells[0] : undefined;
    if (raw === null) continue;
    const isUsual = typeof raw === "number" && raw >= min && raw <= max && (raw | 0) === raw;
    if (isUsual) numbers[row] = raw;
    else {
      const value = reader.read(row) as number | null;
      // A word may stand for 0, such as "heifer" for her calvings: then 0 is no sign of none.
      if (value === 0) {
        reader.noteRows = 0;
        return readAnyNumbers(reader, range);
      }
      numbers[row] = value ?? 0;
    }
  }
  return new WholeColumn(numbers, reader.noteRows, argument);
}

/** The usual number takes the shortest way, whatever else stands in a cell the reader's. */
function readAnyNumbers(reader: RowReader<unknown>, { min, max, whole }: NumberRange): Column<number> {
  const { rows, argument } = reader;
  const { length } = rows;
  const numbers = new Float64Array(length);
  const readOther = (row: number): number => (reader.read(row) as number | null) ?? NaN;
  for (let row = 0; row < length; row++) {
    const cells = rows[row];
    if (cells?.length !== 1) {
      numbers[row] = readOther(row);
      continue;
    }
    const raw = cells[0];
    if (typeof raw === "number" && raw >= min && raw <= max) numbers[row] = raw;
    else numbers[row] = raw === null ? NaN : readOther(row);
  }
  if (whole) {
    for (let row = 0; row < length; row++) {
      const number = numbers[row]!;
      if (!Number.isNaN(number) && !Number.isInteger(number)) numbers[row] = readOther(row);
    }
  }
  return new NumberColumn(numbers, reader.noteRows, argument);
}
