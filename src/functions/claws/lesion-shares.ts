import { type LesionShares, lesionShares as sharesByLesion } from "../../core/claws/lesion-shares";
import { icar2020 } from "../../core/reference/icar-2020";
import { kelton1998 } from "../../core/reference/kelton-1998";
import { solano2016 } from "../../core/reference/solano-2016";
import { wilson1927 } from "../../core/reference/wilson-1927";
import { type DaySerial, isoDate } from "../../core/shared/days";
import { unavailable } from "../../core/shared/domain-error";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import { type Column, numbersOf } from "../columns";
import { defineFunction } from "../define";
import { counted, figure } from "../figure";
import {
  cowsParameter,
  datesParameter,
  FEW_COWS_EXAMINED,
  fromParameter,
  GROUP,
  lesionsParameter,
  refuseNoSound,
  refusePeriod,
  remarkLeftOut,
  toParameter,
} from "./kinds-of-findings";

const words = (heading: string) => ({ heading, type: "text" }) as const;
const count = (heading: string) => ({ heading, type: "number", unit: "cows", format: "0" }) as const;
const share = (heading: string) => ({ heading, type: "number", unit: "share of cows", format: "0.0%" }) as const;
const columns = [
  words("Code"),
  words("Lesion"),
  count("Cows"),
  count("Examined"),
  share("Share"),
  share("Low"),
  share("High"),
];
const headings = columns.map(({ heading }) => heading);

/** Twenty-nine cows, one of them with a lesion. */
const twentyNine = Array.from({ length: 29 }, (_, index) => index + 1);

export const lesionShares = defineFunction({
  id: "LESION.SHARES",
  group: GROUP,
  summary: "Share of the cows examined in a period that had each lesion, with limits.",
  parameters: {
    cows: cowsParameter,
    lesions: lesionsParameter,
    dates: datesParameter,
    from: fromParameter,
    to: toParameter,
  },
  result: { shape: "table", columns },
  sources: [kelton1998, wilson1927, solano2016, icar2020],
  limits: [
    "Counts cows, not rows: a cow with several findings of a lesion is one cow. A longer period finds more of them: compare periods of one length.",
    'Sound cows must be in the rows as "none". Where only part of the herd was trimmed (under 80 %), the shares come out too high.',
    "Forms (SU, WLA ...) are counted under their parent. A cow with two lesions stands in two rows, so the shares add up to more than that of all lesions, which stands last.",
    "Low and high are Wilson 95 % limits: chance alone, were such cows examined again.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [
        [[1], [2], [3], [4], [1], [5]],
        [["DD"], ["none"], ["SU"], ["none"], ["DD"], ["WL"]],
        [[45_300], [45_300], [45_301], [45_301], [45_400], [45_200]],
        45_292,
        45_657,
      ],
      result: [
        headings,
        ["U", "Ulcer", 1, 4, 0.25, 0.0456, 0.6994],
        ["DD", "Digital dermatitis", 1, 4, 0.25, 0.0456, 0.6994],
        ["all", "All lesions", 2, 4, 0.5, 0.15, 0.85],
      ],
      decimals: 4,
      origin: "oracle",
      where:
        "cows by hand (cow 5 was seen before the period); limits by R 4.2.2, prop.test(..., correct = FALSE); those of 2 of 4 also by hand: 0.5 ± 1.96 / (2 × √(4 + 1.96²))",
    },
    {
      arguments: [
        twentyNine.map((cow) => [cow]),
        twentyNine.map((cow) => [cow === 7 ? "IP" : "none"]),
        twentyNine.map(() => [45_300]),
        45_292,
        45_657,
      ],
      result: [
        headings,
        ["IP", "Interdigital phlegmon", 1, 29, 0.0345, 0.0061, 0.1718],
        ["all", "All lesions", 1, 29, 0.0345, 0.0061, 0.1718],
      ],
      decimals: 4,
      origin: "oracle",
      where: "1 of 29 cows; limits by R 4.2.2, prop.test(1, 29, correct = FALSE)",
    },
  ],
  compute(args, remarks) {
    const { lesions, examined, leftOut, withoutDate } = countedCows(args);
    remarkLeftOut(remarks, leftOut, 'no cow or no lesion ("none" is the word for a sound cow)');
    remarkLeftOut(remarks, withoutDate, "no date");
    if (examined < FEW_COWS_EXAMINED) remarks.add(`Only ${counted(examined, "cow")} examined: a small number`);
    const lines = lesions.map(({ lesion, affected }) => {
      const { low, high } = wilsonInterval(affected, examined, USUAL_LEVEL);
      return [lesion.name, lesion.title, affected, examined, affected / examined, low, high];
    });
    return [headings, ...lines];
  },
  steps(args) {
    const { lesions, examined, sound } = countedCows(args);
    return [
      {
        label: "Cows examined",
        working: `${isoDate(args.from)} to ${isoDate(args.to)}, ${sound} of them recorded sound`,
        value: String(examined),
      },
      ...lesions.map(({ lesion, affected }) => {
        const { low, high } = wilsonInterval(affected, examined, USUAL_LEVEL);
        return {
          label: lesion.title,
          working: `${affected} / ${examined}`,
          value: `${percent(affected / examined)} (${percent(low)} to ${percent(high)})`,
        };
      }),
    ];
  },
});

function percent(share: number): string {
  return `${figure(100 * share, 1)} %`;
}

interface Arguments {
  readonly cows: Column<string>;
  readonly lesions: Column<string>;
  readonly dates: Column<number>;
  readonly from: DaySerial;
  readonly to: DaySerial;
}

function countedCows({ cows, lesions, dates, from, to }: Arguments): LesionShares {
  refusePeriod(from, to);
  const shares = sharesByLesion(cows.values, lesions.values, numbersOf(dates), from, to);
  if (shares.examined === 0) {
    throw unavailable(
      `lesions holds no finding from ${isoDate(from)} to ${isoDate(to)}: enter a code a row, or "none" for a sound cow`,
    );
  }
  refuseNoSound(shares.sound);
  return shares;
}
