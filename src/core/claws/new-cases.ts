import { asWords, NO_WORD } from "../shared/words";
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
  readonly cowCount: number;
  /** The name of a cow as it stands in her first row that is a case. */
  cowName(cow: number): string;
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
/**
 * Marks new cases and repeats. A row is a new case when the same lesion (forms count as their parent) was not
 * recorded on the same foot of the same cow within the `gapDays` before; of several rows of one day the first. Every
 * record starts the gap anew, so that a lesion looked at again and again stays one case. Rows may stand in any order.
 * Rows that are not counted start gaps too, but are no case in the end and stand in no tally.
 */
export function markNewCases(findings: Findings, gapDays: number): MarkedRows {
  const cases = casesOf(findings);
  const { marks } = cases;
  markRepeats(cases, findings.dates, gapDays);
  const { isCounted } = findings;
  if (isCounted !== undefined) {
    for (let row = 0; row < marks.length; row++) if (!isCounted(row)) marks[row] = NO_CASE;
  }
  return cases;
}

interface Cases extends MarkedRows {
  /** Foot and lesion, forms as their parent, as one number; only where the row is a case. */
  readonly sites: Uint8Array;
}

/** The rows that are cases, each marked as a new one, with disorder and cow; counts why the others are none. */
function casesOf(findings: Findings): Cases {
  const { cows, feet, lesions, dates } = findings;
  const [cowWords, footWords, lesionWords] = [asWords(cows), asWords(feet), asWords(lesions)];
  const numbers = new Int32Array(cowWords.places.length);
  const cowOfWord = new Int32Array(cowWords.count + 1).fill(NO_CASE);
  const cowNumbers = new CowNumbers();
  const allDiffer = cowWords.areNumbers || differInMoreThanCapitals(cowWords.distinct);
  /** The first word of each cow, by its place. */
  const firstWords = new Int32Array(cowWords.count);
  let cowCount = 0;
  const footOfWord = [NO_FOOT, ...footWords.distinct.map((word) => FEET.indexOf(word) + 1)];
  const lesionOfWord = [NO_CASE, ...lesionWords.distinct.map(lesionNumber)];
  const rows = numbers.length;
  const [marks, places, sites] = [new Int8Array(rows).fill(NO_CASE), new Uint8Array(rows), new Uint8Array(rows)];
  let used = 0;
  let sound = 0;
  let withoutLesion = 0;
  let withoutCow = 0;
  let withoutDate = 0;
  let unknownLesion = 0;
  let withoutFoot = 0;
  for (let row = 0; row < rows; row++) {
    const lesion = lesionWords.places[row]!;
    const cowWord = cowWords.places[row]!;
    const one = findings.isCounted?.(row) === false ? 0 : 1;
    if (lesion === NO_WORD) {
      if (cowWord !== NO_WORD) withoutLesion += one;
      continue;
    }
    const place = lesionOfWord[lesion]!;
    if (place === IS_SOUND) sound += one;
    else if (place === IS_UNKNOWN) unknownLesion += one;
    else if (cowWord === NO_WORD) withoutCow += one;
    else if (!dates[row]) withoutDate += one;
    else {
      used += one;
      let cow = cowOfWord[cowWord]!;
      if (cow < 0) {
        cow = allDiffer ? cowCount : cowNumbers.of(cowWords.distinct[cowWord - 1]!);
        cowOfWord[cowWord] = cow;
        if (cow === cowCount) firstWords[cowCount++] = cowWord;
      }
      const foot = footOfWord[footWords.places[row]!]!;
      if (foot === NO_FOOT) withoutFoot += one;
      marks[row] = NEW_CASE;
      places[row] = place;
      numbers[row] = cow;
      sites[row] = foot * disorders.length + parentPlaces[place]!;
    }
  }
  const tally = { used, sound, withoutLesion, withoutCow, withoutDate, unknownLesion, withoutFoot };
  const cowName = (cow: number): string => cowWords.distinct[firstWords[cow]! - 1]!;
  return { marks, disorders: places, cows: numbers, cowCount, cowName, sites, tally };
}

function lesionNumber(word: string): number {
  return placeInKey.get(word) ?? (word === SOUND ? IS_SOUND : IS_UNKNOWN);
}

const NO_ROW = -1;

/**
 * Day by day each case looks back at the cases of its cow within the gap, the last first, for its own site. Few are so
 * near, and their rows were read a moment ago; a cow has 135 sites at most, so that even very many cases of one cow are
 * passed over no more often than that.
 */
function markRepeats({ marks, cows, cowCount, sites }: Cases, dates: ArrayLike<number>, gapDays: number): void {
  const order = orderByDate(marks, dates);
  const cases = order?.length ?? marks.length;
  const lastRowOfCow = new Int32Array(cowCount).fill(NO_ROW);
  const lastDayOfCow = new Int32Array(cowCount);
  const rowBefore = new Int32Array(marks.length);
  for (let at = 0; at < cases; at++) {
    const row = order === undefined ? at : order[at]!;
    if (marks[row] === NO_CASE) continue;
    // One by one: a pair would be an object a row to throw away.
    const cow = cows[row]!;
    const day = dates[row]!;
    let before = lastRowOfCow[cow]!;
    rowBefore[row] = before;
    if (before !== NO_ROW && day - lastDayOfCow[cow]! <= gapDays) {
      while (before !== NO_ROW && day - dates[before]! <= gapDays && sites[before] !== sites[row]) {
        before = rowBefore[before]!;
      }
      if (before !== NO_ROW && day - dates[before]! <= gapDays) marks[row] = REPEAT;
    }
    lastRowOfCow[cow] = row;
    lastDayOfCow[cow] = day;
  }
}

/** The cases by date, those of a day as they stand in the sheet; undefined where all rows may be taken as they stand. */
function orderByDate(marks: Int8Array, dates: ArrayLike<number>): Int32Array | undefined {
  let [first, last, cases] = [Infinity, -Infinity, 0];
  let areByDate = true;
  for (let row = 0; row < marks.length; row++) {
    if (marks[row] === NO_CASE) continue;
    const day = dates[row]!;
    cases++;
    areByDate &&= day >= last;
    first = Math.min(first, day);
    last = Math.max(last, day);
  }
  if (areByDate) return undefined;
  // A worksheet's days are few enough to count the cases of each: those of day n stand from place `places[n]` on.
  const places = new Int32Array(last - first + 2);
  for (let row = 0; row < marks.length; row++) if (marks[row] !== NO_CASE) places[dates[row]! - first + 1]!++;
  for (let day = 1; day < places.length; day++) places[day]! += places[day - 1]!;
  const order = new Int32Array(cases);
  for (let row = 0; row < marks.length; row++) {
    if (marks[row] !== NO_CASE) order[places[dates[row]! - first]!++] = row;
  }
  return order;
}
