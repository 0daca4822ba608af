import type { BookPort } from "../../workbook/book-port";
import { inTurns } from "../../workbook/saving/in-turn";
import { stillOpen } from "../../workbook/saving/still-open";
import { TableError, tableGone } from "../../workbook/table-error";
import type { Change, PastSave, Save, TablePort } from "../../workbook/table-port";
import type { HerdTableName } from "../mapping/targets";
import { EditsOfFarm } from "./farm-edits";
import { listToGrow } from "./list-to-grow";
import type { OurTable } from "./our-table";
import { type Farm, isMapped } from "./read-farm";

/** What saves need to know of the workbook. */
export interface FarmReader {
  farm(): Promise<Farm | undefined>;
  read(name: HerdTableName, farm: Farm): Promise<OurTable>;
  /** Our table as it was last handed out. */
  lastRead(name: HerdTableName): OurTable | undefined;
  /** Cells of a plain range were written. */
  written(name: HerdTableName): void;
}

/** The changes of cells that belong to a save are told from all others by their id. */
const ID = "rows of ";
/** So often a save into a plain range is tried anew because someone wrote where it was to go. */
const TRIES = 4;

/**
 * Saves into the farm's lists. A save into tables and plain ranges goes through two ports: what the first wrote is
 * taken back where the second refuses.
 */
export class FarmSaves {
  /** One after the other: where new rows go depends on those before them. */
  readonly #inTurn = inTurns();
  /** Ids of this session, the latest last. */
  readonly #order: string[] = [];

  constructor(
    private readonly tables: TablePort,
    private readonly book: BookPort,
    private readonly reader: FarmReader,
  ) {}

  save(save: Save): Promise<void> {
    return this.#inTurn(async () => {
      await this.#save(save);
      if (!this.#order.includes(save.id)) this.#order.push(save.id);
    });
  }

  past(): readonly PastSave[] {
    const rows = this.tables.pastSaves();
    const cells = this.#cellSaves().filter(({ id }) => !rows.some((save) => save.id === id));
    return [...cells, ...rows].sort((a, b) => this.#order.indexOf(b.id) - this.#order.indexOf(a.id));
  }

  takeBack(id: string): Promise<void> {
    return this.#inTurn(async () => {
      const inCells = this.#cellSaves().some((save) => save.id === id);
      const inRows = this.tables.pastSaves().some((save) => save.id === id);
      if (inRows || !inCells) await this.tables.takeBack(id);
      if (!inCells) return;
      try {
        await this.book.takeBack(ID + id);
      } catch (error) {
        if (!inRows || !(error instanceof TableError)) throw error;
        throw new TableError(error.kind, `The rows in tables were taken back, but not those outside of tables. ${error.message}`, { cause: error }); // oxfmt-ignore
      }
      const found = await this.reader.farm().catch(() => undefined);
      for (const { table } of found?.mapping.sources ?? []) this.reader.written(table);
    });
  }

  async #save(save: Save): Promise<void> {
    const { id, title } = save;
    const rowsKnown = this.tables.pastSaves().some((past) => past.id === id);
    const cellsKnown = this.#cellSaves().some((past) => past.id === id);
    const reading = <T>(read: () => Promise<T>): Promise<T> => (rowsKnown || cellsKnown ? stillOpen(read) : read());
    const found = await reading(() => this.reader.farm());
    if (found === undefined && !cellsKnown) return this.tables.save(save);
    const work = { save, found, rowsKnown, cellsKnown };
    const edits = await reading(() => this.#edits(work));
    // A known part is carried on by what its port remembers of it.
    if (rowsKnown || edits.rows.length > 0) await this.tables.save({ id, title, changes: edits.rows });
    if (cellsKnown || edits.cells.length > 0) await this.#writeCells(work, edits);
    if (found !== undefined) for (const name of namesIn(save)) if (isMapped(found, name)) this.reader.written(name);
  }

  async #writeCells(work: Work, first: EditsOfFarm): Promise<void> {
    const { id, title } = work.save;
    let { cells } = first;
    for (let tries = 1; ; tries++) {
      try {
        return await this.book.changeCells({ id: ID + id, title, cells });
      } catch (error) {
        const isRace = error instanceof TableError && error.kind === "changed";
        if (error instanceof TableError && error.kind === "uncertain") throw error;
        const again = isRace && !work.cellsKnown && tries < TRIES ? await this.#edits({ ...work, rowsKnown: true }).catch(() => undefined) : undefined; // oxfmt-ignore
        if (again === undefined) throw await this.#withoutRows(id, error);
        ({ cells } = again);
      }
    }
  }

  /** The rows that were written to tables are taken out again: a save is whole or not there. */
  async #withoutRows(id: string, refusal: unknown): Promise<unknown> {
    if (!this.tables.pastSaves().some((save) => save.id === id)) return refusal;
    try {
      await this.tables.takeBack(id);
      return refusal;
    } catch (error) {
      const why = refusal instanceof Error ? refusal.message : String(refusal);
      return new TableError("uncertain", `A part of it was saved in tables and could not be taken out again. ${why}`, { cause: error }); // oxfmt-ignore
    }
  }

  /** What is still to be written. Parts that a port knows already are passed over: their rows are not as they were read. */
  async #edits({ save, found, rowsKnown, cellsKnown }: Work): Promise<EditsOfFarm> {
    const edits = new EditsOfFarm();
    if (found === undefined) return edits;
    const opened = new Map<HerdTableName, Promise<OurTable>>();
    for (const change of save.changes) {
      const name = nameIn(change);
      if (!isMapped(found, name)) {
        if (!rowsKnown) edits.pass(change);
        continue;
      }
      const open = opened.get(name) ?? this.reader.read(name, found);
      opened.set(name, open);
      const table = await open;
      if (table.lists.length === 0) throw tableGone(name);
      if (goesIntoCells(table, change) ? cellsKnown : rowsKnown) continue;
      if ("append" in change) edits.append(table, change.rows);
      else edits.update(table, change, this.reader.lastRead(name));
    }
    return edits;
  }

  #cellSaves(): readonly PastSave[] {
    return this.book
      .pastChanges()
      .filter(({ id }) => id.startsWith(ID))
      .map(({ id, title }) => ({ id: id.slice(ID.length), title }));
  }
}

interface Work {
  readonly save: Save;
  readonly found: Farm | undefined;
  readonly rowsKnown: boolean;
  readonly cellsKnown: boolean;
}

function nameIn(change: Change): string {
  return "append" in change ? change.append : change.update.table;
}

function namesIn({ changes }: Save): ReadonlySet<string> {
  return new Set(changes.map(nameIn));
}

/** Whether a change concerns a plain range; of several lists, the one in which the row stood. */
function goesIntoCells({ lists, rowAt }: OurTable, change: Change): boolean {
  const list = "append" in change ? listToGrow(lists) : (rowAt(change.update.index)?.list ?? lists.at(-1)!);
  return list.table === undefined;
}
