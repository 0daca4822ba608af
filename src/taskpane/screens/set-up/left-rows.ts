import type { LeftRow } from "../../../herd/copy-over/preview";

/** Rows that stay behind for one reason, and where they stand in the old book. */
export interface LeftFor {
  readonly why: string;
  /** "Herd, A5". */
  readonly places: readonly string[];
}

/** Rows that stay behind by reason, the most frequent first. */
export function reasonsOf(left: readonly LeftRow[]): readonly LeftFor[] {
  const byReason = new Map<string, string[]>();
  for (const { sheet, address, why } of left) {
    const place = `${sheet}, ${address}`;
    const places = byReason.get(why);
    if (places === undefined) byReason.set(why, [place]);
    else places.push(place);
  }
  return [...byReason].map(([why, places]) => ({ why, places })).sort((a, b) => b.places.length - a.places.length);
}
