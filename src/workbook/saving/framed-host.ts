import { asTableError } from "../table-error";
import type { BookHost } from "../book-host";
import type { TableHost } from "../table-host";

/**
 * A table host that lives in the page around a frame. What it throws was made by that page's own classes; here it
 * becomes an error of this page.
 */
export function framedHost(host: TableHost): TableHost {
  return {
    listTables: () => told(host.listTables()),
    readTable: (name) => told(host.readTable(name)),
    applyEdits: (edits, begin) => told(host.applyEdits(edits, begin)),
    createTable: (table) => told(host.createTable(table)),
    writeBlock: (block, begin) => told(host.writeBlock(block, begin)),
    readBlock: (block) => told(host.readBlock(block)),
    removeBlock: (block) => told(host.removeBlock(block)),
    watchChanges: (listener) => host.watchChanges(listener),
  };
}

/** The same for the sheets and cells. */
export function framedBook(host: BookHost): BookHost {
  return {
    readBook: () => told(host.readBook()),
    readSheet: (name) => told(host.readSheet(name)),
    show: (place) => told(host.show(place)),
    editCells: (edits) => told(host.editCells(edits)),
    takenNames: () => told(host.takenNames()),
    makeTable: (table) => told(host.makeTable(table)),
    unmakeTable: (name) => told(host.unmakeTable(name)),
    brokenFormulas: () => told(host.brokenFormulas()),
    reenter: (cells) => told(host.reenter(cells)),
    functionsLoaded: () => told(host.functionsLoaded()),
  };
}

async function told<T>(work: Promise<T>): Promise<T> {
  try {
    return await work;
  } catch (error) {
    throw asTableError(error) ?? error;
  }
}
