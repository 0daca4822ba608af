import type { PlainCell } from "../../workbook/port";
import type { CheckedTable } from "./checked-table";
import type { CellRepair, Doubt, DoubtLevel, Repair } from "./doubt";

/** What a check says about one cell. */
export interface Finding {
  readonly level: DoubtLevel;
  readonly wrong: string;
  readonly touches: string;
  /** What the cell should hold, where that is safe to say, and what the repair is called. */
  readonly repair?: { readonly title: string; readonly to: CellRepair["to"] };
}

/** Share of a column's cells from which on one doubt speaks for all of them. */
const WHOLE_COLUMN = 0.5;
const FEWEST_FOR_A_COLUMN = 10;

/** Gathers the doubts of one check. */
export class Report {
  readonly doubts: Doubt[] = [];
  /** Rows of which something was said, by list and key. */
  readonly #said = new Map<CheckedTable, Map<string, Set<number>>>();
  /** Rows that one doubt about their whole column speaks for. */
  readonly #saidTogether = new Map<CheckedTable, Map<string, Set<number>>>();

  constructor(private check = "") {}

  /** The doubts that follow are those of this check. */
  begin(check: string): void {
    this.check = check;
  }

  /** A doubt about one cell, or about so many like it of which it is the first. */
  cell(table: CheckedTable, key: string, row: number, { level, wrong, touches, repair }: Finding, cells = 1): void {
    const address = table.mapped.address(key, row);
    const from = table.cell(key, row);
    say(this.#said, table, key, row);
    this.doubts.push({
      check: this.check,
      level,
      table: table.name,
      sheet: table.sheet,
      address,
      cells,
      holds: from,
      wrong,
      touches,
      ...(repair === undefined ? {} : { repair: { title: repair.title, cells: [{ address, from, to: repair.to }] } }),
    });
  }

  /** Whether something was said of the cell itself. */
  has(table: CheckedTable, key: string, row: number): boolean {
    return this.#said.get(table)?.get(key)?.has(row) ?? false;
  }

  /** Whether something was said of the cell or of its whole column. */
  hasAny(table: CheckedTable, key: string, row: number): boolean {
    return this.has(table, key, row) || (this.#saidTogether.get(table)?.get(key)?.has(row) ?? false);
  }

  /**
   * Cells of one column that are all doubtful in the same way: one by one where they are few, as one doubt where they
   * are most of the column.
   */
  column(
    table: CheckedTable,
    key: string,
    rows: readonly number[],
    filled: number,
    each: (row: number) => Finding,
    all: Finding,
  ): void {
    // oxfmt-ignore
    if (rows.length < FEWEST_FOR_A_COLUMN || rows.length < WHOLE_COLUMN * filled) {
      for (const row of rows) this.cell(table, key, row, each(row));
      return;
    }
    const [first, last] = [rows[0]!, rows.at(-1)!];
    const repaired = rows.flatMap((row): CellRepair[] => {
      const { repair } = each(row);
      const from: PlainCell = table.cell(key, row);
      return repair === undefined ? [] : [{ address: table.mapped.address(key, row), from, to: repair.to }];
    });
    for (const row of rows) say(this.#saidTogether, table, key, row);
    const repair: Repair = { title: `${all.repair?.title ?? "repair"} (${repaired.length} cells)`, cells: repaired };
    this.doubts.push({
      check: this.check,
      level: all.level,
      table: table.name,
      sheet: table.sheet,
      address: `${table.mapped.address(key, first)}:${table.mapped.address(key, last)}`,
      cells: rows.length,
      holds: table.cell(key, first),
      wrong: all.wrong,
      touches: all.touches,
      ...(repaired.length === 0 ? {} : { repair }),
    });
  }
}

function say(said: Map<CheckedTable, Map<string, Set<number>>>, table: CheckedTable, key: string, row: number): void {
  const keys = said.get(table) ?? new Map<string, Set<number>>();
  said.set(table, keys);
  const rows = keys.get(key) ?? new Set<number>();
  keys.set(key, rows);
  rows.add(row);
}
