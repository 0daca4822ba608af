import { cowKey } from "../../../herd/cow-rows";
import { type HerdRow, readHerdTable } from "../../../herd/read-rows";
import type { TableContent } from "../../../workbook/table-port";
import { cowsTable } from "../../../workbook/tables";
import type { DaySerial } from "../../../core/shared/days";

export type CowRow = HerdRow<typeof cowsTable> & { readonly index: number };

/** The cows by name; the last row of a name counts. */
export class Cows {
  readonly all: readonly CowRow[];
  readonly #byKey: ReadonlyMap<string, CowRow>;

  constructor(content: TableContent | undefined) {
    const rows = content === undefined ? [] : readHerdTable(cowsTable, content).rows;
    this.all = rows.map((row, index) => ({ ...row, index }));
    this.#byKey = new Map(this.all.flatMap((row) => (row.cow === null ? [] : [[cowKey(row.cow), row] as const])));
  }

  get(name: string): CowRow | undefined {
    return this.#byKey.get(cowKey(name));
  }

  place(name: string): string {
    return this.get(name)?.group ?? "";
  }

  /** Whether she has left the herd by a day. */
  hasLeft(name: string, day: DaySerial): boolean {
    const left = this.get(name)?.left ?? null;
    return left !== null && left <= day;
  }
}
