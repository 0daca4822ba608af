import { mobilityState } from "../../core/claws/mobility";
import { flowerWeary2006 } from "../../core/reference/flower-weary-2006";
import { reader2011 } from "../../core/reference/reader-2011";
import { sprecher1997 } from "../../core/reference/sprecher-1997";
import { defineFunction } from "../define";
import {
  cutoffOn,
  cutoffParameter,
  GROUP,
  refuseBlankScore,
  refuseOffScale,
  scaleLimits,
  scaleParameter,
  scoreParameter,
  zeroLimit,
} from "./kinds-of-scores";

export const lameState = defineFunction({
  id: "LAME.STATE",
  group: GROUP,
  summary: "What a mobility score stands for: sound, lame or severe.",
  parameters: { score: scoreParameter, scale: scaleParameter, cutoff: cutoffParameter },
  result: { shape: "scalar", type: "text" },
  sources: [reader2011, sprecher1997, flowerWeary2006],
  limits: [...scaleLimits, zeroLimit, "Half scores are taken on the scale 1-5 only; 2.5 lies below a cut-off of 3."],
  cautions: ["A cow that bears no weight or cannot keep up needs to be seen today: call the veterinarian."],
  examples: [
    {
      arguments: [2, "0-3"],
      result: "lame",
      origin: "printed",
      where: "0-3 scale: impaired, limb identifiable (Reader et al. 2011)",
    },
    { arguments: [2, "1-5"], result: "sound", origin: "printed", where: "Sprecher et al. 1997: lame from 3" },
    { arguments: [4, "1-5"], result: "severe", origin: "printed", where: "Sprecher et al. 1997: favours a limb" },
    { arguments: [2, "1-5", 2], result: "lame", origin: "hand", where: "at the cut-off given" },
  ],
  compute({ score, scale, cutoff }) {
    refuseBlankScore(score, scale);
    refuseOffScale(score, scale, "score");
    return mobilityState(score, scale, cutoffOn(scale, cutoff));
  },
  steps: ({ score, scale, cutoff }, state) => [
    { label: "Lame from", working: `scale ${scale}`, value: String(cutoffOn(scale, cutoff)) },
    { label: "State", working: `score ${score}`, value: String(state) },
  ],
});
