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
/** A site is a foot and a lesion on it; there are 135, five feet times the lesions of the key. */
const SITE_BITS = 8;
const SITES = 1 << SITE_BITS;

/**
 * Marks new cases and repeats. A row is a new case when the same lesion (forms count as their parent) was not
 * recorded on the same foot of the same cow within the `gapDays` before; of several rows of one day the first. Every
 * record starts the gap anew, so that a lesion looked at again and again stays one case. Rows may stand in any order.
 * Rows that are not counted start gaps too, but are no case in the end and stand in no tally.
 */
export function markNewCases(findings: Findings, gapDays: number): MarkedRows {
  const cases = casesOf(findings);
  const { marks } = cases;
  const { rowsByCow, daysAndSites, firstOfCow } = byCow(cases, findings.dates);
  const cowOfSite = new Int32Array(SITES).fill(NO_CASE);
  const lastDays = new Int32Array(SITES);
  for (let cow = 0; cow < cases.cowCount; cow++) {
    for (let at = firstOfCow[cow]!; at < firstOfCow[cow + 1]!; at++) {
      const day = daysAndSites[at]! >> SITE_BITS;
      const site = daysAndSites[at]! & (SITES - 1);
      const isRepeat = cowOfSite[site] === cow && day - lastDays[site]! <= gapDays;
      marks[rowsByCow[at]!] = isRepeat ? REPEAT : NEW_CASE;
      cowOfSite[site] = cow;
      lastDays[site] = day;
    }
  }
  const { isCounted } = findings;
  if (isCounted !== undefined) {
    for (let row = 0; row < marks.length; row++) if (!isCounted(row)) marks[row] = NO_CASE;
  }
  return cases;
}

interface Cases extends MarkedRows {
  /** Foot and lesion, forms as their parent, as one number; only where the row is a case. */
  readonly sites: Uint8Array;
  /** How many rows are cases, counted or not. */
  readonly caseRows: number;
}

/** The rows that are cases, each marked as a new one, with disorder and cow; counts why the others are none. */
function casesOf(findings: Findings): Cases {
  const { cows, feet, lesions, dates } = findings;
  const [cowWords, footWords, lesionWords] = [asWords(cows), asWords(feet), asWords(lesions)];
  const numbers = new Int32Array(cowWords.places.length);
  const cowOfWord = new Int32Array(cowWords.count + 1).fill(NO_CASE);
  const cowNumbers = new CowNumbers();
  const allDiffer = cowWords.areNumbers || differInMoreThanCapitals(cowWords.words);
  /** The first word of each cow, by its place. */
  const firstWords: number[] = [];
  const footOfWord = [NO_FOOT, ...footWords.words.map((word) => FEET.indexOf(word) + 1)];
  const lesionOfWord = [NO_CASE, ...lesionWords.words.map(lesionNumber)];
  const rows = numbers.length;
  const [marks, places, sites] = [new Int8Array(rows).fill(NO_CASE), new Uint8Array(rows), new Uint8Array(rows)];
  let caseRows = 0;
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
    else if (Number.isNaN(dates[row]!)) withoutDate += one;
    else {
      caseRows++;
      used += one;
      let cow = cowOfWord[cowWord]!;
      if (cow < 0) {
        cow = allDiffer ? firstWords.length : cowNumbers.of(cowWords.words[cowWord - 1]!);
        cowOfWord[cowWord] = cow;
        if (cow === firstWords.length) firstWords.push(cowWord);
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
  const cowName = (cow: number): string => cowWords.words[firstWords[cow]! - 1]!;
  return { marks, disorders: places, cows: numbers, cowCount: firstWords.length, cowName, sites, caseRows, tally };
}

function lesionNumber(word: string): number {
  return placeInKey.get(word) ?? (word === SOUND ? IS_SOUND : IS_UNKNOWN);
}

interface CasesByCow {
  readonly rowsByCow: Int32Array;
  /** Day and site of each of those rows in one number, so that a cow's are read one after another. */
  readonly daysAndSites: Int32Array;
  /** The rows of cow n stand from place `firstOfCow[n]` to before `firstOfCow[n + 1]`. */
  readonly firstOfCow: Int32Array;
}

/** The rows of the cases cow by cow, those of a cow by date, those of a day as they stand in the sheet. */
function byCow({ marks, cows, cowCount, sites, caseRows }: Cases, dates: ArrayLike<number>): CasesByCow {
  // Counted two places on: while rows are placed, the entry before grows from the cow's first place to the next cow's.
  const firstOfCow = new Int32Array(cowCount + 2);
  for (let row = 0; row < marks.length; row++) if (marks[row] !== NO_CASE) firstOfCow[cows[row]! + 2]!++;
  for (let cow = 2; cow < firstOfCow.length; cow++) firstOfCow[cow]! += firstOfCow[cow - 1]!;
  const [rowsByCow, daysAndSites] = [new Int32Array(caseRows), new Int32Array(caseRows)];
  const daysAndSite = (row: number): number => (dates[row]! << SITE_BITS) | sites[row]!;
  let areByDate = true;
  let last = -Infinity;
  for (let row = 0; row < marks.length; row++) {
    if (marks[row] === NO_CASE) continue;
    const at = firstOfCow[cows[row]! + 1]!++;
    rowsByCow[at] = row;
    daysAndSites[at] = daysAndSite(row);
    areByDate &&= dates[row]! >= last;
    last = dates[row]!;
  }
  for (let cow = 0; !areByDate && cow < cowCount; cow++) {
    const [first, end] = [firstOfCow[cow]!, firstOfCow[cow + 1]!];
    if (isByDate(rowsByCow, first, end, dates)) continue;
    rowsByCow.subarray(first, end).sort((a, b) => dates[a]! - dates[b]! || a - b);
    for (let at = first; at < end; at++) daysAndSites[at] = daysAndSite(rowsByCow[at]!);
  }
  return { rowsByCow, daysAndSites, firstOfCow };
}

function isByDate(rows: Int32Array, first: number, end: number, dates: ArrayLike<number>): boolean {
  for (let at = first + 1; at < end; at++) if (dates[rows[at]!]! < dates[rows[at - 1]!]!) return false;
  return true;
}
