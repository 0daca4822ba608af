import type { BookPort } from "../../workbook/book-port";
import { mappingTable } from "../../workbook/mapping-table";
import type { Unwatch } from "../../workbook/port";
import { hostFailed, nameTaken, TableError } from "../../workbook/table-error";
import type { TableInfo, TablePort, WorkbookChange } from "../../workbook/table-port";
import { wordsTable } from "../../workbook/words-table";
import { type HerdTableName, herdTables } from "../mapping/targets";
import type { OurTable } from "./our-table";
import { type Farm, isMapped, readFarm, readOurTable } from "./read-farm";
import { FarmSaves } from "./farm-saves";

/**
 * The tables of a workbook with the farm's own lists among them as if they were ours: where the workbook holds a
 * Mapping table, the lists that it names are read and written under our table names, headings, units, codes and dates.
 * Everything else passes through, so that a workbook without a mapping is as it was.
 *
 * Reading rejects with a TableError that says what broke, where a mapped list or column is gone. A save is written in
 * the farm's columns, units and words, whole or not at all; a value that the farm has no column for is refused and
 * named, never left out. Columns of the farm that are not mapped stand beside ours under their own headings.
 */
export function mappedTables(tables: TablePort, book: BookPort): TablePort {
  const lastRead = new Map<HerdTableName, OurTable>();
  const listeners = new Set<(change: WorkbookChange) => void>();
  /** What the workbook held when it was last looked at: changes are told under its names. */
  let lastFarm: Farm | undefined;
  let looking: Promise<Farm | undefined> | undefined;
  /** Calls made at once share one look at the mapping. */
  const farm = (): Promise<Farm | undefined> => {
    looking ??= readFarm(tables, book).finally(() => {
      looking = undefined;
    });
    return looking.then((found) => (lastFarm = found));
  };
  const read = (name: HerdTableName, found: Farm): Promise<OurTable> => readOurTable(name, found, tables, book);
  const reads = new WeakMap<Farm, Map<HerdTableName, Promise<OurTable>>>();
  /** Calls that share one look at the mapping were made before anything of it was read: they share the reading too. */
  const readOnce = (name: HerdTableName, found: Farm): Promise<OurTable> => {
    const begun = reads.get(found) ?? new Map<HerdTableName, Promise<OurTable>>();
    reads.set(found, begun);
    const reading = begun.get(name) ?? read(name, found).finally(() => begun.delete(name));
    begun.set(name, reading);
    return reading;
  };
  const saves = new FarmSaves(tables, book, {
    farm,
    read,
    lastRead: (name) => lastRead.get(name),
    written: (name) => listeners.forEach((listener) => listener({ table: name, source: "local" })),
  });
  return {
    ...tables,
    listTables: async () => {
      const found = await farm();
      return found === undefined ? tables.listTables() : listed(found, (name) => readOnce(name, found));
    },
    readTable: async (name) => {
      const found = await farm();
      if (found === undefined || !isMapped(found, name)) return tables.readTable(name);
      const table = await readOnce(name, found);
      lastRead.set(name, table);
      return table.content;
    },
    save: (save) => saves.save(save),
    pastSaves: () => saves.past(),
    takeBack: (id) => saves.takeBack(id),
    createTable: async (table) => {
      const found = await farm().catch((error: unknown) => {
        throw error instanceof TableError ? error : hostFailed(error);
      });
      if (found !== undefined && isMapped(found, table.name)) throw nameTaken(table.name);
      await tables.createTable(table);
    },
    watchChanges: (listener): Unwatch => {
      listeners.add(listener);
      const unwatch = tables.watchChanges((change) => tellOurs(change, lastFarm, listener));
      return () => {
        listeners.delete(listener);
        unwatch();
      };
    },
  };
}

/** Tables that are not mapped, and ours in place of the farm's. One whose mapping is broken is listed too: reading it says what broke. */
async function listed(farm: Farm, read: (name: HerdTableName) => Promise<OurTable>): Promise<readonly TableInfo[]> {
  const names = herdTables.map(({ name }) => name).filter((name) => isMapped(farm, name));
  const ours = await Promise.all(
    names.map((name) =>
      read(name).then(
        ({ content }): TableInfo => ({ ...content }),
        (): TableInfo => ({ name, sheet: "", columns: [], rowCount: 0 }),
      ),
    ),
  );
  const placeOf = ({ name }: TableInfo): HerdTableName | undefined =>
    farm.mapping.sources.find(({ source, table }) => source === name || table === name)?.table;
  const inPlace = farm.infos.flatMap((info): readonly TableInfo[] => {
    const name = placeOf(info);
    return name === undefined ? [info] : ours.filter((table) => table.name === name);
  });
  return [...new Set([...inPlace, ...ours])];
}

/** A change of a list of the farm is one of our table; where the mapping itself changed, anything may have. */
function tellOurs(change: WorkbookChange, farm: Farm | undefined, tell: (change: WorkbookChange) => void): void {
  const { table, source } = change;
  if (table === mappingTable.name || table === wordsTable.name) {
    tell(change);
    tell({ source });
    return;
  }
  const ours = new Set(farm?.mapping.sources.flatMap((known) => (known.source === table ? [known.table] : [])));
  if (table === undefined || ours.size === 0) tell(change);
  for (const name of ours) tell({ table: name, source });
}
