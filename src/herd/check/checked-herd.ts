import { defaultRecheckRules, type RecheckRule } from "../../core/claws/recheck-rules";
import type { DaySerial } from "../../core/shared/days";
import { LesionWords } from "../codes/words";
import type { MappedTable } from "../mapping/read-mapped";
import type { HerdTableName } from "../mapping/targets";
import { CheckedTable } from "./checked-table";
import type { Report } from "./report";

/** One check: it looks at the whole herd and reports what it doubts. */
export interface Check {
  /** A name for lists and tests. */
  readonly id: string;
  /** What it looks for, in a few words. */
  readonly about: string;
  run(herd: CheckedHerd, report: Report): void;
}

/** A row of the list of cows. */
export interface CowPlace {
  readonly table: CheckedTable;
  readonly row: number;
}

/** All lists of a herd, with the list of cows to look a cow up in. */
export class CheckedHerd {
  readonly tables: readonly CheckedTable[];
  readonly #cows = new Map<string, CowPlace>();

  constructor(
    tables: readonly MappedTable[],
    /** The day on which the workbook is looked at. */
    readonly asOf: DaySerial,
    readonly words: LesionWords = new LesionWords(),
    readonly rules: readonly RecheckRule[] = defaultRecheckRules,
  ) {
    this.tables = tables.map((table) => new CheckedTable(table));
    for (const table of this.named("Cows")) {
      for (let row = 0; row < table.rowCount; row++) {
        const key = table.cowKey(row);
        if (key !== "" && !this.#cows.has(key)) this.#cows.set(key, { table, row });
      }
    }
  }

  named(...names: readonly HerdTableName[]): readonly CheckedTable[] {
    return this.tables.filter(({ name }) => names.includes(name));
  }

  /** Lists with one row for each thing seen on a day. */
  get records(): readonly CheckedTable[] {
    return this.named("Findings", "Scores", "Tests");
  }

  get hasCows(): boolean {
    return this.#cows.size > 0;
  }

  /** The row of a cow, by her key. */
  cow(key: string): CowPlace | undefined {
    return this.#cows.get(key);
  }

  /** Keys of all cows, as they are compared. */
  get cowKeys(): Iterable<string> {
    return this.#cows.keys();
  }
}
