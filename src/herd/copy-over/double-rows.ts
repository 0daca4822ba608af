import { inputColumns } from "../../workbook/table-definition";
import type { TableContent } from "../../workbook/table-port";
import { cowKey } from "../cow-rows";
import type { MappedTable } from "../mapping/read-mapped";
import { type HerdTableName, tableNamed } from "../mapping/targets";
import { readHerdTable } from "../read-rows";

export type Values = Readonly<Record<string, number | string | null>>;

/** Knows the rows that stand in a table, and those that have come over. */
export class DoubleRows {
  readonly #keys: readonly string[];
  readonly #seen = new Set<string>();

  /** Two findings may lie on one claw: rows are compared in all columns that an old list has, notes apart. */
  constructor(name: HerdTableName, lists: readonly MappedTable[], content: TableContent | undefined) {
    const definition = tableNamed(name);
    const known = inputColumns(definition).map(({ key }) => key);
    const read = known.filter((key) => key !== "note" && lists.some((list) => list.column(key) !== undefined));
    this.#keys = name === "Cows" ? ["cow"] : name === "Findings" ? read : ["cow", "date"];
    if (content === undefined) return;
    for (const row of readHerdTable(definition, content).rows) this.#seen.add(this.#keyOf(row as Values));
  }

  /** Whether a row is one of them; if not, it is one from now on. */
  seen(row: Values): boolean {
    const key = this.#keyOf(row);
    if (this.#seen.has(key)) return true;
    this.#seen.add(key);
    return false;
  }

  #keyOf(row: Values): string {
    return this.#keys.map((key) => (key === "cow" ? cowKey(row[key] ?? null) : String(row[key] ?? ""))).join("\n");
  }
}
