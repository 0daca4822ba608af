import { TableError, type TableErrorKind } from "../../../workbook/table-error";
import type { TablePort } from "../../../workbook/table-port";
import { messageOf } from "../../message-of";
import { readBook } from "./book";
import { openLines } from "./model";
import type { DueEvent, DueState } from "./state";
import { writtenList } from "./written-list";

/** Work that a state asks of the workbook; each gives the event with which it ends. */
export async function read(port: TablePort, wanted: number): Promise<DueEvent> {
  try {
    return { type: "read", wanted, book: await readBook(port) };
  } catch (error) {
    return { type: "read failed", wanted, message: toldOf(error).message };
  }
}

export async function save(port: TablePort, { save: pending }: NonNullable<DueState["pending"]>): Promise<DueEvent> {
  try {
    await port.save(pending);
    return { type: "saved", id: pending.id };
  } catch (error) {
    return { type: "save refused", id: pending.id, ...toldOf(error) };
  }
}

export async function takeBack(port: TablePort, id: string): Promise<DueEvent> {
  try {
    await port.takeBack(id);
    return { type: "taken back", id };
  } catch (error) {
    return { type: "take back refused", id, message: toldOf(error).message };
  }
}

/** The table comes first: it refuses a name or a place that is taken, and then nothing is written. */
export async function writeList(port: TablePort, state: DueState): Promise<DueEvent> {
  const { heading, table } = writtenList(openLines(state), state.day, state.writing?.attempt ?? 0);
  try {
    await port.createTable(table);
  } catch (error) {
    return { type: "list refused", ...toldOf(error) };
  }
  try {
    await port.writeBlock(heading);
    return { type: "list written", sheet: table.sheet };
  } catch (error) {
    const message = `The lines stand on sheet ${table.sheet}, but their heading does not. ${toldOf(error).message}`;
    return { type: "list refused", kind: "failed", message };
  }
}

function toldOf(error: unknown): { readonly kind: TableErrorKind; readonly message: string } {
  if (error instanceof TableError) return { kind: error.kind, message: error.message };
  return { kind: "failed", message: `Nothing was saved: ${messageOf(error)}.` };
}
