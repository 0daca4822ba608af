import { asTableError } from "../table-error";
import type { TableHost } from "../table-host";

/**
 * A table host that lives in the page around a frame. What it throws was made by that page's own classes; here it
 * becomes an error of this page.
 */
export function framedHost(host: TableHost): TableHost {
  const told = async <T>(work: Promise<T>): Promise<T> => {
    try {
      return await work;
    } catch (error) {
      throw asTableError(error) ?? error;
    }
  };
  return {
    listTables: () => told(host.listTables()),
    readTable: (name) => told(host.readTable(name)),
    applyEdits: (edits, begin) => told(host.applyEdits(edits, begin)),
    createTable: (table) => told(host.createTable(table)),
    writeBlock: (block) => told(host.writeBlock(block)),
    watchChanges: (listener) => host.watchChanges(listener),
  };
}
