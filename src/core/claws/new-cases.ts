import type { DaySerial } from "../shared/days";
import { disorders } from "./disorder-key";
import { CowNumbers, type Findings, type RowTally, SOUND, UNKNOWN } from "./findings";

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

/** A foot that is not named is one more foot of the cow. */
const footNumbers = new Map<string | null, number>([[null, 0], ["LF", 1], ["RF", 2], ["LH", 3], ["RH", 4]]); // prettier-ignore

/**
 * Marks new cases and repeats. A row is a new case when the same lesion (forms count as their parent) was not
 * recorded on the same foot of the same cow within the `gapDays` before; of several rows of one day the first. Every
 * record starts the gap anew, so that a lesion looked at again and again stays one case. Rows may stand in any order.
 */
export function markNewCases(findings: Findings, gapDays: number): MarkedRows {
  const { dates } = findings;
  const rows = findings.lesions.length;
  const marks = new Int8Array(rows).fill(NO_CASE);
  const places = new Uint8Array(rows);
  const cows = new Int32Array(rows);
  const sites = new Int32Array(rows);
  const cowNumbers = new CowNumbers();
  const siteNumbers = new Map<number, number>();
  const lastDates: DaySerial[] = [];
  const outOfOrder = new Set<number>();
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
    const place = casePlace(findings, row, tally);
    if (place === undefined) continue;
    const foot = findings.feet[row] ?? null;
    if (foot === null) tally.withoutFoot++;
    const cow = cowNumbers.of(findings.cows[row]!);
    const date = dates[row]!;
    places[row] = place;
    cows[row] = cow;

    const key = (cow * footNumbers.size + footNumbers.get(foot)!) * disorders.length + parentPlaces[place]!;
    let site = siteNumbers.get(key);
    if (site === undefined) {
      site = lastDates.push(date) - 1;
      siteNumbers.set(key, site);
      marks[row] = NEW_CASE;
    } else {
      const last = lastDates[site]!;
      if (date < last) outOfOrder.add(site);
      marks[row] = date - last > gapDays ? NEW_CASE : REPEAT;
      lastDates[site] = date;
    }
    sites[row] = site;
  }
  if (outOfOrder.size > 0) markOutOfOrder(outOfOrder, sites, marks, dates, gapDays);
  return { marks, disorders: places, cows, cowNames: cowNumbers.names, tally };
}

type Counting<T> = { -readonly [K in keyof T]: T[K] };

/** Place of the row's disorder in the key, or undefined where the row is no case; counts why. */
function casePlace({ cows, lesions, dates }: Findings, row: number, tally: Counting<RowTally>): number | undefined {
  const lesion = lesions[row] ?? null;
  const cow = cows[row] ?? null;
  if (lesion === null) {
    if (cow !== null) tally.withoutLesion++;
  } else if (lesion === SOUND) tally.sound++;
  else if (lesion === UNKNOWN) tally.unknownLesion++;
  else if (cow === null) tally.withoutCow++;
  else if (Number.isNaN(dates[row]!)) tally.withoutDate++;
  else {
    tally.used++;
    return placeInKey.get(lesion)!;
  }
  return undefined;
}

/** Marks anew the rows of those lesions whose rows do not stand by date. */
function markOutOfOrder(
  outOfOrder: ReadonlySet<number>,
  sites: Int32Array,
  marks: Int8Array,
  dates: ArrayLike<number>,
  gapDays: number,
): void {
  const rowsOf = new Map<number, number[]>();
  for (let row = 0; row < marks.length; row++) {
    if (marks[row] === NO_CASE || !outOfOrder.has(sites[row]!)) continue;
    const list = rowsOf.get(sites[row]!);
    if (list === undefined) rowsOf.set(sites[row]!, [row]);
    else list.push(row);
  }
  for (const rows of rowsOf.values()) {
    rows.sort((a, b) => dates[a]! - dates[b]! || a - b);
    let last = -Infinity;
    for (const row of rows) {
      marks[row] = dates[row]! - last > gapDays ? NEW_CASE : REPEAT;
      last = dates[row]!;
    }
  }
}
