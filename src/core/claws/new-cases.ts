import { orderByDay } from "../shared/day-order";
import { asWords, NO_WORD, type Places, type Words } from "../shared/words";
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
  /** Number of the row's cow. */
  readonly cows: Places;
  /** More than the number of any cow. */
  readonly cowLimit: number;
  /** The name of a cow as it stands in her first row. */
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
  const { cows, feet, lesions, dates, isCounted } = findings;
  const read = { cows: asWords(cows), feet: asWords(feet), lesions: asWords(lesions), dates, isCounted };
  const cases = casesOf(read);
  const { marks } = cases;
  markRepeats(cases, read, gapDays);
  if (isCounted !== undefined) {
    for (let row = 0; row < marks.length; row++) if (!isCounted(row)) marks[row] = NO_CASE;
  }
  return cases;
}

interface ReadFindings {
  readonly cows: Words;
  readonly feet: Words;
  readonly lesions: Words;
  readonly dates: ArrayLike<number>;
  readonly isCounted: Findings["isCounted"];
}

interface Cases extends MarkedRows {
  /** Whether no case stands below one of a later day. */
  readonly areByDate: boolean;
}

/** The rows that are cases, each marked as a new one, with disorder and cow; counts why the others are none. */
function casesOf({ cows, feet, lesions, dates, isCounted }: ReadFindings): Cases {
  const cowPlaces = cows.places;
  const isNoFoot = [true, ...feet.distinct.map((word) => footNumber(word) === NO_FOOT)];
  const lesionOfWord = [NO_CASE, ...lesions.distinct.map(lesionNumber)];
  const rows = cowPlaces.length;
  const marks = new Int8Array(rows).fill(NO_CASE);
  const places = new Uint8Array(rows);
  let used = 0;
  let sound = 0;
  let withoutLesion = 0;
  let withoutCow = 0;
  let withoutDate = 0;
  let unknownLesion = 0;
  let withoutFoot = 0;
  let areByDate = true;
  let lastDay = 0;
  for (let row = 0; row < rows; row++) {
    const lesion = lesions.places[row]!;
    const hasCow = cowPlaces[row] !== NO_WORD;
    const one = isCounted?.(row) === false ? 0 : 1;
    if (lesion === NO_WORD) {
      if (hasCow) withoutLesion += one;
      continue;
    }
    const place = lesionOfWord[lesion]!;
    const day = dates[row]!;
    if (place === IS_SOUND) sound += one;
    else if (place === IS_UNKNOWN) unknownLesion += one;
    else if (!hasCow) withoutCow += one;
    else if (!day) withoutDate += one;
    else {
      used += one;
      if (isNoFoot[feet.places[row]!]!) withoutFoot += one;
      marks[row] = NEW_CASE;
      places[row] = place;
      if (day < lastDay) areByDate = false;
      lastDay = day;
    }
  }
  const tally = { used, sound, withoutLesion, withoutCow, withoutDate, unknownLesion, withoutFoot };
  return { marks, disorders: places, ...numberedCows(cows), tally, areByDate };
}

/** The cows by number; a name written otherwise, such as in capitals, has the number of the cow. */
function numberedCows(names: Words): Pick<MarkedRows, "cows" | "cowLimit" | "cowName"> {
  const { places, count } = names;
  const cowLimit = count + 1;
  if (names.areNumbers || differInMoreThanCapitals(names.distinct)) {
    return { cows: places, cowLimit, cowName: (cow) => names.distinct[cow - 1]! };
  }
  const numbers = new CowNumbers();
  const nameOfCow = [""];
  const cowOfName = [NO_WORD];
  for (const name of names.distinct) {
    const cow = numbers.of(name) + 1;
    cowOfName.push(cow);
    if (cow === nameOfCow.length) nameOfCow.push(name);
  }
  return { cows: places.map((place) => cowOfName[place]!), cowLimit, cowName: (cow) => nameOfCow[cow]! };
}

function footNumber(word: string): number {
  return FEET.indexOf(word) + 1;
}

function lesionNumber(word: string): number {
  return placeInKey.get(word) ?? (word === SOUND ? IS_SOUND : IS_UNKNOWN);
}

const NO_ROW = -1;

/**
 * Day by day each case looks back at the cases of its cow within the gap, the last first, for its own site: the foot
 * and the lesion, forms as their parent. Few are so near, and their rows were read a moment ago; a cow has 135 sites at
 * most, so that even very many cases of one cow are passed over no more often than that.
 */
function markRepeats(
  { marks, cows, cowLimit, disorders: places, areByDate }: Cases,
  { feet, dates }: ReadFindings,
  gapDays: number,
): void {
  const footOfWord = [NO_FOOT, ...feet.distinct.map(footNumber)];
  const siteOf = (row: number): number =>
    footOfWord[feet.places[row]!]! * disorders.length + parentPlaces[places[row]!]!;
  const order = areByDate ? undefined : orderByDay(caseRows(marks), dates);
  const cases = order?.length ?? marks.length;
  const lastRowOfCow = new Int32Array(cowLimit).fill(NO_ROW);
  const lastDayOfCow = new Int32Array(cowLimit);
  /** The row of the cow's case before, + 1; 0 where none lies within the gap, which is most of them. */
  const rowBefore = new Int32Array(marks.length);
  for (let at = 0; at < cases; at++) {
    const row = order === undefined ? at : order[at]!;
    if (marks[row] === NO_CASE) continue;
    // One by one: a pair would be an object a row to throw away.
    const cow = cows[row]!;
    const day = dates[row]!;
    let before = lastRowOfCow[cow]!;
    if (before !== NO_ROW && day - lastDayOfCow[cow]! <= gapDays) {
      rowBefore[row] = before + 1;
      const site = siteOf(row);
      while (before !== NO_ROW && day - dates[before]! <= gapDays && siteOf(before) !== site) {
        before = rowBefore[before]! - 1;
      }
      if (before !== NO_ROW && day - dates[before]! <= gapDays) marks[row] = REPEAT;
    }
    lastRowOfCow[cow] = row;
    lastDayOfCow[cow] = day;
  }
}

/** The rows that are cases. */
function caseRows(marks: Int8Array): Int32Array {
  const rows = new Int32Array(marks.length);
  let cases = 0;
  for (let row = 0; row < marks.length; row++) if (marks[row] !== NO_CASE) rows[cases++] = row;
  return rows.subarray(0, cases);
}
