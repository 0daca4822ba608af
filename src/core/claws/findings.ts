import type { WordColumn } from "../shared/words";

/** A row of a cow that was examined and had no lesion. */
export const SOUND = "none";
/** A row whose text names no disorder, where such rows are counted instead of refused. */
export const UNKNOWN = "unknown";

/** The findings of a herd, column by column and equally long; null, or NaN or 0 for a day, where a row has none. */
export interface Findings {
  readonly cows: WordColumn;
  readonly feet: WordColumn;
  /** Codes of the claw disorder key, SOUND or UNKNOWN. */
  readonly lesions: WordColumn;
  readonly dates: ArrayLike<number>;
  /** Where it says no, a row only tells whether a later one is a repeat; absent where all rows count. */
  isCounted?(row: number): boolean;
}

/** What the rows of a sheet of findings held. */
export interface RowTally {
  /** Rows of a lesion with cow and day. */
  readonly used: number;
  readonly sound: number;
  readonly withoutLesion: number;
  readonly withoutCow: number;
  readonly withoutDate: number;
  readonly unknownLesion: number;
  /** Of the rows used, those that name no foot. */
  readonly withoutFoot: number;
}

/** Numbers cows from 0 in the order in which they are met. Capitals do not make another cow. */
export class CowNumbers {
  #count = 0;
  readonly #asWritten = new Map<string, number>();
  readonly #folded = new Map<string, number>();

  of(name: string): number {
    const known = this.#asWritten.get(name);
    if (known !== undefined) return known;
    const folded = name.toLowerCase();
    let number = this.#folded.get(folded);
    if (number === undefined) {
      number = this.#count++;
      this.#folded.set(folded, number);
    }
    this.#asWritten.set(name, number);
    return number;
  }
}

/** Whether names, no two of which are the same, surely stay different when capitals do not matter. */
export function differInMoreThanCapitals(names: readonly string[]): boolean {
  return names.every((name) => /^[^A-Z\u0080-\uffff]*$/.test(name)) || names.every((name) => /^[^a-z\u0080-\uffff]*$/.test(name)); // oxfmt-ignore
}
