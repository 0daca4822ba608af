import { asWords, NO_WORD, type Words } from "../shared/words";
import { disorders } from "./disorder-key";
import { CowNumbers, differInMoreThanCapitals, type Findings, type RowTally, SOUND } from "./findings";

/**
 * Days without a record of the lesion after which it counts as a new case. There is no agreed number; papers use 14
 * to 30 days. Common practice, no source.
 */
export const USUAL_GAP_DAYS = 28;

export const NEW_CASE = 1;
export const REPEAT = 0;
export const NO_CASE = -1;

/** Each row of the findings as a case or not. */
export interface MarkedRows {
  /** NEW_CASE, REPEAT or NO_CASE, a row. */
  readonly marks: Int8Array;
  /** Place of the row's disorder in the key; only where it is a case. */
  readonly disorders: Uint8Array;
  /** Number of the row's cow; only where it is a case. */
  readonly cows: Int32Array;
  readonly cowNames: readonly string[];
  readonly tally: RowTally;
}

const placeInKey = new Map(disorders.map(({ code }, place) => [code, place]));
/** For each disorder the place of the one it is a form of, or its own. */
const parentPlaces = disorders.map(({ code, parent }) => placeInKey.get(parent ?? code)!);

/** Stand for rows that are no case beside the places of the disorders in the key. */
const IS_SOUND = -2;
const IS_UNKNOWN = -3;
/** A foot that is not named is one more foot of the cow. */
const NO_FOOT = 0;
const FEET: readonly string[] = ["LF", "RF", "LH", "RH"];
const FEET_A_COW = FEET.length + 1;

/**
 * Marks new cases and repeats. A row is a new case when the same lesion (forms count as their parent) was not
 * recorded on the same foot of the same cow within the `gapDays` before; of several rows of one day the first. Every
 * record starts the gap anew, so that a lesion looked at again and again stays one case. Rows may stand in any order.
 */
export function markNewCases({ cows, feet, lesions, dates }: Findings, gapDays: number): MarkedRows {
  const footWords = asWords(feet);
  const footOfWord = footWords.words.map((word) => FEET.indexOf(word) + 1);
  const cases = casesOf(asWords(cows), asWords(lesions), dates);
  const { marks, disorders: places, tally } = cases;
  const { rowsByCow, firstOfCow } = byCow(cases);
  const cowOfSite = new Int32Array(FEET_A_COW * disorders.length).fill(NO_CASE);
  const lastDates = new Float64Array(cowOfSite.length);
  for (let cow = 0; cow < cases.cowNames.length; cow++) {
    const [first, end] = [firstOfCow[cow]!, firstOfCow[cow + 1]!];
    sortByDate(rowsByCow, first, end, dates);
    for (let at = first; at < end; at++) {
      const row = rowsByCow[at]!;
      const date = dates[row]!;
      const foot = footOfWord[footWords.places[row]!] ?? NO_FOOT;
      if (foot === NO_FOOT) tally.withoutFoot++;
      const site = foot * disorders.length + parentPlaces[places[row]!]!;
      const isRepeat = cowOfSite[site] === cow && date - lastDates[site]! <= gapDays;
      marks[row] = isRepeat ? REPEAT : NEW_CASE;
      cowOfSite[site] = cow;
      lastDates[site] = date;
    }
  }
  return cases;
}

interface Cases extends MarkedRows {
  readonly tally: { -readonly [K in keyof RowTally]: RowTally[K] };
}

/** The rows that are cases, each marked as a new one, with disorder and cow; counts why the others are none. */
function casesOf(cowWords: Words, lesionWords: Words, dates: ArrayLike<number>): Cases {
  const lesionOfWord = lesionWords.words.map(
    (word) => placeInKey.get(word) ?? (word === SOUND ? IS_SOUND : IS_UNKNOWN),
  );
  const cowOfWord = new Int32Array(cowWords.words.length).fill(NO_CASE);
  const cowNumbers = new CowNumbers();
  const allDiffer = differInMoreThanCapitals(cowWords.words);
  const rows = lesionWords.places.length;
  const [marks, places, cows] = [new Int8Array(rows).fill(NO_CASE), new Uint8Array(rows), new Int32Array(rows)];
  const tally = {
    used: 0,
    sound: 0,
    withoutLesion: 0,
    withoutCow: 0,
    withoutDate: 0,
    unknownLesion: 0,
    withoutFoot: 0,
  };
  for (let row = 0; row < rows; row++) {
    const [lesion, cowWord] = [lesionWords.places[row]!, cowWords.places[row]!];
    if (lesion === NO_WORD) {
      if (cowWord !== NO_WORD) tally.withoutLesion++;
      continue;
    }
    const place = lesionOfWord[lesion]!;
    if (place === IS_SOUND) tally.sound++;
    else if (place === IS_UNKNOWN) tally.unknownLesion++;
    else if (cowWord === NO_WORD) tally.withoutCow++;
    else if (Number.isNaN(dates[row]!)) tally.withoutDate++;
    else {
      tally.used++;
      let cow = cowOfWord[cowWord]!;
      if (cow < 0) {
        const name = cowWords.words[cowWord]!;
        cow = cowOfWord[cowWord] = allDiffer ? cowNumbers.addNew(name) : cowNumbers.of(name);
      }
      marks[row] = NEW_CASE;
      places[row] = place;
      cows[row] = cow;
    }
  }
  return { marks, disorders: places, cows, cowNames: cowNumbers.names, tally };
}

/** The rows of the cases cow by cow: those of cow n from place `firstOfCow[n]` to before `firstOfCow[n + 1]`. */
function byCow({ marks, cows, cowNames, tally }: Cases): {
  readonly rowsByCow: Int32Array;
  readonly firstOfCow: Int32Array;
} {
  // Counted one place further on, so that each entry has moved to the end of its cow, the next one's first, when all are placed.
  const firstOfCow = new Int32Array(cowNames.length + 2);
  for (let row = 0; row < marks.length; row++) if (marks[row] !== NO_CASE) firstOfCow[cows[row]! + 2]!++;
  for (let cow = 2; cow < firstOfCow.length; cow++) firstOfCow[cow]! += firstOfCow[cow - 1]!;
  const rowsByCow = new Int32Array(tally.used);
  for (let row = 0; row < marks.length; row++)
    if (marks[row] !== NO_CASE) rowsByCow[firstOfCow[cows[row]! + 1]!++] = row;
  return { rowsByCow, firstOfCow };
}

/** Sorts part of the rows by date, rows of one day as they stand in the sheet. Most sheets are in order already. */
function sortByDate(rows: Int32Array, first: number, end: number, dates: ArrayLike<number>): void {
  for (let at = first + 1; at < end; at++) {
    if (dates[rows[at]!]! >= dates[rows[at - 1]!]!) continue;
    rows.subarray(first, end).sort((a, b) => dates[a]! - dates[b]! || a - b);
    return;
  }
}
