import type { PlainCell } from "../../workbook/port";
import { cowKey } from "../cow-rows";
import type { MappedColumn } from "../mapping/mapping";
import type { MappedTable } from "../mapping/read-mapped";
import type { HerdTableName } from "../mapping/targets";
import { type DoubtfulCell, foldHeading, readHerdTable } from "../read-rows";

type Value = number | string | null;

/** A farm's list as the checks see it: typed values column by column, and the cells they come from. */
export class CheckedTable {
  readonly name: HerdTableName;
  readonly sheet: string;
  readonly rowCount: number;
  /** Cells that hold no value of their column's kind. */
  readonly unreadable: readonly DoubtfulCell[];
  readonly #values: readonly Readonly<Record<string, Value>>[];
  readonly #typedIn: readonly number[];
  #cowKeys: readonly string[] | undefined;

  constructor(readonly mapped: MappedTable) {
    const { definition, content, resolved } = mapped;
    this.name = resolved.source.table;
    this.sheet = resolved.source.sheet;
    this.rowCount = content.rows.length;
    const typed = readHerdTable(definition, content);
    this.#values = typed.rows as readonly Readonly<Record<string, Value>>[];
    this.unreadable = typed.doubtful;
    this.#typedIn = content.columns.flatMap(({ calculated }, place) => (calculated ? [] : [place]));
  }

  /** Whether a column of the farm stands for the key. */
  has(key: string): boolean {
    return this.mapped.column(key) !== undefined;
  }

  column(key: string): MappedColumn | undefined {
    return this.mapped.column(key);
  }

  /** In our terms; null where the cell is blank or not understood. */
  value(key: string, row: number): Value {
    return this.#values[row]?.[key] ?? null;
  }

  number(key: string, row: number): number | null {
    const value = this.value(key, row);
    return typeof value === "number" ? value : null;
  }

  text(key: string, row: number): string | null {
    const value = this.value(key, row);
    return value === null ? null : String(value);
  }

  /** The cow of a row as cows are compared; "" where none is written. */
  cowKey(row: number): string {
    this.#cowKeys ??= this.#values.map(({ cow }) => cowKey(cow ?? null));
    return this.#cowKeys[row] ?? "";
  }

  /** Rows in which the farm's cell holds a text, and those in which it is blank. */
  texts(key: string): readonly number[] {
    return this.mapped.texts(key);
  }

  blanks(key: string): readonly number[] {
    return this.mapped.blanks(key);
  }

  /** How many of the farm's cells hold anything. */
  filled(key: string): number {
    return this.rowCount - this.blanks(key).length;
  }

  /** As the farm wrote it. */
  cell(key: string, row: number): PlainCell {
    return this.mapped.cell(key, row);
  }

  isBlankRow(row: number): boolean {
    const cells = this.mapped.content.rows[row] ?? [];
    return this.#typedIn.every((place) => (cells[place] ?? null) === null);
  }

  /** Key of our column with a heading. */
  keyOf(heading: string): string | undefined {
    return this.mapped.definition.columns.find((column) => foldHeading(column.heading) === foldHeading(heading))?.key;
  }

  /** The keys of the columns that hold days, or numbers, and are mapped. */
  keysHolding(...kinds: readonly string[]): readonly string[] {
    return this.mapped.definition.columns.filter(({ key, holds }) => kinds.includes(holds) && this.has(key)).map(({ key }) => key); // oxfmt-ignore
  }
}
