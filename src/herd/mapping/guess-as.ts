import type { PlainBook } from "../../workbook/plain-book";
import { type Block } from "./block";
import { findBlocks } from "./find-blocks";
import { type GuessedSource, seeBlocks, sourceOf, unitOf } from "./guess-book";
import { guessColumns } from "./guess-columns";
import type { UnitGuess } from "./guess-unit";
import type { MappedSource } from "./mapping";
import { profileOf } from "./profile";
import type { HerdTableName } from "./targets";

/** Where a list stands. */
export type ListPlace = Pick<MappedSource, "sheet" | "source" | "headingRow">;

/** The guess at a list whose kind the user has said; undefined where no list stands at the place. */
export function guessAs(book: PlainBook, place: ListPlace, table: HerdTableName): GuessedSource | undefined {
  const seen = seeBlocks(findBlocks(book)).find(({ block }) => isAt(block, place));
  if (seen === undefined) return undefined;
  return sourceOf({ seen, table, columns: guessColumns(seen, table), weight: 0, own: false });
}

/** The unit of a column whose meaning the user has said; undefined where its values need none. */
export function guessUnitAs(
  book: PlainBook,
  place: ListPlace,
  column: number,
  table: HerdTableName,
  key: string,
): UnitGuess | undefined {
  const sheets = book.sheets.filter(({ name }) => name === place.sheet);
  const block = findBlocks({ sheets }).find((known) => isAt(known, place));
  const at = block?.columns.find((known) => known.column === column);
  if (block === undefined || at === undefined) return undefined;
  return unitOf(table, key, { at, profile: profileOf(block, at), sharesCows: false });
}

function isAt({ sheet, table, headingRow }: Block, place: ListPlace): boolean {
  return sheet.name === place.sheet && table === place.source && headingRow === place.headingRow;
}
