import type { BookPort } from "../../workbook/book-port";
import { mappingTable } from "../../workbook/mapping-table";
import type { PlainBook, PlainSheet } from "../../workbook/plain-book";
import { TableError } from "../../workbook/table-error";
import type { TableContent, TableInfo, TablePort } from "../../workbook/table-port";
import { wordsTable } from "../../workbook/words-table";
import { LesionWords } from "../codes/words";
import type { MappedSource, Mapping } from "../mapping/mapping";
import { type ResolvedMapping, resolveMapping } from "../mapping/resolve";
import { type MappingProblem, readMapping, type StoredMapping } from "../mapping/store";
import type { HerdTableName } from "../mapping/targets";
import { type FarmList, rangeList, tableList } from "./farm-list";
import { type OurTable, ourTable } from "./our-table";
import { scaleIn } from "./scale-of";

/** What the workbook says of the farm's own lists. */
export interface Farm {
  readonly mapping: Mapping;
  /** Rows of the Mapping table that are not understood. */
  readonly problems: readonly MappingProblem[];
  readonly words: LesionWords;
  /** Tables that the workbook knows as such. */
  readonly infos: readonly TableInfo[];
}

/** The mapping that the workbook holds; undefined where it holds none. */
export async function readFarm(tables: TablePort, book: BookPort): Promise<Farm | undefined> {
  const infos = await tables.listTables();
  const read = (name: string): Promise<TableContent> | undefined =>
    infos.some((info) => info.name === name) ? tables.readTable(name) : undefined;
  const [stored, words] = await Promise.all([read(mappingTable.name), read(wordsTable.name)]);
  if (stored === undefined) return undefined;
  return { ...(await mappingIn(stored, book)), words: new LesionWords(words), infos };
}

/** Where the table stands is looked up only where a cell of it has to be named. */
async function mappingIn(content: TableContent, book: BookPort): Promise<StoredMapping> {
  const stored = readMapping(content);
  if (stored.problems.length === 0) return stored;
  const { tables } = await book.readSheet(content.sheet);
  const area = tables.find(({ name }) => name === content.name)?.area;
  return readMapping(content, area && { row: area.firstRow, column: area.firstColumn });
}

/** Whether a table of ours is read from lists of the farm, or would be if the mapping were understood. */
export function isMapped({ mapping, problems }: Farm, name: string): name is HerdTableName {
  return mapping.sources.some(({ table }) => table === name) || problems.some(({ tables }) => tables.some((table) => table === name)); // oxfmt-ignore
}

/** A table of ours as the farm's lists hold it. Rejects with what is broken in the mapping. */
export async function readOurTable(
  name: HerdTableName,
  { mapping, problems, words, infos }: Farm,
  tables: TablePort,
  book: BookPort,
): Promise<OurTable> {
  const sources = mapping.sources.filter(({ table }) => table === name);
  const ofTable = problems.filter((problem) => problem.tables.includes(name));
  if (ofTable.length > 0) throw broken(ofTable.map(({ text }) => text));
  scaleIn(sources);
  const contents = new Map<string, Promise<TableContent>>();
  const read = (table: string): Promise<TableContent> => {
    const content = contents.get(table) ?? tables.readTable(table);
    contents.set(table, content);
    return content;
  };
  const { sources: found } = await resolved(sources, infos, read, book);
  const lists = await Promise.all(
    found.map(async (list): Promise<FarmList> => {
      const { source } = list.source;
      return source === undefined ? rangeList(list, words) : tableList(list.source, await read(source), words);
    }),
  );
  const info = infos.find((known) => known.name === lists[0]?.table);
  return ourTable(name, lists, lists.length === 1 ? shownOf(info) : {});
}

function shownOf(info: TableInfo | undefined): Partial<TableInfo> {
  return {
    ...(info?.protected === undefined ? {} : { protected: info.protected }),
    ...(info?.filtered === undefined ? {} : { filtered: info.filtered }),
  };
}

/** Looks where the lists stood; only what is not there any more is looked for in the whole workbook. */
async function resolved(
  sources: readonly MappedSource[],
  infos: readonly TableInfo[],
  read: (table: string) => Promise<TableContent>,
  book: BookPort,
): Promise<ResolvedMapping> {
  const near = await nearBook(sources, infos, read, book).catch(unlessGone);
  const nearby = near === undefined ? undefined : resolveMapping({ sources: sources.map(byHeading) }, near);
  if (nearby !== undefined && nearby.broken.length === 0) return nearby;
  const found = resolveMapping({ sources }, await book.readBook());
  if (found.broken.length > 0) throw broken(found.broken);
  return found;
}

/** The farm's tables as they were named, and the sheets of its plain ranges. */
async function nearBook(
  sources: readonly MappedSource[],
  infos: readonly TableInfo[],
  read: (table: string) => Promise<TableContent>,
  book: BookPort,
): Promise<PlainBook> {
  const named = sources.flatMap(({ source }) => (source === undefined ? [] : [source]));
  const tables = named.filter((name) => infos.some((info) => info.name === name));
  const sheets = new Set(sources.flatMap(({ source, sheet }) => (source === undefined ? [sheet] : [])));
  return {
    sheets: await Promise.all([
      ...tables.map(async (name) => tableSheet(await read(name))),
      ...[...sheets].map((name) => book.readSheet(name)),
    ]),
  };
}

function tableSheet({ name, sheet, columns, rows }: TableContent): PlainSheet {
  const area = { firstRow: 0, firstColumn: 0, lastRow: Math.max(1, rows.length), lastColumn: columns.length - 1 };
  const calculated = columns.filter((column) => column.calculated).map(({ heading }) => heading);
  const headings = columns.map(({ heading }) => heading);
  return { name: sheet, rows: [headings, ...rows], tables: [{ name, area, calculated }], days: [], formulas: [], merges: [] }; // oxfmt-ignore
}

/** A table that is read by itself does not show in which columns of its sheet it stands: headings alone count. */
function byHeading(source: MappedSource): MappedSource {
  if (source.source === undefined) return source;
  return { ...source, columns: source.columns.map((column) => ({ ...column, column: -1 })) };
}

function unlessGone(error: unknown): undefined {
  if (error instanceof TableError && (error.kind === "sheet-gone" || error.kind === "table-gone")) return undefined;
  throw error;
}

function broken(sentences: readonly string[]): TableError {
  return new TableError("column-missing", [...sentences, "Open Set up to map it again."].join(" "));
}
