import { CowNumbers, SOUND } from "./findings";
import type { LesionSelection } from "./lesion-selection";

/** Cows examined and those of them with the lesion. */
export interface AffectedCows {
  readonly affected: number;
  readonly examined: number;
  /** Of those examined, cows recorded sound at least once. */
  readonly sound: number;
  /** Rows that name a cow without a lesion or "none", or a lesion without a cow. */
  readonly leftOut: number;
}

const EXAMINED = 1;
const AFFECTED = 2;
const WAS_SOUND = 4;

/** Counts cows, not rows: a cow with several rows is one cow. */
export function affectedCows(
  cows: readonly (string | null)[],
  lesions: readonly (string | null)[],
  selection: LesionSelection,
): AffectedCows {
  const numbers = new CowNumbers();
  const states: number[] = [];
  let leftOut = 0;
  for (let row = 0; row < cows.length; row++) {
    const cow = cows[row] ?? null;
    const lesion = lesions[row] ?? null;
    if (cow === null || lesion === null) {
      if (cow !== lesion) leftOut++;
      continue;
    }
    const number = numbers.of(cow);
    const state = lesion === SOUND ? WAS_SOUND : selection.has(lesion) ? AFFECTED : 0;
    states[number] = (states[number] ?? 0) | EXAMINED | state;
  }
  const having = (bit: number) => states.reduce((sum, state) => sum + ((state & bit) === 0 ? 0 : 1), 0);
  return { affected: having(AFFECTED), examined: having(EXAMINED), sound: having(WAS_SOUND), leftOut };
}
