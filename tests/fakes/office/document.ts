import { faults, type Faults } from "../faults";
import { entered, type FakeCell, HostError } from "./entry";

/** A block of cells, counted from 0. */
export interface FakeArea extends FakePlace {
  readonly sheet: FakeSheet;
}

/** A block of cells of a sheet. */
export interface FakePlace {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface FakeTable {
  readonly id: string;
  name: string;
  readonly sheet: FakeSheet;
  /** Place of the first heading. */
  row: number;
  readonly column: number;
  readonly width: number;
  /** Rows between headings and totals; at least one. */
  bodyRows: number;
  totals: boolean;
  filtered: boolean;
}

/** A chart, its places as they were handed over. */
export interface FakeChart {
  name: string;
  readonly type: string;
  title: string;
  over: readonly FakePlace[];
  readonly series: { name: string; values: FakePlace | undefined; categories: FakePlace | undefined }[];
}

export class FakeSheet {
  protected = false;
  hidden = false;
  readonly merges: FakePlace[] = [];
  readonly charts: FakeChart[] = [];
  /** Cells that the formula in the first of them fills. */
  readonly spills: FakePlace[] = [];
  readonly cells = new Map<number, Map<number, FakeCell>>();
  /** What was set of the formats of cells, by "row,column" and then by name such as "font/bold". */
  readonly looks = new Map<string, Readonly<Record<string, unknown>>>();
  /** Widths of columns in points, where they are not the usual ones. */
  readonly widths = new Map<number, number>();

  constructor(
    readonly id: string,
    public name: string,
  ) {}

  cell(row: number, column: number): FakeCell {
    return this.cells.get(row)?.get(column) ?? { value: "", numberFormat: "General" };
  }

  put(row: number, column: number, cell: FakeCell): void {
    const cells = this.cells.get(row) ?? new Map<number, FakeCell>();
    this.cells.set(row, cells);
    cells.set(column, cell);
  }
}

/** How an Excel behaves that differs from platform to platform and with the user's settings. */
export interface Habits {
  /** Rows written right below a table join it: all of them, only the first one, or none. */
  readonly growth: "all" | "first" | "none";
  /** A calculated column fills itself in rows that join the table. */
  readonly fillsDown: boolean;
  /** Words that the user's language takes for TRUE. */
  readonly trueWords: ReadonlySet<string>;
}

export const USUAL_HABITS: Habits = { growth: "all", fillsDown: true, trueWords: new Set() };

export type FakeEvent = { readonly type: "changed" | "added" | "deleted"; readonly table: FakeTable };

/** A workbook as Excel holds it, shared by all who have it open. */
export class FakeDocument {
  readonly sheets: FakeSheet[] = [];
  readonly tables: FakeTable[] = [];
  readonly faults: Faults = faults();
  /** What was done that a real Excel would have punished later: a test expects none. */
  readonly misuses: string[] = [];
  readonly listeners = new Set<(event: FakeEvent, actor: unknown) => void>();
  /** Awaited before each batch. */
  turn: () => Promise<void> = () => Promise.resolve();
  open = true;
  /** Whether the functions of the add-in are loaded. */
  hasFunctions = true;
  /** What is selected, as "Sheet!A1". */
  selected: string | undefined;
  private made = 0;

  constructor(readonly habits: Habits = USUAL_HABITS) {}

  misuse(what: string): never {
    this.misuses.push(what);
    throw new Error(`misuse of Office.js: ${what}`);
  }

  newId(): string {
    this.made += 1;
    return `{${this.made}}`;
  }

  addSheet(name: string): FakeSheet {
    if (this.findSheet(name) !== undefined) throw new HostError("ItemAlreadyExists");
    const sheet = new FakeSheet(this.newId(), name);
    this.sheets.push(sheet);
    return sheet;
  }

  /** By name or id. Excel takes names that differ only in case for the same. */
  findSheet(key: string): FakeSheet | undefined {
    return this.sheets.find(({ name, id }) => name.toLowerCase() === key.toLowerCase() || id === key);
  }

  removeSheet(sheet: FakeSheet): void {
    this.sheets.splice(this.sheets.indexOf(sheet), 1);
    const left = this.tables.filter((table) => table.sheet !== sheet);
    this.tables.splice(0, this.tables.length, ...left);
  }

  addTable(area: FakeArea): FakeTable {
    const { sheet, row, column, rows, columns } = area;
    this.refuseProtected(sheet);
    if (this.tables.some((table) => meet(area, tableArea(table)))) throw new HostError("InvalidArgument");
    const id = this.newId();
    const table = { id, name: `Table${id}`, sheet, row, column, width: columns, bodyRows: Math.max(1, rows - 1) };
    const added: FakeTable = { ...table, totals: false, filtered: false };
    this.tables.push(added);
    return added;
  }

  refuseProtected(sheet: FakeSheet): void {
    if (sheet.protected) throw new HostError("AccessDenied");
  }

  /** Puts values in as if they had been typed; null leaves a cell as it is. */
  enter(area: FakeArea, rows: readonly (readonly unknown[])[]): void {
    const { sheet } = area;
    this.refuseProtected(sheet);
    this.refuseOthersCells(area, rows);
    rows.forEach((inputs, down) =>
      inputs.forEach((input, right) => {
        if (input === null) return;
        const [row, column] = [area.row + down, area.column + right];
        const old = sheet.cell(row, column);
        const next: Partial<FakeCell> & Pick<FakeCell, "value"> =
          input === "" ? { value: "" } : entered(input, old, this.habits.trueWords);
        if (!this.hasFunctions && /\bHERD\./.test(next.formula ?? "")) next.value = "#NAME?";
        sheet.put(row, column, { ...next, numberFormat: next.numberFormat ?? old.numberFormat });
      }),
    );
    this.joinTable(area);
  }

  /** Cells outside tables that hold something, headings and totals belong to the farm. */
  private refuseOthersCells(area: FakeArea, rows: readonly (readonly unknown[])[]): void {
    for (let down = 0; down < rows.length; down++) {
      for (let right = 0; right < area.columns; right++) {
        if (rows[down]?.[right] === null) continue;
        const [row, column] = [area.row + down, area.column + right];
        const table = this.tables.find((known) => inArea(tableArea(known), area.sheet, row, column));
        const inBody = table !== undefined && row > table.row && row <= table.row + table.bodyRows;
        if (table !== undefined && !inBody) this.misuse(`heading or total overwritten in ${table.name}`);
      }
    }
  }

  private joinTable(area: FakeArea): void {
    const { growth } = this.habits;
    const table = this.tables.find(
      (known) =>
        known.sheet === area.sheet &&
        !known.totals &&
        area.row === known.row + known.bodyRows + 1 &&
        area.column < known.column + known.width &&
        area.column + area.columns > known.column,
    );
    if (table !== undefined && growth !== "none") this.grow(table, growth === "all" ? area.rows : 1);
  }

  grow(table: FakeTable, rows: number): void {
    this.refuseProtected(table.sheet);
    const { sheet, column, width } = table;
    const bottom = { ...tableArea(table), row: table.row + table.bodyRows + 1, rows };
    if (this.tables.some((other) => other !== table && meet(bottom, tableArea(other)))) {
      throw new HostError("InvalidArgument", "the table would overlap another");
    }
    const above = table.row + table.bodyRows;
    for (let row = above + 1; row <= above + rows; row++) {
      for (let at = column; at < column + width; at++) this.fillFromAbove(sheet, above, row, at);
    }
    table.bodyRows += rows;
  }

  private fillFromAbove(sheet: FakeSheet, above: number, row: number, column: number): void {
    const source = sheet.cell(above, column);
    const { numberFormat, ...own } = sheet.cell(row, column);
    const format = numberFormat === "General" ? source.numberFormat : numberFormat;
    const fills = this.habits.fillsDown && source.formula !== undefined && own.value === "";
    sheet.put(row, column, fills ? { ...source, numberFormat: format } : { ...own, numberFormat: format });
  }

  emit(event: FakeEvent, actor: unknown): void {
    for (const listener of [...this.listeners]) listener(event, actor);
  }
}

/** Headings, body and totals. */
export function tableArea({ sheet, row, column, width, bodyRows, totals }: FakeTable): FakeArea {
  return { sheet, row, column, rows: 1 + bodyRows + (totals ? 1 : 0), columns: width };
}

export function bodyArea({ sheet, row, column, width, bodyRows }: FakeTable): FakeArea {
  return { sheet, row: row + 1, column, rows: bodyRows, columns: width };
}

export function inArea(area: FakeArea, sheet: FakeSheet, row: number, column: number): boolean {
  return (
    area.sheet === sheet &&
    row >= area.row &&
    row < area.row + area.rows &&
    column >= area.column &&
    column < area.column + area.columns
  );
}

export function meet(a: FakeArea, b: FakeArea): boolean {
  return (
    a.sheet === b.sheet &&
    a.row < b.row + b.rows &&
    b.row < a.row + a.rows &&
    a.column < b.column + b.columns &&
    b.column < a.column + a.columns
  );
}

/** Moves the cells of some columns from `row` on down by `by` rows, or up where it is negative. */
export function shiftRows(sheet: FakeSheet, row: number, column: number, width: number, by: number): void {
  const moved: (readonly [number, number, FakeCell])[] = [];
  for (const [from, cells] of sheet.cells) {
    if (from < row) continue;
    for (let at = column; at < column + width; at++) {
      const cell = cells.get(at);
      if (cell === undefined) continue;
      cells.delete(at);
      moved.push([from + by, at, cell]);
    }
  }
  for (const [to, at, cell] of moved) sheet.put(to, at, cell);
}
