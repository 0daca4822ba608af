import type { PlainCell } from "../../workbook/port";
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
  readonly #blank: boolean[];

  constructor(readonly mapped: MappedTable) {
    const { definition, content, resolved } = mapped;
    this.name = resolved.source.table;
    this.sheet = resolved.source.sheet;
    this.rowCount = content.rows.length;
    const typed = readHerdTable(definition, content);
    this.#values = typed.rows as readonly Readonly<Record<string, Value>>[];
    this.unreadable = typed.doubtful;
    const typedIn = content.columns.flatMap(({ calculated }, place) => (calculated ? [] : [place]));
    this.#blank = content.rows.map((cells) => typedIn.every((place) => (cells[place] ?? null) === null));
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

  /** As the farm wrote it. */
  cell(key: string, row: number): PlainCell {
    return this.mapped.cell(key, row);
  }

  isBlankRow(row: number): boolean {
    return this.#blank[row] ?? true;
  }

  /** Key of our column with a heading. */
  keyOf(heading: string): string | undefined {
    return this.mapped.definition.columns.find((column) => foldHeading(column.heading) === foldHeading(heading))?.key;
  }

  /** The keys of the columns that hold days, or numbers, and are mapped. */
  keysHolding(...kinds: readonly string[]): readonly string[] {
    return this.mapped.definition.columns.filter(({ key, holds }) => kinds.includes(holds) && this.has(key)).map(({ key }) => key); // prettier-ignore
  }
}
