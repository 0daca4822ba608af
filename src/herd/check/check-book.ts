import type { DaySerial } from "../../core/shared/days";
import { wordsTable } from "../../workbook/words-table";
import { LesionWords } from "../codes/words";
import { wrongDays } from "../mapping/book-problems";
import { guessBook } from "../mapping/guess-book";
import type { Mapping } from "../mapping/mapping";
import { openQuestions } from "../mapping/open-questions";
import type { PlainBook } from "../../workbook/plain-book";
import { type MappedTable, readMapped } from "../mapping/read-mapped";
import { resolveMapping } from "../mapping/resolve";
import type { StoredMapping } from "../mapping/store";
import { storedMapping, tableContent } from "../mapping/stored-mapping";
import { CheckedHerd } from "./checked-herd";
import { checks } from "./checks";
import type { Doubt } from "./doubt";
import { Report } from "./report";

/** What a check of a whole workbook found. */
export interface BookCheck {
  readonly doubts: readonly Doubt[];
  /** The lists that were checked. */
  readonly tables: readonly MappedTable[];
  /** What could not be checked, was guessed or stands in the way. Plain sentences. */
  readonly remarks: readonly string[];
}

/** Checks a herd's lists, in one pass. */
export function checkTables(tables: readonly MappedTable[], asOf: DaySerial, words: LesionWords): readonly Doubt[] {
  const herd = new CheckedHerd(tables, asOf, words);
  const report = new Report();
  for (const check of checks) {
    report.begin(check.id);
    check.run(herd, report);
  }
  return report.doubts;
}

/**
 * Checks a workbook by the mapping that it holds, or by a guess where it holds none. `asOf` is the day on which it is
 * looked at.
 */
export function checkBook(book: PlainBook, asOf: DaySerial): BookCheck {
  const words = new LesionWords(tableContent(book, wordsTable.name));
  const stored = storedMapping(book);
  const { mapping, remarks, own } = stored === undefined ? guessed(book) : known(stored, book);
  const resolved = resolveMapping(mapping, book);
  const tables = resolved.sources.map((source) => readMapped(source, words, own.has(source.source.table)));
  return {
    doubts: checkTables(tables, asOf, words),
    tables,
    remarks: [...remarks, ...resolved.notes, ...resolved.broken, ...words.problems.map(({ problem }) => problem)],
  };
}

interface FoundMapping {
  readonly mapping: Mapping;
  readonly remarks: readonly string[];
  /** Names of the tables that are our own. */
  readonly own: ReadonlySet<string>;
}

function guessed(book: PlainBook): FoundMapping {
  const { sources, problems } = guessBook(book);
  const unsure = sources.flatMap(openQuestions).map(({ question }) => question);
  const lost = sources.flatMap(({ table, missing, sheet }) => missing.map((heading) => `${table}: no column of ${sheet} was found for ${heading}.`)); // oxfmt-ignore
  const own = new Set<string>(sources.filter((source) => source.own).map(({ table }) => table));
  return { mapping: { sources }, own, remarks: [...problems, ...sources.flatMap(({ remarks }) => remarks), ...lost, ...unsure] }; // oxfmt-ignore
}

/** The mapping that the workbook holds; our own tables need none. */
function known({ mapping, problems }: StoredMapping, book: PlainBook): FoundMapping {
  const ours = guessBook(book).sources.filter((source) => source.own && !mapping.sources.some(({ table }) => table === source.table)); // oxfmt-ignore
  const own = new Set<string>(ours.map(({ table }) => table));
  return {
    mapping: { sources: [...mapping.sources, ...ours] },
    own,
    remarks: [...wrongDays(book), ...problems.map(({ text }) => text)],
  };
}
