import { cowKey } from "../../../herd/cow-rows";
import { groupBy, placeName } from "./grouping";
import type { DueLine } from "./line";

/** All that is due for one cow. */
export interface CowRow {
  readonly cow: string;
  /** Lines of one finding together; what concerns no finding stands together too. The longest overdue first. */
  readonly feet: readonly (readonly DueLine[])[];
}

export interface PlaceRows {
  readonly place: string;
  readonly rows: readonly CowRow[];
}

/** The list as it is walked through: place by place, a row a cow, the longest overdue cow first. */
export function rowsByPlace(lines: readonly DueLine[], places: readonly string[]): readonly PlaceRows[] {
  const cows = [...groupBy(lines, ({ cow }) => cowKey(cow)).values()].map((own) => ({
    cow: own[0]!.cow,
    place: placeName(own[0]!),
    feet: [...groupBy(own, ({ finding }) => finding?.key ?? "").values()],
  }));
  return places
    .map((place) => ({ place, rows: cows.filter((row) => row.place === place) }))
    .filter(({ rows }) => rows.length > 0);
}
