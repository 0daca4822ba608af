import type { AppliedCell, BookHost, CellEdit, TableRange } from "../book-host";
import type { BookPort, CellChanges, RangeToTable } from "../book-port";
import { cellPosition } from "../cell-address";
import { cellAt, type PlainSheet } from "../plain-book";
import { isFreeOn, roomOn } from "../plain-room";
import { cellChanged, isUncertain, stillUncertain, TableError } from "../table-error";
import { freeTableName } from "../table-name";
import { type BookLog, type LoggedChange, memoryBookLog, withChange } from "./book-log";
import { cellEditsOf, checkRange } from "./clean-changes";
import { inTurns } from "./in-turn";
import { without } from "./log";
import { plainValue, standsFor } from "./row-match";
import { stillOpen } from "./still-open";

/**
 * The book port on a host: what is the same for all hosts. A change is made once whatever happens, and the last ones
 * can be taken back. Writes are done one after the other in the order in which they were asked for.
 */
export function openBook(host: BookHost, log: BookLog = memoryBookLog()): BookPort {
  const inTurn = inTurns();
  return {
    readBook: () => host.readBook(),
    readSheet: (name) => host.readSheet(name),
    show: async (place) => {
      place.address.split(":").forEach(cellPosition);
      await host.show(place);
    },
    changeCells: (changes) => inTurn(() => changeOnce(host, log, changes)),
    makeTable: (table) => inTurn(() => makeOnce(host, log, table)),
    pastChanges: () => [...log.read()].reverse().map(({ id, title }) => ({ id, title })),
    takeBack: (id) => inTurn(() => takeBack(host, log, id)),
    brokenFormulas: () => host.brokenFormulas(),
    reenter: (cells) => inTurn(async () => (cells.length === 0 ? [] : host.reenter(cells))),
    functionsLoaded: () => host.functionsLoaded(),
    isFree: async (sheet, area) => isFreeOn(await host.readSheet(sheet), area),
    findRoom: async (sheet, room) => roomOn(await host.readSheet(sheet), room),
  };
}

async function changeOnce(host: BookHost, log: BookLog, changes: CellChanges): Promise<void> {
  const { id, title } = changes;
  const known = log.read().find((change) => change.id === id);
  if (known !== undefined && known.state !== "cells-begun") return;
  const { applied, missing } =
    known === undefined
      ? { applied: [], missing: cellEditsOf(changes) }
      : await stillOpen(() => standing(host, known.edits));
  const begun = known ?? { state: "cells-begun", id, title, edits: missing };
  const added = await noted(log, begun, applied.length > 0, () =>
    missing.length === 0 ? Promise.resolve([]) : host.editCells(missing),
  );
  log.write(withChange(log.read(), { state: "cells", id, title, applied: [...applied, ...added] }));
}

async function makeOnce(host: BookHost, log: BookLog, wanted: RangeToTable): Promise<string> {
  const { id, title, sheet, area } = wanted;
  const known = log.read().find((change) => change.id === id);
  if (known?.state === "table") return known.table.name;
  const begun = known?.state === "table-begun" ? known : undefined;
  const look = () => host.readSheet(sheet);
  const found = begun === undefined ? await look() : await stillOpen(look);
  const stands = begun !== undefined && found.tables.some(({ name }) => name === begun.table.name);
  const table = begun?.table ?? { sheet, area, name: freeTableName(wanted.name, await host.takenNames()) };
  if (!stands) {
    await noted(log, { state: "table-begun", id, title, table }, false, () => {
      checkRange(found, wanted);
      return host.makeTable(table);
    });
  }
  log.write(withChange(log.read(), { state: "table", id, title, table }));
  return table.name;
}

/** Notes that writing begins before it does, and forgets it again where nothing of it stands. */
async function noted<T>(log: BookLog, begun: LoggedChange, standsInPart: boolean, work: () => Promise<T>): Promise<T> {
  log.write(withChange(log.read(), begun));
  try {
    return await work();
  } catch (error) {
    if (isUncertain(error)) throw error;
    if (standsInPart) throw stillUncertain(error);
    log.write(without(log.read(), begun.id));
    throw error;
  }
}

/** What of broken-off edits stands in the cells, and what is still to be written. */
async function standing(
  host: BookHost,
  edits: readonly CellEdit[],
): Promise<{ readonly applied: readonly AppliedCell[]; readonly missing: readonly CellEdit[] }> {
  const sheets = new Map<string, PlainSheet>();
  for (const name of new Set(edits.map(({ sheet }) => sheet))) sheets.set(name, await host.readSheet(name));
  const applied: AppliedCell[] = [];
  const missing: CellEdit[] = [];
  for (const edit of edits) {
    const { sheet, address, was, set } = edit;
    const { row, column } = cellPosition(address);
    const is = cellAt(sheets.get(sheet)!, row, column);
    const after = plainValue(set);
    if (standsFor(is, after)) applied.push({ sheet, address, before: was, after });
    else if (is === was) missing.push(edit);
    else throw cellChanged(sheet, address, was, is);
  }
  return { applied, missing };
}

async function takeBack(host: BookHost, log: BookLog, id: string): Promise<void> {
  const change = log.read().find((known) => known.id === id);
  if (change === undefined) {
    throw new TableError("unknown-save", "This change was taken back already, or is too far back.");
  }
  if (change.state === "table") await unmake(host, change.table);
  else if (change.state === "table-begun") {
    // Nobody knows whether it was made.
    if (await stands(host, change.table)) await unmake(host, change.table);
  } else {
    const applied = change.state === "cells" ? change.applied : (await standing(host, change.edits)).applied;
    await undo(host, applied);
  }
  log.write(without(log.read(), id));
}

async function unmake(host: BookHost, table: TableRange): Promise<void> {
  try {
    await host.unmakeTable(table.name);
  } catch (error) {
    if (!isUncertain(error) || (await stands(host, table).catch(() => true))) throw error;
  }
}

async function stands(host: BookHost, { sheet, name }: TableRange): Promise<boolean> {
  return (await host.readSheet(sheet)).tables.some((table) => table.name === name);
}

async function undo(host: BookHost, applied: readonly AppliedCell[]): Promise<void> {
  const edits = applied.map(({ sheet, address, before, after, formatBefore }): CellEdit => ({
    sheet,
    address,
    was: after,
    set: before,
    ...(formatBefore === undefined ? {} : { numberFormat: formatBefore }),
  }));
  try {
    if (edits.length > 0) await host.editCells(edits);
  } catch (error) {
    if (!isUncertain(error) || !(await isUndone(host, edits))) throw error;
  }
}

async function isUndone(host: BookHost, edits: readonly CellEdit[]): Promise<boolean> {
  const found = await standing(host, edits).catch(() => undefined);
  return found !== undefined && found.missing.length === 0;
}
