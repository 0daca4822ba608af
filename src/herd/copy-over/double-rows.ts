import { inputColumns } from "../../workbook/table-definition";
import type { TableContent } from "../../workbook/table-port";
import { cowKey } from "../cow-rows";
import type { MappedTable } from "../mapping/read-mapped";
import { type HerdTableName, tableNamed } from "../mapping/targets";
import { foldHeading, readHerdTable } from "../read-rows";

export type Values = Readonly<Record<string, number | string | null>>;

/** Headings of the columns that new rows of a table fill. */
export function filledColumns(content: TableContent | undefined): readonly string[] {
  const columns = content?.columns ?? [];
  return columns.filter(({ calculated, oldRowsOnly }) => !calculated && oldRowsOnly !== true).map(({ heading }) => heading); // oxfmt-ignore
}

/** Knows the rows that stand in a table, and those of the old lists that were seen. */
export class DoubleRows {
  /** Columns in which old rows are compared with each other, and with those of the table. */
  readonly #old: readonly string[];
  readonly #both: readonly string[];
  /** How many rows of the table, not met by an old one yet, are alike. */
  readonly #there = new Map<string, number>();
  readonly #seen = new Set<string>();

  /**
   * Two findings may lie on one claw: rows are compared in all columns that an old list has, notes apart. What the table
   * has no column for stands in its notes, and cannot be compared.
   */
  constructor(name: HerdTableName, lists: readonly MappedTable[], content: TableContent | undefined) {
    const definition = tableNamed(name);
    const filled = new Set(filledColumns(content).map(foldHeading));
    const read = inputColumns(definition).filter(({ key }) => key !== "note" && lists.some((list) => list.column(key) !== undefined)); // oxfmt-ignore
    const keys = (columns: typeof read): readonly string[] => columns.map(({ key }) => key);
    const fixed = name === "Cows" ? ["cow"] : name === "Findings" ? undefined : ["cow", "date"];
    this.#old = fixed ?? keys(read);
    this.#both = fixed ?? keys(read.filter(({ heading }) => filled.has(foldHeading(heading))));
    if (content === undefined) return;
    for (const row of readHerdTable(definition, content).rows) {
      const key = keyOf(row as Values, this.#both);
      this.#there.set(key, (this.#there.get(key) ?? 0) + 1);
    }
  }

  /** Whether an old row stands in the table, or was seen already; if not, it counts as seen from now on. */
  seen(row: Values): boolean {
    const own = keyOf(row, this.#old);
    if (this.#seen.has(own)) return true;
    this.#seen.add(own);
    const key = keyOf(row, this.#both);
    const left = this.#there.get(key) ?? 0;
    if (left > 0) this.#there.set(key, left - 1);
    return left > 0;
  }
}

function keyOf(row: Values, keys: readonly string[]): string {
  return keys.map((key) => (key === "cow" ? cowKey(row[key] ?? null) : String(row[key] ?? ""))).join("\n");
}
