import { griffiths2018 } from "../../core/reference/griffiths-2018";
import { reader2011 } from "../../core/reference/reader-2011";
import { sprecher1997 } from "../../core/reference/sprecher-1997";
import { wilson1927 } from "../../core/reference/wilson-1927";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import { defineFunction } from "../define";
import { figure } from "../figure";
import {
  countLame,
  cutoffOn,
  cutoffParameter,
  GROUP,
  remarkScores,
  scaleLimits,
  scaleParameter,
  scoresParameter,
  zeroLimit,
} from "./kinds-of-scores";

export const lameShare = defineFunction({
  id: "LAME.SHARE",
  group: GROUP,
  summary: "Share of the scored cows that are lame.",
  parameters: { scores: scoresParameter, scale: scaleParameter, cutoff: cutoffParameter },
  result: { shape: "scalar", type: "number", unit: "share of cows scored", format: "0.0%" },
  sources: [reader2011, sprecher1997, wilson1927, griffiths2018],
  limits: [
    ...scaleLimits,
    zeroLimit,
    "Pools all rows: pass one scoring of one herd. The pooled share of several herds is not the mean of their shares.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [[[0], [1], [2], [3], ["dry"]], "0-3"],
      result: 0.5,
      origin: "hand",
      where: "2 and 3 are lame: 2 of the 4 scored",
    },
    { arguments: [[[1], [2.5], [3], [5]], "1-5"], result: 0.5, origin: "hand", where: "3 and 5 are lame: 2 of 4" },
    { arguments: [[[1], [2.5], [3], [5]], "1-5", 2], result: 0.75, origin: "hand", where: "lame from 2: 3 of 4" },
  ],
  compute({ scores, scale, cutoff }, remarks) {
    const count = countLame(scores, scale, cutoff);
    remarkScores(remarks, count);
    return count.lame / count.scored;
  },
  steps({ scores, scale, cutoff }, share) {
    const { scored, lame, severe } = countLame(scores, scale, cutoff);
    const { low, high } = wilsonInterval(lame, scored, USUAL_LEVEL);
    return [
      { label: "Lame from", working: `scale ${scale}`, value: String(cutoffOn(scale, cutoff)) },
      { label: "Lame cows", working: `${severe} of them severe`, value: String(lame) },
      { label: "Share", working: `${lame} / ${scored}`, value: `${figure(100 * Number(share), 1)} %` },
      { label: "95 % limits", working: "Wilson", value: `${figure(100 * low, 1)} to ${figure(100 * high, 1)} %` },
    ];
  },
});
