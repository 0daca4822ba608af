import type { Mineral } from "../reference/nasem-2021";

/** A supply within this share of the need meets it: analyses of feed are no closer. */
const SAME_SHARE = 0.02;

export type SupplyState = "short" | "meets" | "over";

/** Whether a supply meets the need. */
function supplyState(supplyMg: number, needMg: number): SupplyState {
  if (Math.abs(supplyMg - needMg) <= SAME_SHARE * needMg) return "meets";
  return supplyMg < needMg ? "short" : "over";
}

/** The supply against the need in words. Copper is never asked for, and copper over the need is warned of. */
export function supplyInWords(mineral: Mineral, supplyMg: number, needMg: number): string {
  const state = supplyState(supplyMg, needMg);
  if (state === "meets") return "meets the need";
  const byPercent = Math.round((Math.abs(supplyMg - needMg) / needMg) * 100);
  if (mineral === "copper")
    return state === "over"
      ? `copper ${byPercent} % over the need: toxic in excess, ask the nutritionist`
      : `copper ${byPercent} % under the need: only the nutritionist changes copper`;
  return state === "over" ? `${byPercent} % over the need` : `${byPercent} % short: ask the nutritionist`;
}
