import { foldHeading } from "../herd/read-rows";
import type { DaySerial } from "../core/shared/days";
import type { TableContent } from "../workbook/table-port";
import type { NamedData } from "./expression/expression";
import type { Fault } from "./expression/fault";
import type { Scale } from "./expression/names";
import type { Rows, Value } from "./expression/values";
import { ReadColumns } from "./read-columns";
import { headingOf } from "./tables";

const NOWHERE = -1;

/** What a block is computed from. */
export interface HerdTables {
  /** Tables of the workbook under our names and headings, as a TablePort reads them; those that are missing are left out. */
  readonly tables: ReadonlyMap<string, TableContent>;
  /** The day that the workbook counts from. */
  readonly asOf: DaySerial;
  /** Scale of the mobility scores. */
  readonly scale: Scale;
}

/**
 * The columns of the tables as ranges, and the values computed from them. Make a new one when the workbook has
 * changed; keep it as long as it has not, so that blocks share what they compute.
 */
export class BlockData implements NamedData {
  readonly asOf: DaySerial;
  readonly scale: Scale;
  readonly kept = new Recent<Kept<Value>>();
  readonly chosenRows = new Recent<Kept<readonly number[]>>();
  readonly answers = new Recent<Kept<Value> | Fault>();
  readonly readColumns = new ReadColumns();
  readonly #tables: ReadonlyMap<string, TableContent>;
  readonly #columns = new Map<string, Rows | undefined>();
  /** Where the columns stand in their tables. */
  readonly #places = new Map<string, number>();

  constructor({ tables, asOf, scale }: HerdTables) {
    this.#tables = tables;
    this.asOf = asOf;
    this.scale = scale;
  }

  has(table: string): boolean {
    return this.#tables.has(table);
  }

  hasColumn(table: string, key: string): boolean {
    return this.#placeOf(table, key) !== NOWHERE;
  }

  column(table: string, key: string): Rows | undefined {
    const name = `${table}[${key}]`;
    if (!this.#columns.has(name)) this.#columns.set(name, this.#readColumn(table, key));
    return this.#columns.get(name);
  }

  #readColumn(table: string, key: string): Rows | undefined {
    const place = this.#placeOf(table, key);
    if (place === NOWHERE) return undefined;
    const rows = this.#tables.get(table)!.rows.map((row) => [row[place] ?? null]);
    return rows.length > 0 ? rows : [[null]];
  }

  #placeOf(table: string, key: string): number {
    const name = `${table}[${key}]`;
    let place = this.#places.get(name);
    if (place === undefined) {
      const heading = foldHeading(headingOf(table, key));
      const columns = this.#tables.get(table)?.columns ?? [];
      place = columns.findIndex((column) => foldHeading(column.heading) === heading);
      this.#places.set(name, place);
    }
    return place;
  }

  settings(table: string): Rows | undefined {
    const content = this.#tables.get(table);
    if (content === undefined) return undefined;
    const headings = content.columns.map(({ heading }) => heading);
    const rows = content.rows.length > 0 ? content.rows : [headings.map(() => null)];
    return [headings, ...rows];
  }
}

/** A value that was computed, and what must be known beside it. */
export interface Kept<T> {
  readonly value: T;
  readonly remarks: readonly string[];
}

export interface Store<T> {
  get(key: string): T | undefined;
  set(key: string, value: T): void;
}

/** Values by their formula. Trying many inputs must not fill the memory: the ones made longest ago go first. */
class Recent<T> implements Store<T> {
  readonly #values = new Map<string, T>();

  get(key: string): T | undefined {
    return this.#values.get(key);
  }

  set(key: string, value: T): void {
    if (this.#values.size >= MOST_KEPT) {
      const oldest = this.#values.keys().next();
      if (oldest.done !== true) this.#values.delete(oldest.value);
    }
    this.#values.set(key, value);
  }
}

/** All blocks together hold about 400 different calls and columns. */
const MOST_KEPT = 1_000;
