import { USUAL_LEVEL } from "../shared/statistics/interval";
import { type RelativeRisk, relativeRisk } from "../shared/statistics/relative-risk";

/** Cows of a group: those with high counts, and all. */
export interface GroupOfCows {
  readonly high: number;
  readonly cows: number;
}

/** Lame and other cows by their cell counts. */
export interface TwoByTwo {
  readonly lame: GroupOfCows;
  readonly sound: GroupOfCows;
  /** Rows where only one of the two is known. */
  readonly leftOut: number;
  /** Share high of the lame over that of the others; undefined where a group has no high cow. Source: Katz 1978. */
  readonly ratio: RelativeRisk | undefined;
}

/** Counts the rows in which both are known; null is not known. */
export function twoByTwo(lame: readonly (boolean | null)[], high: readonly (boolean | null)[]): TwoByTwo {
  const groups = { lame: { high: 0, cows: 0 }, sound: { high: 0, cows: 0 } };
  let leftOut = 0;
  for (let row = 0; row < lame.length; row++) {
    const [isLame, isHigh] = [lame[row]!, high[row]!];
    if (isLame === null || isHigh === null) {
      if (isLame !== null || isHigh !== null) leftOut++;
      continue;
    }
    const group = isLame ? groups.lame : groups.sound;
    group.cows++;
    if (isHigh) group.high++;
  }
  const ratio = relativeRisk(
    {
      affectedWith: groups.lame.high,
      allWith: groups.lame.cows,
      affectedWithout: groups.sound.high,
      allWithout: groups.sound.cows,
    },
    USUAL_LEVEL,
  );
  return { ...groups, leftOut, ratio };
}
