import type { BookPort } from "../../workbook/book-port";
import { mappingTable } from "../../workbook/mapping-table";
import type { Unwatch } from "../../workbook/port";
import type { TablePort, WorkbookChange } from "../../workbook/table-port";

/**
 * The tables of a workbook, with the farm's own lists among them as if they were ours from when it holds a Mapping
 * table. The code for that is loaded only then: a workbook with our own tables never waits for it.
 */
export function tablesWhenMapped(tables: TablePort, book: BookPort): TablePort {
  const watchers = new Set<Watcher>();
  let mapped: TablePort | undefined;
  const current = async (): Promise<TablePort> => {
    if (mapped !== undefined) return mapped;
    const infos = await tables.listTables();
    if (!infos.some(({ name }) => name === mappingTable.name)) return tables;
    const { mappedTables } = await import(/* webpackChunkName: "mapped" */ "./mapped-tables");
    if (mapped === undefined) {
      mapped = mappedTables(tables, book);
      for (const watcher of watchers) watcher.watch(mapped);
    }
    return mapped;
  };
  return {
    listTables: async () => (await current()).listTables(),
    readTable: async (name) => (await current()).readTable(name),
    save: async (save) => (await current()).save(save),
    pastSaves: () => (mapped ?? tables).pastSaves(),
    takeBack: async (id) => (await current()).takeBack(id),
    createTable: async (table) => (await current()).createTable(table),
    writeBlock: async (block) => (await current()).writeBlock(block),
    watchChanges: (listener): Unwatch => {
      const watcher = new Watcher(listener);
      watchers.add(watcher);
      watcher.watch(mapped ?? tables);
      return () => {
        watchers.delete(watcher);
        watcher.stop();
      };
    },
  };
}

/** A listener that moves from one port to another. */
class Watcher {
  #unwatch: Unwatch | undefined;

  constructor(private readonly listener: (change: WorkbookChange) => void) {}

  watch(port: TablePort): void {
    this.stop();
    this.#unwatch = port.watchChanges(this.listener);
  }

  stop(): void {
    this.#unwatch?.();
    this.#unwatch = undefined;
  }
}
