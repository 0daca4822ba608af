import type { DaySerial } from "../core/shared/days";
import type { PlainCell } from "../workbook/port";
import type { TableContent } from "../workbook/table-port";
import { cowsTable } from "../workbook/tables";
import { columnOf, cowKey } from "./cow-rows";
import { type HerdRow, readHerdTable } from "./read-rows";

/** A row of the Cows table. */
export interface Cow extends HerdRow<typeof cowsTable> {
  /** Her number or name as the workbook writes it. */
  readonly name: string;
  /** The cell itself: rows written for her hold the same, a number or a text. */
  readonly cell: PlainCell;
}

/** The cows of the workbook, to be found by number or name. */
export class CowList {
  readonly all: readonly Cow[];
  /** Whether the list has a place for lactation and calving: where both are blank she then has not calved. */
  readonly tellsCalvings: boolean;
  readonly #byKey = new Map<string, Cow>();
  readonly #keys: readonly string[];

  constructor(content: TableContent) {
    const column = columnOf(content, "Cow");
    this.tellsCalvings = ["Lactation", "Calved"].every((heading) => columnOf(content, heading) >= 0);
    const cows: Cow[] = [];
    readHerdTable(cowsTable, content).rows.forEach((row, index) => {
      const cell = content.rows[index]?.[column] ?? null;
      if (row.cow !== null) cows.push({ ...row, name: row.cow, cell });
    });
    this.all = cows;
    this.#keys = cows.map(({ name }) => cowKey(name));
    cows.forEach((cow, index) => this.#byKey.set(this.#keys[index]!, cow));
  }

  get(name: string): Cow | undefined {
    return this.#byKey.get(cowKey(name));
  }

  /**
   * Cows whose number or name holds the text: she herself first, then those that begin with it, then the others; in
   * each part cows that are in the herd on the day before those that have left.
   */
  find(text: string, day: DaySerial, most: number): readonly Cow[] {
    const wanted = cowKey(text);
    if (wanted === "") return [];
    const ranked: Cow[][] = Array.from({ length: RANKS }, () => []);
    this.#keys.forEach((key, index) => {
      const place = key.indexOf(wanted);
      if (place < 0) return;
      const cow = this.all[index]!;
      const gone = cow.left !== null && cow.left < day ? 1 : 0;
      ranked[key === wanted ? 0 : place === 0 ? 1 + gone : 3 + gone]!.push(cow);
    });
    return ranked.flat().slice(0, most);
  }
}

/** She herself; beginning with the text, here or gone; holding the text, here or gone. */
const RANKS = 5;
