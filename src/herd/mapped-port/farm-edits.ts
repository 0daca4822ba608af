import type { CellChange } from "../../workbook/book-port";
import { cellAddress } from "../../workbook/cell-address";
import { holds, type PlainArea } from "../../workbook/plain-book";
import { isFreeOn } from "../../workbook/plain-room";
import { cellsOccupied, TableError } from "../../workbook/table-error";
import { type Change, type NewRow, rowAsRead, type TableContent, type TypedValue } from "../../workbook/table-port";
import type { Block } from "../mapping/block";
import type { FarmList } from "./farm-list";
import { farmCell, type FarmRow, farmRowOf, type OurTable } from "./our-table";
import { listToGrow } from "./list-to-grow";
import { type FarmValue, toFarm } from "./to-farm";

/** The farm's tables take changes of rows, its plain ranges changes of cells. */
export interface FarmEdits {
  readonly rows: readonly Change[];
  readonly cells: readonly CellChange[];
}

/** Changes of our tables as changes of the farm's lists. Throws where one is refused: then nothing is to be written. */
export class EditsOfFarm implements FarmEdits {
  readonly rows: Change[] = [];
  readonly cells: CellChange[] = [];
  readonly #taken = new Map<OurTable, Set<number>>();
  /** Rows that this save puts below a plain range. */
  readonly #added = new Map<FarmList, number>();

  /** A change of a table that is not mapped. */
  pass(change: Change): void {
    this.rows.push(change);
  }

  append(table: OurTable, rows: readonly NewRow[]): void {
    const list = listToGrow(table.lists);
    const written = rows.map((row) => toFarm(list, row));
    if (list.table !== undefined) {
      this.rows.push({ append: list.table, rows: written.map((values) => byHeading(list, values)) });
    } else if (rows.length > 0) {
      const first = list.block!.lastRow + 1 + (this.#added.get(list) ?? 0);
      this.#added.set(list, (this.#added.get(list) ?? 0) + rows.length);
      this.cells.push(...newCells(list, list.block!, first, written));
    }
  }

  update(table: OurTable, change: Extract<Change, { readonly update: unknown }>, lastRead: OurTable | undefined): void {
    const taken = this.#taken.get(table) ?? new Set<number>();
    this.#taken.set(table, taken);
    const row = farmRowOf(table, change.update, lastRead, taken);
    const values = toFarm(row.list, change.set);
    if (values.length === 0) return;
    if (row.list.table === undefined) this.cells.push(...changedCells(row, row.list.block!, values));
    else this.rows.push({ update: rowAsRead(contentOf(row.list), row.index), set: byHeading(row.list, values) });
  }
}

function byHeading({ farmColumns }: FarmList, values: readonly FarmValue[]): NewRow {
  return Object.fromEntries(values.map(({ place, value }) => [farmColumns[place]!.heading, value]));
}

function contentOf({ table, source, farmColumns, farmRows }: FarmList): TableContent {
  return { name: table!, sheet: source.sheet, columns: farmColumns, rowCount: farmRows.length, rows: farmRows };
}

function newCells(list: FarmList, block: Block, first: number, rows: readonly (readonly FarmValue[])[]): CellChange[] {
  const { sheet, columns } = block;
  const places = columns.map(({ column }) => column);
  const area: PlainArea = { firstRow: first, lastRow: first + rows.length - 1, firstColumn: Math.min(...places), lastColumn: Math.max(...places) }; // oxfmt-ignore
  const total = columns.find(({ column, calculated }) => !calculated && sheet.formulas.some((cells) => holds(cells, block.lastRow, column))); // oxfmt-ignore
  if (total !== undefined) {
    const address = cellAddress({ row: block.lastRow, column: total.column });
    throw new TableError("full", `The last row of the list on sheet ${sheet.name} holds a formula (${address}), as a row of totals does: new rows cannot go below it. Move it away, or make the list a table under Set up.`); // oxfmt-ignore
  }
  if (!isFreeOn(sheet, area)) throw cellsOccupied(sheet.name, cellAddress({ row: first, column: area.firstColumn }));
  return rows.flatMap((values, down) => {
    const filled = values.filter(({ value }) => value !== null && value !== "");
    if (filled.length === 0) {
      throw new TableError(
        "unwritable",
        `a new row of ${list.source.table} must be at least one filled cell; got blanks`,
      );
    }
    return filled.map(({ place, value }) => cellChange(list, block, first + down, place, null, value));
  });
}

/** Cells that say whose row it is are written again as they are: the change is refused where the rows moved meanwhile. */
function changedCells(row: FarmRow, block: Block, values: readonly FarmValue[]): CellChange[] {
  const { list, index } = row;
  const at = block.firstRow + index;
  const changes = values.map(({ place, value }) => cellChange(list, block, at, place, farmCell(row, place), value));
  const changed = new Set(values.map(({ place }) => place));
  const guards = list.columns.flatMap(({ heading, place, calculated }) => {
    const cell = place === undefined ? null : farmCell(row, place);
    const isGuard = GUARDS.has(heading) && place !== undefined && !calculated && !changed.has(place);
    const column = place === undefined ? -1 : block.columns[place]!.column;
    const isTyped = typeof cell === "number" && !block.sheet.formulas.some((area) => holds(area, at, column));
    return isGuard && isTyped ? [cellChange(list, block, at, place, cell, cell)] : [];
  });
  return [...changes, ...guards];
}

const GUARDS: ReadonlySet<string> = new Set(["Cow", "Date"]);

function cellChange(
  { source }: FarmList,
  { columns }: Block,
  row: number,
  place: number,
  was: CellChange["was"],
  set: TypedValue,
): CellChange {
  return { sheet: source.sheet, address: cellAddress({ row, column: columns[place]!.column }), was, set };
}
