import type { DaySerial } from "../shared/days";
import { disorders, parentCode } from "./disorder-key";
import { type MarkedRows, NEW_CASE, NO_CASE } from "./new-cases";

/** A cow with several new cases in a period. */
export interface RepeatCow {
  readonly cow: string;
  readonly newCases: number;
  /** Records that were no new case. */
  readonly repeats: number;
  readonly last: DaySerial;
  /** The foot with most new cases, of several the one affected last; "" where no foot was named. */
  readonly worstFoot: string;
  /** Parent codes of her new cases, in the order of the key. */
  readonly lesions: readonly string[];
}

interface Foot {
  newCases: number;
  last: DaySerial;
}

interface Collected {
  newCases: number;
  repeats: number;
  last: DaySerial;
  readonly feet: Map<string, Foot>;
  readonly places: Set<number>;
}

/** Cows with at least `fewest` new cases from `from` to `to`, both included; most cases first, then the latest. */
export function repeatCows(
  rows: MarkedRows,
  feet: readonly (string | null)[],
  dates: ArrayLike<number>,
  from: DaySerial,
  to: DaySerial,
  fewest: number,
): RepeatCow[] {
  const collected = new Array<Collected | undefined>(rows.cowLimit).fill(undefined);
  for (let row = 0; row < rows.marks.length; row++) {
    const date = dates[row]!;
    if (rows.marks[row] === NO_CASE || date < from || date > to) continue;
    const cow = (collected[rows.cows[row]!] ??= {
      newCases: 0,
      repeats: 0,
      last: 0,
      feet: new Map(),
      places: new Set(),
    });
    cow.last = Math.max(cow.last, date);
    if (rows.marks[row] !== NEW_CASE) {
      cow.repeats++;
      continue;
    }
    cow.newCases++;
    cow.places.add(rows.disorders[row]!);
    const name = feet[row] ?? "";
    const foot = cow.feet.get(name) ?? { newCases: 0, last: 0 };
    cow.feet.set(name, { newCases: foot.newCases + 1, last: Math.max(foot.last, date) });
  }
  return collected
    .flatMap((cow, number) => {
      if (cow === undefined || cow.newCases < fewest) return [];
      const { newCases, repeats, last, feet, places } = cow;
      return [
        { cow: rows.cowName(number), newCases, repeats, last, worstFoot: worst(feet), lesions: parentsOf(places) },
      ];
    })
    .sort((a, b) => b.newCases - a.newCases || b.last - a.last);
}

function worst(feet: ReadonlyMap<string, Foot>): string {
  const [first] = [...feet].sort(([, a], [, b]) => b.newCases - a.newCases || b.last - a.last);
  return first?.[0] ?? "";
}

function parentsOf(places: ReadonlySet<number>): readonly string[] {
  const parents = new Set([...places].map((place) => parentCode(disorders[place]!.code)));
  return disorders.map(({ code }) => code).filter((code) => parents.has(code));
}
