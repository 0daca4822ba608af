/**
 * A strict stand-in for the part of Excel's object model that the pane uses, written from its documentation. It
 * refuses what the real one refuses only sometimes or only late: reading a property that was not loaded, or before
 * the sync; asking whether an object is there before the sync; going on from an object that may not be there.
 */
export interface FakeSheet {
  readonly name: string;
  /** Rows from A1 on: values as Excel gives them, "" for a blank. */
  readonly values: unknown[][];
  /** Formulas by address. */
  readonly formulas?: Readonly<Record<string, string>>;
  /** Address of the formula that fills a cell, by the cell's address. */
  readonly spilledFrom?: Readonly<Record<string, string>>;
  /** Range filled from an address. */
  readonly spillsTo?: Readonly<Record<string, string>>;
  /** Names of the sheet: an address, or undefined for a name that is no range. */
  readonly names?: Readonly<Record<string, string | undefined>>;
}

export interface FakeTable {
  readonly name: string;
  readonly sheet: string;
  /** Range with its heading row, such as A1:C4. */
  readonly address: string;
  /** Whether the last row of the range is one of totals. */
  readonly totals?: boolean;
}

export interface FakeBook {
  readonly sheets: readonly FakeSheet[];
  readonly tables?: readonly FakeTable[];
  /** Names of the workbook, as "Sheet!A1:B2". */
  readonly names?: Readonly<Record<string, string | undefined>>;
  /** The selected cell. */
  active: { sheet: string; address: string };
  /** What TODAY() gives. */
  readonly today?: number;
}

/** A rectangle of cells; rows and columns count from 0. */
export interface Area {
  readonly sheet: FakeSheet;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

const ALL_ROWS = 1_048_576;
const ALL_COLUMNS = 16_384;

function columnNumber(letters: string): number {
  return [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function columnLetters(column: number): string {
  return column < 26
    ? String.fromCharCode(65 + column)
    : columnLetters(Math.floor(column / 26) - 1) + columnLetters(column % 26);
}

export function areaOf(sheet: FakeSheet, address: string): Area {
  const [from = "", to = from] = address.replaceAll("$", "").split(":");
  const corner = (text: string) => /^([A-Z]*)(\d*)$/.exec(text)!;
  const [, fromColumn = "", fromRow = ""] = corner(from);
  const [, toColumn = "", toRow = ""] = corner(to);
  const column = fromColumn === "" ? 0 : columnNumber(fromColumn);
  const row = fromRow === "" ? 0 : Number(fromRow) - 1;
  return {
    sheet,
    row,
    column,
    rows: toRow === "" ? ALL_ROWS - row : Number(toRow) - row,
    columns: toColumn === "" ? ALL_COLUMNS - column : columnNumber(toColumn) - column + 1,
  };
}

export function addressOf({ row, column, rows, columns }: Area): string {
  const corner = (r: number, c: number): string => `${columnLetters(c)}${r + 1}`;
  const [from, to] = [corner(row, column), corner(row + rows - 1, column + columns - 1)];
  return from === to ? from : `${from}:${to}`;
}

/** Excel on the web gives up above 5 MB; the fake above so many cells. */
const MOST_CELLS_AT_ONCE = 250_000;

export class FakeContext {
  private readonly objects: FakeObject<unknown>[] = [];
  private queued: (() => void)[] = [];
  syncs = 0;

  constructor(
    readonly book: FakeBook,
    readonly listeners: Map<string, Set<() => unknown>>,
  ) {}

  add(object: FakeObject<unknown>): void {
    this.objects.push(object);
  }

  queue(action: () => void): void {
    this.queued.push(action);
  }

  async sync(): Promise<void> {
    await Promise.resolve();
    this.syncs++;
    let cells = 0;
    for (const object of this.objects) cells += object.settle();
    if (cells > MOST_CELLS_AT_ONCE) throw new Error("ResponsePayloadSizeLimitExceeded");
    for (const action of this.queued.splice(0)) action();
  }
}

/** An object of the model: it stands for something in the workbook that is looked up at the sync. */
export abstract class FakeObject<T> {
  private found: T | null | undefined;
  private wanted: string[] = [];
  private readonly loaded = new Map<string, unknown>();

  constructor(
    readonly context: FakeContext,
    private readonly find: () => T | null,
    private readonly mayBeMissing = false,
  ) {
    context.add(this);
  }

  protected abstract read(target: T, name: string): unknown;

  load(names: string): void {
    this.wanted.push(...names.split(",").map((name) => name.trim()));
  }

  get isNullObject(): boolean {
    if (this.found === undefined) throw new Error("isNullObject was read before the sync");
    return this.found === null;
  }

  /** Looks the object up and reads what was asked; gives the number of cells sent. */
  settle(): number {
    const found = this.find();
    if (found === null && !this.mayBeMissing) throw new Error("ItemNotFound");
    this.found = found;
    let cells = 0;
    for (const name of found === null ? [] : this.wanted) {
      const value = this.read(found as T, name);
      this.loaded.set(name, value);
      if (Array.isArray(value)) cells += value.flat().length;
    }
    this.wanted = [];
    return cells;
  }

  protected property(name: string): unknown {
    if (!this.loaded.has(name)) throw new Error(`PropertyNotLoaded: ${name}`);
    return this.loaded.get(name);
  }

  /** What the object stands for, to go on from. An object that may be missing must be asked first. */
  protected onward(): () => T {
    if (this.mayBeMissing && this.found === undefined) throw new Error("the object may be missing: ask isNullObject");
    if (this.found === null) throw new Error("the object is missing");
    return () => {
      const found = this.find();
      if (found === null) throw new Error("ItemNotFound");
      return found;
    };
  }
}
