import type { DaySerial } from "../../core/shared/days";
import type { PlainCell } from "../../workbook/port";
import type { TableContent } from "../../workbook/table-port";
import { mappingTable } from "../../workbook/mapping-table";
import { wordsTable } from "../../workbook/words-table";
import { LesionWords } from "../codes/words";
import { type Block, columnCells } from "../mapping/block";
import { findBlocks } from "../mapping/find-blocks";
import { guessBook } from "../mapping/guess-book";
import type { Mapping } from "../mapping/mapping";
import { openQuestions } from "../mapping/open-questions";
import type { PlainBook } from "../../workbook/plain-book";
import { type MappedTable, readMapped } from "../mapping/read-mapped";
import { resolveMapping } from "../mapping/resolve";
import { readMapping } from "../mapping/store";
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
  const stored = tableContent(book, mappingTable.name);
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
  const lost = sources.flatMap(({ table, missing, sheet }) => missing.map((heading) => `${table}: no column of ${sheet} was found for ${heading}.`)); // prettier-ignore
  const own = new Set<string>(sources.filter((source) => source.own).map(({ table }) => table));
  return { mapping: { sources }, own, remarks: [...problems, ...sources.flatMap(({ remarks }) => remarks), ...lost, ...unsure] }; // prettier-ignore
}

/** The mapping that the workbook holds; our own tables need none. */
function known(stored: TableContent, book: PlainBook): FoundMapping {
  const { mapping, problems } = readMapping(stored);
  const ours = guessBook(book).sources.filter((source) => source.own && !mapping.sources.some(({ table }) => table === source.table)); // prettier-ignore
  const own = new Set<string>(ours.map(({ table }) => table));
  return { mapping: { sources: [...mapping.sources, ...ours] }, own, remarks: problems };
}

/** A table of the workbook by its name. */
export function tableContent(book: PlainBook, name: string): TableContent | undefined {
  const block = findBlocks({ sheets: book.sheets.filter(({ tables }) => tables.some((table) => table.name === name)) }).find(({ table }) => table === name); // prettier-ignore
  return block === undefined ? undefined : contentOf(block);
}

function contentOf(block: Block): TableContent {
  const columns = block.columns.map((column) => columnCells(block, column));
  const rows = Array.from({ length: block.lastRow - block.firstRow + 1 }, (_, row) =>
    columns.map((cells): PlainCell => cells[row] ?? null),
  );
  return {
    name: block.table ?? "",
    sheet: block.sheet.name,
    columns: block.columns.map(({ heading, calculated }) => ({ heading, calculated })),
    rowCount: rows.length,
    rows,
  };
}
