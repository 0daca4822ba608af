import type { PlainCell } from "../workbook/port";
import type { TableDefinition } from "../workbook/table-definition";
import { rowAsRead, type RowAsRead, type TableContent } from "../workbook/table-port";
import { foldHeading, type HerdRow, readHerdTable } from "./read-rows";

/** A typed row of a table and its place in it, counted from 0. */
export type HerdRecord<T extends TableDefinition> = HerdRow<T> & { readonly index: number };

/** How a cow's name is compared: spaces around it and capitals do not make another cow. */
export function cowKey(name: PlainCell): string {
  return name === null ? "" : String(name).trim().toLowerCase();
}

/**
 * A table with many rows a cow. Rows are grouped by cow once and typed only when a cow is asked for, so that a large
 * table is ready at once.
 */
export class CowRows<T extends TableDefinition> {
  readonly #places = new Map<string, number[]>();

  constructor(
    private readonly definition: T,
    readonly content: TableContent,
  ) {
    const column = columnOf(content, headingOf(definition, "cow"));
    if (column < 0) return;
    content.rows.forEach((cells, index) => {
      const key = cowKey(cells[column] ?? null);
      const places = this.#places.get(key);
      if (places !== undefined) places.push(index);
      else if (key !== "") this.#places.set(key, [index]);
    });
  }

  /** The rows of a cow in the order of the table. */
  of(cow: string): readonly HerdRecord<T>[] {
    const places = this.#places.get(cowKey(cow)) ?? [];
    const rows = places.map((index) => this.content.rows[index] ?? []);
    return readHerdTable(this.definition, { ...this.content, rows }).rows.map((row, at) => ({
      ...row,
      index: places[at]!,
    }));
  }

  /** A row as an update of it needs it. */
  asRead(index: number): RowAsRead {
    return rowAsRead(this.content, index);
  }
}

/** Place of the column with a heading; -1 where there is none. */
export function columnOf(content: TableContent, heading: string): number {
  const folded = foldHeading(heading);
  return content.columns.findIndex((column) => foldHeading(column.heading) === folded);
}

function headingOf(definition: TableDefinition, key: string): string {
  return definition.columns.find((column) => column.key === key)?.heading ?? key;
}
