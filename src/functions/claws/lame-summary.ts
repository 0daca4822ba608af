import { griffiths2018 } from "../../core/reference/griffiths-2018";
import { reader2011 } from "../../core/reference/reader-2011";
import { sprecher1997 } from "../../core/reference/sprecher-1997";
import { wilson1927 } from "../../core/reference/wilson-1927";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import { defineFunction } from "../define";
import { counted, figure } from "../figure";
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

const count = (heading: string) => ({ heading, type: "number", unit: "cows", format: "0" }) as const;
const share = (heading: string) => ({ heading, type: "number", format: "0.0%" }) as const;
const columns = [
  count("Scored"),
  count("Left out"),
  count("Lame"),
  share("Share lame"),
  share("Low"),
  share("High"),
  count("Severe"),
  share("Share severe"),
];
const headings = columns.map(({ heading }) => heading);

export const lameSummary = defineFunction({
  id: "LAME.SUMMARY",
  group: GROUP,
  summary: "One scoring of the herd: cows scored, lame and severely lame, with limits.",
  parameters: { scores: scoresParameter, scale: scaleParameter, cutoff: cutoffParameter },
  result: { shape: "table", columns },
  sources: [reader2011, sprecher1997, wilson1927, griffiths2018],
  limits: [
    ...scaleLimits,
    zeroLimit,
    "Low and high are Wilson 95 % limits of the share lame. Left out are rows with a word instead of a score.",
    "Pools all rows: pass one scoring of one herd. The pooled share of several herds is not the mean of their shares.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [[[0], [1], [1], [2], [3], ["dry"]], "0-3"],
      result: [headings, [5, 1, 2, 0.4, 0.1176, 0.7693, 1, 0.2]],
      decimals: 4,
      origin: "oracle",
      where: 'counts by hand; limits by R 4.2.2 with epiR 2.0.57, epi.conf(method = "wilson")',
    },
    {
      arguments: [[[1], [3]], "1-5"],
      result: [headings, [2, 0, 1, 0.5, 0.0945, 0.9055, 0, 0]],
      decimals: 4,
      origin: "oracle",
      where: 'counts by hand; limits by R 4.2.2 with epiR 2.0.57, epi.conf(method = "wilson")',
    },
  ],
  compute({ scores, scale, cutoff }, remarks) {
    const cows = countLame(scores, scale, cutoff);
    remarkScores(remarks, cows);
    const { scored, leftOut, lame, severe } = cows;
    const { low, high } = wilsonInterval(lame, scored, USUAL_LEVEL);
    return [headings, [scored, leftOut, lame, lame / scored, low, high, severe, severe / scored]];
  },
  steps({ scores, scale, cutoff }) {
    const { scored, leftOut, lame, severe } = countLame(scores, scale, cutoff);
    const percent = (cows: number) => `${figure((100 * cows) / scored, 1)} %`;
    return [
      { label: "Scored", working: `${counted(leftOut, "row")} left out`, value: String(scored) },
      { label: "Lame", working: `score ${cutoffOn(scale, cutoff)} or more: ${lame} / ${scored}`, value: percent(lame) },
      { label: "Severe", working: `${severe} / ${scored}`, value: percent(severe) },
    ];
  },
});
