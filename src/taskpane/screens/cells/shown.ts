import type { LiveState } from "../../parts/live-blocks/state";
import type { Field } from "./given";
import type { MilkPrice } from "./milk-price";

/** What stands in a field until someone types: as the blocks have it, and five cows to a list. */
const USUAL: Readonly<Record<Exclude<Field, "test" | "milkPrice">, string>> = {
  days: "365",
  number: "5",
  highest: "5",
  ceiling: "200",
  limit: "200",
};

/** What each field shows: as typed, else what is usual. */
export function shownFields({ typed }: LiveState, { litre }: MilkPrice): Readonly<Record<Field, string>> {
  const usual = { ...USUAL, test: "", milkPrice: litre === undefined ? "" : String(litre) };
  return { ...usual, ...typed };
}
