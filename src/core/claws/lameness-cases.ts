import { asWords, NO_WORD, type WordColumn } from "../shared/words";
import { CowNumbers } from "./findings";
import { type MobilityScale, mobilityScales } from "./mobility";

/** What is known of a cow on the day of a score. */
export type LamenessState = "sound" | "new" | "lame" | "recovered" | "unconfirmed";

/** Scores of a herd, row by row; NaN where there is none. */
export interface ScoreRows {
  readonly cows: WordColumn;
  readonly dates: ArrayLike<number>;
  readonly scores: ArrayLike<number>;
}

/** Two rows of one cow and one day, where it cannot be told which score came first. */
export interface SameDay {
  readonly row: number;
  readonly earlierRow: number;
}

/**
 * State of each row by the two-score rule: lame after two scores in a row from the scale's lame score on, or after one
 * in its severe steps; sound after two in a row below; a single score inside the other state changes nothing. A change
 * is dated to the score that confirms it. Before the first confirmation a cow is unconfirmed, and lame without having
 * been sound is no new case. Rows without cow, day or score have no state. Two rows of one cow and day come back as
 * `SameDay` instead.
 * Source: Daros et al. 2019 on the scale 1-5 (two scores of 3, or one above 3); used alike on the scale 0-3 (two of 2,
 * or one 3).
 */
export function lamenessStates(
  rows: ScoreRows,
  scale: MobilityScale,
): readonly (LamenessState | undefined)[] | SameDay {
  const { dates, scores } = rows;
  const { lameFrom, severeFrom } = mobilityScales[scale];
  const states: (LamenessState | undefined)[] = new Array<LamenessState | undefined>(scores.length);
  for (const list of rowsByCow(rows)) {
    let state: "sound" | "lame" | undefined;
    let lameBefore: boolean | undefined;
    for (let place = 0; place < list.length; place++) {
      const row = list[place]!;
      const earlierRow = list[place - 1];
      if (earlierRow !== undefined && dates[earlierRow] === dates[row]) return { row, earlierRow };
      const lameNow = scores[row]! >= lameFrom;
      const confirmed = lameNow === lameBefore || scores[row]! >= severeFrom;
      states[row] = state ?? "unconfirmed";
      if (confirmed && lameNow && state !== "lame") {
        states[row] = state === "sound" ? "new" : "lame";
        state = "lame";
      } else if (confirmed && !lameNow && state !== "sound") {
        states[row] = state === "lame" ? "recovered" : "sound";
        state = "sound";
      }
      lameBefore = lameNow;
    }
  }
  return states;
}

/** The rows with cow, day and score of each cow, by day. Names are looked up once a name, not once a row. */
function rowsByCow({ cows, dates, scores }: ScoreRows): readonly number[][] {
  const { distinct, places, count } = asWords(cows);
  const numbers = new CowNumbers();
  const listOfWord = new Array<number[] | undefined>(count + 1);
  const lists: number[][] = [];
  for (let row = 0; row < scores.length; row++) {
    const word = places[row]!;
    if (word === NO_WORD || Number.isNaN(dates[row]!) || Number.isNaN(scores[row]!)) continue;
    const list = (listOfWord[word] ??= lists[numbers.of(distinct[word - 1]!)] ??= []);
    list.push(row);
  }
  for (const list of lists) if (!isByDay(list, dates)) list.sort((a, b) => dates[a]! - dates[b]! || a - b);
  return lists;
}

/** Most lists are kept by day, and need no sorting. */
function isByDay(rows: readonly number[], dates: ArrayLike<number>): boolean {
  for (let place = 1; place < rows.length; place++) if (dates[rows[place]!]! < dates[rows[place - 1]!]!) return false;
  return true;
}
