import { cochran1977 } from "../../core/reference/cochran-1977";
import { main2010 } from "../../core/reference/main-2010";
import { sampleSize } from "../../core/shared/statistics/sample-size";
import { twoSidedQuantile } from "../../core/shared/statistics/normal-quantile";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { number } from "../scalars";
import { levelParameter } from "./kinds-of-findings";
import { GROUP } from "./kinds-of-scores";

const fraction = (max: number) =>
  number({ min: 0, max, exclusiveMin: true, reason: "a fraction: 0.3 stands for 30 %", zeroIsBlank: true });

export const lameSample = defineFunction({
  id: "LAME.SAMPLE",
  group: GROUP,
  summary: "Cows to score so that the share of lame cows is known closely enough.",
  parameters: {
    cows: required(
      number({ unit: "cows", min: 1, max: 1_000_000, whole: true, reason: "a herd", zeroIsBlank: true }),
      "Cows in the herd or group",
    ),
    expectedShare: required(fraction(0.99), "Share of lame cows expected, such as 0.3"),
    margin: required(fraction(0.5), "Margin of error wanted, as a share, such as 0.05"),
    level: levelParameter,
  },
  result: { shape: "scalar", type: "number", unit: "cows", format: "0" },
  sources: [cochran1977, main2010],
  limits: [
    "Take the cows from the middle of the milking order: the last third to come in is lamer than the first (by 11.9 points in Main et al. 2010).",
    "Holds for cows taken at random; an expected share of 0.5 needs the most cows.",
  ],
  cautions: [],
  examples: [
    { arguments: [100, 0.3, 0.05], result: 77, origin: "oracle", where: "R 4.2.2 with epiR 2.0.57, epi.sssimpleestb" },
    { arguments: [200, 0.25, 0.1], result: 54, origin: "oracle", where: "R 4.2.2 with epiR 2.0.57, epi.sssimpleestb" },
    { arguments: [80, 0.5, 0.05], result: 67, origin: "oracle", where: "R 4.2.2 with epiR 2.0.57, epi.sssimpleestb" },
  ],
  compute: ({ cows, expectedShare, margin, level }, remarks) => {
    remarks.add("Take them from the middle of the milking order");
    return sampleSize(cows, expectedShare, margin, level);
  },
  steps({ cows, expectedShare, margin, level }, size) {
    const z = twoSidedQuantile(level);
    const infinite = (z ** 2 * expectedShare * (1 - expectedShare)) / margin ** 2;
    return [
      {
        label: "Very large herd",
        working: `${figure(z, 3)}² × ${expectedShare} × ${figure(1 - expectedShare, 4)} / ${margin}²`,
        value: figure(infinite, 1),
      },
      {
        label: `Herd of ${cows}`,
        working: `${figure(infinite, 1)} / (1 + (${figure(infinite, 1)} − 1) / ${cows}), rounded up`,
        value: String(size),
      },
    ];
  },
});
