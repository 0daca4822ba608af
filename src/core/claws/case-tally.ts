import type { DaySerial } from "../shared/days";
import { disorders } from "./disorder-key";
import type { LesionSelection } from "./lesion-selection";
import { type MarkedRows, NEW_CASE, NO_CASE } from "./new-cases";

/** New and repeat cases of a period and the cows that had them. */
export interface CaseCount {
  readonly newCases: number;
  readonly repeats: number;
  readonly cows: number;
}

/** The cases of a period by disorder. */
export class CaseTally {
  readonly #newCases = new Uint32Array(disorders.length);
  readonly #repeats = new Uint32Array(disorders.length);
  /** One bit a disorder of the key, a cow. */
  readonly #disordersOfCow: Uint32Array;

  /** Counts the rows from `from` to `to`, both included. */
  constructor(rows: MarkedRows, dates: ArrayLike<number>, from: DaySerial, to: DaySerial) {
    const { marks, cows, disorders: places } = rows;
    this.#disordersOfCow = new Uint32Array(rows.cowLimit);
    for (let row = 0; row < marks.length; row++) {
      const date = dates[row]!;
      if (marks[row] === NO_CASE || date < from || date > to) continue;
      const place = places[row]!;
      if (marks[row] === NEW_CASE) this.#newCases[place]!++;
      else this.#repeats[place]!++;
      this.#disordersOfCow[cows[row]!]! |= 1 << place;
    }
  }

  /** Whether there is any case, new or repeat. */
  has({ places }: LesionSelection): boolean {
    return places.some((place) => this.#newCases[place]! + this.#repeats[place]! > 0);
  }

  of({ places }: LesionSelection): CaseCount {
    let [newCases, repeats, bits] = [0, 0, 0];
    for (const place of places) {
      newCases += this.#newCases[place]!;
      repeats += this.#repeats[place]!;
      bits |= 1 << place;
    }
    let cows = 0;
    const all = this.#disordersOfCow;
    for (let cow = 0; cow < all.length; cow++) if ((all[cow]! & bits) !== 0) cows++;
    return { newCases, repeats, cows };
  }
}
