import { cowKey } from "../../../herd/cow-rows";
import { placeName } from "./grouping";
import type { DueLine } from "./line";

/** All that is due for one cow. */
export interface CowRow {
  readonly cow: string;
  /** The longest overdue first. */
  readonly lines: readonly DueLine[];
}

export interface PlaceRows {
  readonly place: string;
  readonly rows: readonly CowRow[];
}

/** The list as it is walked through: place by place, one row a cow, the longest overdue cow first. */
export function rowsByPlace(lines: readonly DueLine[], places: readonly string[]): readonly PlaceRows[] {
  const cows = new Map<string, DueLine[]>();
  for (const line of lines) {
    const key = cowKey(line.cow);
    const own = cows.get(key);
    if (own === undefined) cows.set(key, [line]);
    else own.push(line);
  }
  const rows = [...cows.values()].map((own) => ({ cow: own[0]!.cow, lines: own }));
  return places
    .map((place) => ({ place, rows: rows.filter(({ lines: [first] }) => placeName(first!) === place) }))
    .filter(({ rows: own }) => own.length > 0);
}
