import { LesionWords } from "../../../herd/codes/words";
import type { PlainCell } from "../../../workbook/port";
import type { TableContent } from "../../../workbook/table-port";
import { wordsTable } from "../../../workbook/words-table";
import type { OldBook } from "./copy-state";
import { findWords, type KnownWord } from "./found-words";

/** Words with their codes as a Words table holds them. */
function wordsContent(words: readonly Pick<KnownWord, "word" | "code">[]): TableContent {
  const [word, code] = wordsTable.columns;
  const columns = [word, code].map(({ heading }) => ({ heading, calculated: false }));
  const rows: PlainCell[][] = words.map((known) => [known.word, known.code]);
  return { name: wordsTable.name, sheet: wordsTable.name, columns, rowCount: rows.length, rows };
}

/** The code that a word of the old book is about to be copied with; "" for none. */
export function oldCodeFor({ codes }: OldBook, { word, proposed }: OldBook["unknown"][number]): string {
  return codes[word] ?? proposed;
}

/** What the words of the old book mean: by this workbook, then by the old one, then by what the user has said. */
export function oldWords(old: OldBook, known: readonly KnownWord[]): LesionWords {
  const said = old.unknown.flatMap((word) => {
    const code = oldCodeFor(old, word);
    return code === "" ? [] : [{ word: word.word, code }];
  });
  return new LesionWords(wordsContent([...known, ...old.known, ...said]));
}

/** The words of the old book that neither book explains. */
export function unknownIn(
  { book, lists, known }: Pick<OldBook, "book" | "lists" | "known">,
  here: readonly KnownWord[],
): OldBook["unknown"] {
  return findWords(book, lists, wordsContent([...here, ...known])).unknown;
}
