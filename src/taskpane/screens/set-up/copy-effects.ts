import type { DaySerial } from "../../../core/shared/days";
import { previewCopy } from "../../../herd/copy-over/preview";
import { scaleOf } from "../../../herd/mapped-port/scale-of";
import { storedMapping, tableContent } from "../../../herd/mapping/stored-mapping";
import { herdTables } from "../../../herd/mapping/targets";
import type { PlainBook } from "../../../workbook/plain-book";
import { wordsTable } from "../../../workbook/words-table";
import type { CopyEvent, OldBook } from "./copy-state";
import { sentenceOf, type SetUpPorts } from "./effects";
import { findLists } from "./found-lists";
import { findWords, type KnownWord } from "./found-words";
import { mappingOf } from "./lists";
import { oldWords, unknownIn } from "./old-words";

/** Whoever knows how the book was made has to put its dates right: switching the setting moves the days that are shown. */
const FROM_1904 =
  "Its days are counted from 1904, so every date would come over four years off. Make a copy whose days are counted from 1900, see that its dates are right, and choose that.";

/** Opens an old book. `here` are the words that this workbook explains. */
export async function readOldBook(
  open: () => Promise<PlainBook>,
  name: string,
  here: readonly KnownWord[],
  turn: number,
): Promise<CopyEvent> {
  try {
    const book = await open();
    if (book.from1904 === true) throw new Error(FROM_1904);
    const { lists, problems, refused, broken } = findLists(book, storedMapping(book));
    const { known } = findWords(book, lists, tableContent(book, wordsTable.name));
    const unknown = unknownIn({ book, lists, known }, here);
    const old: OldBook = {
      name,
      book,
      lists,
      problems: [...problems, ...refused, ...broken],
      known,
      unknown,
      codes: {},
    };
    return { type: "old book read", turn, old };
  } catch (error) {
    return { type: "old book refused", turn, message: sentenceOf(error) };
  }
}

/** What would come over, and what not. */
export async function drawUpPreview(
  { tables }: SetUpPorts,
  old: OldBook,
  here: readonly KnownWord[],
  asOf: DaySerial,
  turn: number,
): Promise<CopyEvent> {
  try {
    const present = new Set((await tables.listTables()).map(({ name }) => name));
    const wanted = herdTables.filter(({ name }) => present.has(name));
    const contents = await Promise.all(wanted.map(({ name }) => tables.readTable(name)));
    const scale = await scaleOf(tables);
    const { book, lists } = old;
    const from = { book, mapping: mappingOf(lists), words: oldWords(old, here), asOf };
    return { type: "preview drawn up", turn, preview: previewCopy(from, { tables: contents, scale }) };
  } catch (error) {
    return { type: "preview failed", turn, message: sentenceOf(error) };
  }
}
