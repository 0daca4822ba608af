import { disorderOf } from "../../../core/claws/disorder-key";
import { SOUND } from "../../../core/claws/findings";
import { LesionWords, type UnknownWord } from "../../../herd/codes/words";
import { readHerdTable } from "../../../herd/read-rows";
import { wordsProposal } from "../../../herd/set-up/keep-words";
import type { PlainBook } from "../../../workbook/plain-book";
import type { TableContent } from "../../../workbook/table-port";
import { wordsTable } from "../../../workbook/words-table";
import type { FoundList } from "./found-lists";
import { mappingOf } from "./lists";

/** A word of the farm and the code that it stands for. */
export interface KnownWord {
  readonly word: string;
  readonly code: string;
  readonly name: string;
}

/** A word that stands for no code yet. */
export interface OpenWord extends UnknownWord {
  /** The code that is proposed; "" where none is likely enough. */
  readonly proposed: string;
}

/** The farm's words for lesions. */
export interface FoundWords {
  /** The most frequent first. */
  readonly unknown: readonly OpenWord[];
  /** What the Words sheet says. */
  readonly known: readonly KnownWord[];
  /** Rows of the Words sheet that cannot be used, in plain sentences. */
  readonly problems: readonly string[];
  /** How many lists have a column of lesions. */
  readonly lists: number;
}

export const noWords: FoundWords = { unknown: [], known: [], problems: [], lists: 0 };

/** The words in the lesion columns of the lists, and those that the Words sheet explains. */
export function findWords(book: PlainBook, lists: readonly FoundList[], content: TableContent | undefined): FoundWords {
  const mapping = mappingOf(lists);
  const { unknown, rows } = wordsProposal(book, mapping, content);
  const known = content === undefined ? [] : readHerdTable(wordsTable, content).rows;
  return {
    unknown: unknown.map((word, index) => ({ ...word, proposed: rows[index]?.code ?? "" })),
    known: known.flatMap(({ word, code }) =>
      word === null || code === null ? [] : [{ word, code, name: lesionName(code) }],
    ),
    problems: new LesionWords(content).problems.map(({ problem }) => problem),
    lists: mapping.sources.filter(({ columns }) => columns.some(({ key }) => key === "lesion")).length,
  };
}

/** What a code stands for. */
export function lesionName(code: string): string {
  return code.toLowerCase() === SOUND ? "nothing found" : (disorderOf(code)?.name ?? code);
}
