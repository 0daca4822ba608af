import type { DaySerial } from "../../../core/shared/days";
import { checkBook } from "../../../herd/check/check-book";
import { placeOf } from "../../../herd/mapping/mapping";
import { storedMapping, tableContent } from "../../../herd/mapping/stored-mapping";
import { mappingWrites } from "../../../herd/set-up/keep-mapping";
import { wordsWrites } from "../../../herd/set-up/keep-words";
import type { TableWrites } from "../../../herd/set-up/table-writes";
import type { BookPort } from "../../../workbook/book-port";
import { mappingTable } from "../../../workbook/mapping-table";
import type { PlainBook } from "../../../workbook/plain-book";
import type { CellPlace } from "../../../workbook/port";
import { asTableError, type TableErrorKind } from "../../../workbook/table-error";
import type { TableContent, TablePort } from "../../../workbook/table-port";
import { wordsTable } from "../../../workbook/words-table";
import { capitalised, counted } from "../../format";
import { groupsOf } from "./doubts";
import { findLists } from "./found-lists";
import type { SetUpEvent } from "./state";
import { ownWrites, type Task, type WrittenBefore } from "./task";

/** The workbook behind the screen. */
export interface SetUpPorts {
  readonly tables: TablePort;
  readonly book: BookPort;
}

/** Work that a state asks of the workbook; each gives the event with which it ends. */
export async function read({ tables, book: port }: SetUpPorts, wanted: number): Promise<SetUpEvent> {
  try {
    const book = await port.readBook();
    const stored = storedMapping(book);
    const words = tableContent(book, wordsTable.name);
    const found = findLists(book, stored);
    const past = ownWrites([
      ...port.pastChanges().map((change) => ({ ...change, through: "book" as const })),
      ...tables.pastSaves().map((save) => ({ ...save, through: "tables" as const })),
    ]);
    return { type: "read", read: { wanted, book, ...found, hasMapping: stored !== undefined, words, past } };
  } catch (error) {
    return { type: "read failed", wanted, message: sentenceOf(error) };
  }
}

export async function check(book: PlainBook, asOf: DaySerial, wanted: number): Promise<SetUpEvent> {
  // A large workbook takes a while: what says so is drawn first.
  await new Promise((resolve) => setTimeout(resolve));
  try {
    const { doubts, remarks, tables } = checkBook(book, asOf);
    const names = tables.map(({ resolved }) => `${resolved.source.table} on ${placeOf(resolved.source)}`);
    const rows = tables.reduce((sum, { content }) => sum + content.rowCount, 0);
    return { type: "checked", wanted, checked: { groups: groupsOf(doubts), remarks, tables: names, rows } };
  } catch (error) {
    return { type: "check failed", wanted, message: sentenceOf(error) };
  }
}

export async function lookAtFormulas({ book }: SetUpPorts): Promise<SetUpEvent> {
  try {
    return { type: "formulas looked at", broken: await book.brokenFormulas(), loaded: await book.functionsLoaded() };
  } catch (error) {
    return { type: "formulas failed", message: sentenceOf(error) };
  }
}

export async function show({ book }: SetUpPorts, place: CellPlace): Promise<SetUpEvent | undefined> {
  try {
    await book.show(place);
    return undefined;
  } catch (error) {
    return { type: "show refused", message: sentenceOf(error) };
  }
}

export async function perform(ports: SetUpPorts, task: Task): Promise<SetUpEvent> {
  try {
    return { type: "written", id: task.id, told: await write(ports, task) };
  } catch (error) {
    return { type: "write refused", id: task.id, ...toldOf(error) };
  }
}

/** Writes and tells what was done. */
async function write({ tables, book }: SetUpPorts, task: Task): Promise<string> {
  switch (task.kind) {
    case "mapping":
      await keepRows(tables, mappingTable.name, task, (content) => mappingWrites(task.mapping, content));
      return `${task.title} now stands on the sheet ${mappingTable.name}.`;
    case "words":
      await keepRows(tables, wordsTable.name, task, (content) => wordsWrites(task.words, content));
      return `${task.title} now stands on the sheet ${wordsTable.name}.`;
    case "copy": {
      const { copySave } = await import(/* webpackChunkName: "copy" */ "../../../herd/copy-over/preview");
      const save = copySave(task.preview, task.id, task.title);
      if (save !== undefined) await tables.save(save);
      return `${task.title}.`;
    }
    case "cells":
      await book.changeCells(task);
      return `${task.title}.`;
    case "table":
      return `The list is now the table ${await book.makeTable(task)}.`;
    case "formulas": {
      const left = await book.reenter(task.cells);
      const mended = task.cells.length - left.length;
      if (left.length === 0) return `${counted(mended, "formula")} entered again: all of them work.`;
      return `${counted(mended, "formula")} of ${task.cells.length} work again. The others still do not know their function.`;
    }
  }
}

/**
 * The rows are written as a save of their own, also into a new table, so that they can be taken back.
 */
async function keepRows(
  tables: TablePort,
  name: string,
  { id, title }: { readonly id: string; readonly title: string },
  writes: (content: TableContent | undefined) => TableWrites,
): Promise<void> {
  const stands = (await tables.listTables()).some((table) => table.name === name);
  if (!stands) {
    const first = writes(undefined);
    if ("create" in first) await tables.createTable({ ...first.create, rows: [] });
  }
  const next = writes(await tables.readTable(name));
  if ("changes" in next && next.changes.length > 0) await tables.save({ id, title, changes: next.changes });
}

export async function takeBack({ tables, book }: SetUpPorts, { id, through }: WrittenBefore): Promise<SetUpEvent> {
  try {
    await (through === "book" ? book.takeBack(id) : tables.takeBack(id));
    return { type: "taken back", id };
  } catch (error) {
    return { type: "take back refused", id, message: sentenceOf(error) };
  }
}

function toldOf(error: unknown): { readonly kind: TableErrorKind; readonly message: string } {
  const known = asTableError(error);
  if (known !== undefined) return { kind: known.kind, message: known.message };
  return { kind: "failed", message: `Nothing was written. ${sentenceOf(error)}` };
}

/** What went wrong, as a sentence. */
export function sentenceOf(error: unknown): string {
  const message = error instanceof Error ? error.message : (asTableError(error)?.message ?? String(error));
  return `${capitalised(message.trim()).replace(/\.+$/, "")}.`;
}
