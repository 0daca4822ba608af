import type { BookPort } from "../../workbook/book-port";
import { mappingTable } from "../../workbook/mapping-table";
import { TableError } from "../../workbook/table-error";
import type { TableContent, TablePort } from "../../workbook/table-port";
import { wordsTable } from "../../workbook/words-table";
import { type ResolvedMapping, resolveMapping } from "../mapping/resolve";
import { readMapping } from "../mapping/store";

/** Where the farm's own lists lie, for formulas that have to name their cells. */
export interface ResolvedFarm {
  readonly resolved: ResolvedMapping;
  /** The table of the farm's words; absent where there is none. */
  readonly words?: TableContent;
}

/**
 * The mapping of a workbook as it stands in its cells; undefined where it holds none. Formulas cannot name a mapped
 * list as if it were a table of ours. Rejects with what is broken, as reading the lists does.
 */
export async function resolvedFarm(tables: TablePort, book: BookPort): Promise<ResolvedFarm | undefined> {
  const names = new Set((await tables.listTables()).map(({ name }) => name));
  if (!names.has(mappingTable.name)) return undefined;
  const [stored, words, plain] = await Promise.all([
    tables.readTable(mappingTable.name),
    names.has(wordsTable.name) ? tables.readTable(wordsTable.name) : undefined,
    book.readBook(),
  ]);
  const { mapping, problems } = readMapping(stored);
  const resolved = resolveMapping(mapping, plain);
  const broken = [...problems.map(({ text }) => text), ...resolved.broken];
  if (broken.length > 0) throw new TableError("column-missing", broken.join(" "));
  return { resolved, ...(words === undefined ? {} : { words }) };
}
