import type { PlainArea } from "./plain-book";

/** Cells of each column gathered into runs. Cells come row by row. */
export class ColumnRuns {
  readonly areas: PlainArea[] = [];
  readonly #open = new Map<number, number>();

  add(row: number, column: number): void {
    const at = this.#open.get(column);
    const last = at === undefined ? undefined : this.areas[at]!;
    if (at !== undefined && last!.lastRow === row - 1) {
      this.areas[at] = { ...last!, lastRow: row };
      return;
    }
    this.#open.set(column, this.areas.length);
    this.areas.push({ firstRow: row, lastRow: row, firstColumn: column, lastColumn: column });
  }
}
