import { day } from "../../../src/core/shared/days";
import { toSnapshot } from "../../../src/engine/snapshot";
import { plainBook } from "../../../src/workbook/file/plain-book";
import { registry } from "../../../src/functions/registry";
import { checkBook } from "../../../src/herd/check/check-book";
import { WorkbookFileError } from "../../../src/xlsx/file-error";
import type { Area, WorkbookModel } from "../../../src/xlsx/model";
import { openPackage } from "../../../src/xlsx/package";
import { readProtection } from "../../../src/xlsx/protection";
import { readPackage } from "../../../src/xlsx/read";

const IDS = registry.map(({ id }) => id);
const AS_OF = day("2026-09-01");

/** Rows and columns that a sheet has at most. Source: ECMA-376 Part 1, 18.3.1.73 and 18.3.1.4. */
const ROWS = 1_048_576;
const COLUMNS = 16_384;

/** Names that the language gives to every object, as they are before any file is read. */
const BUILT_IN = propertiesOfAll();

function propertiesOfAll(): string {
  return [Object.prototype, Array.prototype, Function.prototype, Map.prototype, String.prototype]
    .map((prototype) => Reflect.ownKeys(prototype).map(String).join())
    .join(";");
}

/**
 * Opens a file as the commands and the trial page do. Gives the sentence that refuses it, or undefined where it opens.
 * Fails where something else than a sentence comes of it, where what was read cannot stand on a sheet, or where the
 * bytes or the language's own objects are no longer as they were.
 */
export function openSafely(bytes: Uint8Array): string | undefined {
  const before = Buffer.from(bytes);
  const refusal = open(bytes);
  if (!before.equals(Buffer.from(bytes))) throw new Error("the file's bytes were changed");
  if (propertiesOfAll() !== BUILT_IN) throw new Error("the file has changed the language's own objects");
  return refusal;
}

function open(bytes: Uint8Array): string | undefined {
  try {
    const file = openPackage(bytes);
    const model = readPackage(file, IDS);
    expectOnSheet(model);
    for (const { rowCount, columnCount } of Object.values(toSnapshot(model).sheets)) {
      if (!(rowCount! <= ROWS + SPARE && columnCount! <= COLUMNS + SPARE))
        throw new Error(`the grid would have ${rowCount} rows and ${columnCount} columns`);
    }
    checkBook(plainBook(model), AS_OF);
    readProtection(file);
    return undefined;
  } catch (error) {
    if (!(error instanceof WorkbookFileError)) throw error;
    expectSentence(error.message);
    return error.message;
  }
}

/** Empty rows and columns that the grid shows beyond what is used. */
const SPARE = 200;

const LONGEST_SENTENCE = 200;

function expectSentence(message: string): void {
  const isUnfit = /undefined(?! entity)|NaN|\[object|is not a function|Cannot|\n|Error/.test(message);
  if (isUnfit || message.length < 10 || message.length > LONGEST_SENTENCE)
    throw new Error(`no sentence for a person: ${message.slice(0, 500)}`);
}

function expectOnSheet({ sheets, styles }: WorkbookModel): void {
  for (const sheet of sheets) {
    for (const { row, column, style } of sheet.cells) {
      expectPlace(row, column);
      if (styles[style] === undefined) throw new Error(`a cell has the style ${style}`);
    }
    for (const { row } of sheet.rows) expectPlace(row, 0);
    for (const { first, last } of sheet.columns) {
      expectPlace(0, first);
      expectPlace(0, last);
    }
    const areas: Area[] = [
      ...sheet.merges,
      ...sheet.tables.map(({ area }) => area),
      ...sheet.validations.flatMap((validation) => validation.areas),
      ...sheet.conditionalFormats.flatMap((format) => format.areas),
      ...sheet.cells.flatMap(({ array }) => (array === undefined ? [] : [array.area])),
    ];
    for (const { firstRow, firstColumn, lastRow, lastColumn } of areas) {
      expectPlace(firstRow, firstColumn);
      expectPlace(lastRow, lastColumn);
    }
  }
}

function expectPlace(row: number, column: number): void {
  const isOnSheet = Number.isInteger(row) && Number.isInteger(column) && row >= 0 && column >= 0;
  if (!isOnSheet || row >= ROWS || column >= COLUMNS)
    throw new Error(`no cell of a sheet: row ${row}, column ${column}`);
}
