import type { Limb } from "../../../core/claws/reference-claw";
import type { Foot } from "./fields";

export const FOOT_NAMES: Readonly<Record<Foot, string>> = {
  LF: "left front",
  RF: "right front",
  LH: "left hind",
  RH: "right hind",
};

export function limbOf(foot: Foot): Limb {
  return foot === "LF" || foot === "RF" ? "front" : "hind";
}
