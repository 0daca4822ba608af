import { DomainError } from "../core/shared/domain-error";
import { isBlankCell, readCell } from "./cell";
import type { Kind, ScalarKind } from "./kind";
import { folded } from "./scalars";

/** One column of a settings table: the headings it may stand under, and what its cells hold. */
export interface TableColumn<T> {
  /** The heading we write, then others that are understood. */
  readonly headings: readonly [string, ...string[]];
  readonly kind: ScalarKind<T>;
  /** A table without this column, or a row with this cell blank, is accepted; the value is then undefined. */
  readonly optional?: boolean;
}

type Columns = Readonly<Record<string, TableColumn<unknown>>>;
type Row<C extends Columns> = {
  readonly [K in keyof C]: C[K] extends TableColumn<infer T>
    ? C[K] extends { optional: true }
      ? T | undefined
      : T
    : never;
};

/**
 * A settings table (rules, targets, prices), passed with its headings in the first row. Columns are found by heading
 * in any order; other columns are left alone; blank rows are skipped.
 */
export function settingsTable<const C extends Columns>(name: string, columns: C): Kind<readonly Row<C>[]> {
  const headings = Object.values(columns).map((column) => column.headings[0]);
  return {
    name: `${name} table`,
    shape: "table",
    limits: {},
    must: `the ${name} table with its headings (${headings.join(", ")})`,
    headings,
    read(raw, argument) {
      const rows = tableRows(raw, argument);
      const places = findColumns(columns, rows[0] ?? [], argument);
      const read: Row<C>[] = [];
      rows.slice(1).forEach((cells, index) => {
        const where = `${argument} row ${index + 2}`;
        // A host may hand a blank over as 0; a row of nothing else is blank.
        if (cells.every((cell) => isBlankCell(cell, true))) return;
        read.push(readRow(columns, places, cells, where) as Row<C>);
      });
      if (read.length === 0) throw new DomainError("unavailable", `${argument} has no rows under its headings`);
      return read;
    },
  };
}

function tableRows(raw: unknown, argument: string): readonly (readonly unknown[])[] {
  const rows = Array.isArray(raw) ? (raw as readonly unknown[]) : [[raw]];
  if (rows.length < 2 || !rows.every((row): row is readonly unknown[] => Array.isArray(row))) {
    throw new DomainError(
      "invalid",
      `${argument} must be a table with its headings in the first row and at least one row below`,
    );
  }
  return rows;
}

/** Where each column stands; -1, where no row has a cell, for an optional one that is not there. */
function findColumns(columns: Columns, headingCells: readonly unknown[], argument: string): Record<string, number> {
  const found = headingCells.map((cell) => (typeof cell === "string" ? foldedHeading(cell) : ""));
  const places: Record<string, number> = {};
  for (const [key, column] of Object.entries(columns)) {
    const place = found.findIndex((heading) => column.headings.some((known) => foldedHeading(known) === heading));
    if (place < 0 && !column.optional) {
      throw new DomainError(
        "invalid",
        `${argument} must have a column headed "${column.headings[0]}" in its first row`,
      );
    }
    places[key] = place;
  }
  return places;
}

/** Headings are compared without their unit in brackets: "Price (per litre)" is "Price". */
function foldedHeading(heading: string): string {
  return folded(heading.replace(/\(.*\)/, ""));
}

function readRow(columns: Columns, places: Record<string, number>, cells: readonly unknown[], where: string): object {
  const row: Record<string, unknown> = {};
  for (const [key, column] of Object.entries(columns)) {
    const at = `${where} "${column.headings[0]}"`;
    const cell = readCell(cells[places[key]!], () => at);
    if (cell !== null && !(cell === 0 && column.kind.zeroIsBlank)) row[key] = column.kind.readCell(cell, at);
    else if (column.optional) row[key] = undefined;
    else throw new DomainError("unavailable", `${at} is blank: enter ${column.kind.must}`);
  }
  return row;
}
