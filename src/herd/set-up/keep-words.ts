import type { PlainBook } from "../../workbook/plain-book";
import type { TableContent } from "../../workbook/table-port";
import { wordsTable } from "../../workbook/words-table";
import { LesionWords, proposedRows, type UnknownWord, type WordRow } from "../codes/words";
import { foldCompact } from "../fold-words";
import { columnCells } from "../mapping/block";
import type { Mapping } from "../mapping/mapping";
import { resolveMapping } from "../mapping/resolve";
import { appendOf, type KeyedRow, keyedRows, newTable, type TableWrites, updateOf } from "./table-writes";

/** The words for lesions that nobody has explained yet, and the rows that would explain them. */
export interface WordsProposal {
  /** The most frequent first. */
  readonly unknown: readonly UnknownWord[];
  /** One row a word; its code is blank where none is likely enough. Nothing holds before the user has saved it. */
  readonly rows: readonly WordRow[];
}

/** Looks through the lists that are mapped as findings. `words` is the Words table as it stands. */
export function wordsProposal(book: PlainBook, mapping: Mapping, words: TableContent | undefined): WordsProposal {
  const texts = resolveMapping(mapping, book).sources.flatMap(({ source, block }) => {
    const place = source.columns.find(({ key }) => key === "lesion")?.column;
    const column = block.columns.find((known) => known.column === place);
    return column === undefined ? [] : columnCells(block, column).filter((cell) => typeof cell === "string");
  });
  const unknown = new LesionWords(words).unknown(texts);
  return { unknown, rows: proposedRows(unknown) };
}

/**
 * What has to be written so that the Words table holds these rows too. A word that stands in it already gets its code
 * there; other rows are left as they are. `content` is the table as it stands, undefined where there is none.
 */
export function wordsWrites(rows: readonly WordRow[], content: TableContent | undefined): TableWrites {
  const wanted: readonly KeyedRow[] = rows;
  if (content === undefined) return { create: newTable(wordsTable, wanted) };
  const places = new Map<string, number>();
  keyedRows(wordsTable, content).forEach(({ word }, index) => {
    const key = foldCompact(String(word ?? ""));
    if (key !== "" && !places.has(key)) places.set(key, index);
  });
  const placeOf = ({ word }: KeyedRow): number | undefined => places.get(foldCompact(String(word ?? "")));
  const changes = wanted.flatMap((row) => {
    const index = placeOf(row);
    // The word stays as the farm wrote it there.
    return index === undefined
      ? []
      : (updateOf(wordsTable, content, index, { ...row, word: content.rows[index]![wordColumn(content)]! }) ?? []);
  });
  return {
    changes: [
      ...changes,
      ...appendOf(
        wordsTable,
        content,
        wanted.filter((row) => placeOf(row) === undefined),
      ),
    ],
  };
}

function wordColumn(content: TableContent): number {
  return content.columns.findIndex(
    ({ heading }) => foldCompact(heading) === foldCompact(wordsTable.columns[0].heading),
  );
}
