import type { DaySerial } from "../shared/days";
import { disorders } from "./disorder-key";
import { CowNumbers, SOUND } from "./findings";
import { type LesionSelection, lesionSelectionOf } from "./lesion-selection";

/** Cows with a lesion. */
export interface LesionShare {
  readonly lesion: LesionSelection;
  readonly affected: number;
}

/** The cows examined in a period, by what they had. */
export interface LesionShares {
  /** Each parent that a cow had, in the order of the key; all lesions last. A parent takes its forms with it. */
  readonly lesions: readonly LesionShare[];
  readonly examined: number;
  /** Of those examined, cows recorded sound at least once. */
  readonly sound: number;
  /** Rows that name a cow without a lesion or "none", or a lesion without a cow. */
  readonly leftOut: number;
  /** Rows of a cow with a lesion or "none", but without a day. */
  readonly withoutDate: number;
}

const placeInKey = new Map(disorders.map(({ code }, place) => [code, place]));
const parents = disorders.filter(({ parent }) => parent === undefined).map(({ code }) => lesionSelectionOf(code)!);
const all = lesionSelectionOf("all")!;
/**
 * The bit of a cow that was recorded sound, above those of the disorders. The key of ICAR 2020 has 27: with this one
 * they stay below the 31 bits that a number has for them.
 */
const WAS_SOUND = 1 << disorders.length;

/** Counts cows, not rows, over the rows from `from` to `to`, both included: a cow with several rows is one cow. */
export function lesionShares(
  cows: readonly (string | null)[],
  lesions: readonly (string | null)[],
  dates: ArrayLike<number>,
  from: DaySerial,
  to: DaySerial,
): LesionShares {
  const numbers = new CowNumbers();
  /** One bit a disorder that the cow had. */
  const states: number[] = [];
  let [leftOut, withoutDate] = [0, 0];
  for (let row = 0; row < cows.length; row++) {
    const [cow, lesion, date] = [cows[row] ?? null, lesions[row] ?? null, dates[row]!];
    if (cow === null || lesion === null) {
      if (cow !== lesion) leftOut++;
    } else if (Number.isNaN(date)) withoutDate++;
    else if (date >= from && date <= to) {
      const number = numbers.of(cow);
      states[number] = (states[number] ?? 0) | (lesion === SOUND ? WAS_SOUND : 1 << placeInKey.get(lesion)!);
    }
  }
  const having = (bits: number): number => states.reduce((sum, state) => sum + ((state & bits) === 0 ? 0 : 1), 0);
  const shareOf = (lesion: LesionSelection): LesionShare => ({
    lesion,
    affected: having(lesion.places.reduce((bits, place) => bits | (1 << place), 0)),
  });
  return {
    lesions: [...parents.map(shareOf).filter(({ affected }) => affected > 0), shareOf(all)],
    examined: states.length,
    sound: having(WAS_SOUND),
    leftOut,
    withoutDate,
  };
}
