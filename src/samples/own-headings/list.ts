import { cellAddress } from "../../xlsx/address";

export type ListCell = number | string | null;

/** A mistake that was put into the book on purpose, and the check that has to find it. */
export interface Planted {
  readonly check: string;
  readonly sheet: string;
  readonly address: string;
}

/** A list of the book while it is filled: headings in one row of the sheet, rows below. */
export class FarmList {
  readonly planted: Planted[] = [];

  constructor(
    readonly sheet: string,
    readonly headings: readonly string[],
    readonly rows: ListCell[][],
    /** Row of the headings, counted from 0. */
    readonly headingRow: number,
  ) {}

  get(row: number, heading: string): ListCell {
    return this.rows[row]![this.#column(heading)]!;
  }

  /** The first row that the test likes and that no mistake was put into yet, below the one named. */
  find(likes: (get: (heading: string) => ListCell) => boolean): number {
    const row = this.rows.findIndex((_, index) => {
      return !this.#used.has(index) && likes((heading) => this.get(index, heading));
    });
    if (row < 0) throw new Error(`${this.sheet} has no row left for this mistake`);
    return row;
  }

  /** Puts a mistake into a cell. */
  plant(check: string, row: number, heading: string, cell: ListCell, seenAt = heading): void {
    this.#used.add(row);
    this.rows[row]![this.#column(heading)] = cell;
    this.#note(check, row, seenAt);
  }

  /** Writes a row once more at the end. */
  plantDouble(row: number, heading: string): void {
    this.#used.add(row);
    this.rows.push([...this.rows[row]!]);
    this.plantLast("double row", heading);
  }

  /** Writes a row at the end that is a mistake as a whole. */
  plantRow(check: string, cells: Readonly<Record<string, ListCell>>, seenAt: string): void {
    this.rows.push(this.headings.map((heading) => cells[heading] ?? null));
    this.plantLast(check, seenAt);
  }

  private plantLast(check: string, heading: string): void {
    this.#used.add(this.rows.length - 1);
    this.#note(check, this.rows.length - 1, heading);
  }

  #note(check: string, row: number, heading: string): void {
    const address = cellAddress(this.headingRow + 1 + row, this.#column(heading));
    this.planted.push({ check, sheet: this.sheet, address });
  }

  readonly #used = new Set<number>();

  #column(heading: string): number {
    const column = this.headings.indexOf(heading);
    if (column < 0) throw new Error(`${this.sheet} has no heading ${heading}`);
    return column;
  }
}
