import { cleanBlock, cleanTable, editsOf } from "./clean-values";
import { tableOf } from "./edit-plan";
import { inTurns } from "./in-turn";
import { inverseOf, isUndone } from "./inverse";
import { without } from "./log";
import { logged, type LoggedSave, memoryLog, type SaveLog } from "./save-log";
import { standingOf, type Standing } from "./standing";
import { stillOpen } from "./still-open";
import { takeBlockBack, writeBlockOnce } from "./write-block";
import { isUncertain, stillUncertain, TableError } from "../table-error";
import type { AppliedEdit, Edit, RowCounts, TableHost } from "../table-host";
import type { Save, TableContent, TablePort } from "../table-port";

type Begun = Extract<LoggedSave, { state: "begun" }>;

/**
 * The table port on a host: what is the same for all hosts. A save is written once whatever happens, and the last
 * ones can be taken back. Writes are done one after the other in the order in which they were asked for.
 */
export function openTables(host: TableHost, log: SaveLog = memoryLog()): TablePort {
  const inTurn = inTurns();
  return {
    listTables: () => host.listTables(),
    readTable: (name) => host.readTable(name),
    save: (save) => inTurn(() => saveOnce(host, log, save)),
    pastSaves: () => [...log.read()].reverse().map(({ id, title }) => ({ id, title })),
    takeBack: (id) => inTurn(() => takeBack(host, log, id)),
    createTable: (table) => inTurn(async () => host.createTable(cleanTable(table))),
    writeBlock: (block) => inTurn(() => writeBlockOnce(host, log, cleanBlock(block))),
    watchChanges: (listener) => host.watchChanges(listener),
  };
}

async function saveOnce(host: TableHost, log: SaveLog, save: Save): Promise<void> {
  const known = log.read().find(({ id }) => id === save.id);
  if (known !== undefined && known.state !== "begun") return;
  const { id, title } = save;
  const { applied, missing } =
    known === undefined ? { applied: [], missing: editsOf(save) } : await stillOpen(() => lookUp(host, known));
  const begin = (rowCounts: RowCounts): void =>
    log.write(logged(log.read(), known ?? { state: "begun", id, title, edits: missing, rowCounts }));
  const forget = (): void => log.write(without(log.read(), id));
  const added = missing.length === 0 ? [] : await write(host, { applied, missing }, begin, forget);
  log.write(logged(log.read(), { state: "done", id, title, applied: [...applied, ...added] }));
}

/** Notes that writing has begun before it does, and forgets it again where nothing of the save stands. */
async function write(
  host: TableHost,
  { applied, missing }: Standing,
  begin: (rowCounts: RowCounts) => void,
  forget: () => void,
): Promise<readonly AppliedEdit[]> {
  try {
    return await host.applyEdits(missing, begin);
  } catch (error) {
    if (isUncertain(error)) throw error;
    if (applied.length > 0) throw stillUncertain(error);
    forget();
    throw error;
  }
}

async function lookUp(host: TableHost, begun: Begun): Promise<Standing> {
  return standingOf(begun, await readTables(host, begun.edits));
}

function readTables(host: TableHost, edits: readonly Edit[]): Promise<TableContent[]> {
  return Promise.all([...new Set(edits.map(tableOf))].map((name) => host.readTable(name)));
}

async function takeBack(host: TableHost, log: SaveLog, id: string): Promise<void> {
  const save = log.read().find((entry) => entry.id === id);
  if (save === undefined) {
    throw new TableError("unknown-save", "This save was taken back already, or is too far back.");
  }
  if (save.state === "block" || save.state === "block-begun") return takeBlockBack(host, log, save);
  const applied = save.state === "done" ? save.applied : (await lookUp(host, save)).applied;
  const edits = inverseOf(applied);
  try {
    if (edits.length > 0) await host.applyEdits(edits, () => undefined);
  } catch (error) {
    if (!isUncertain(error) || !isUndone(applied, await readTables(host, edits).catch(() => []))) throw error;
  }
  log.write(without(log.read(), id));
}
