import { affectedCows } from "../../core/claws/lesion-share";
import { kelton1998 } from "../../core/reference/kelton-1998";
import { solano2016 } from "../../core/reference/solano-2016";
import { wilson1927 } from "../../core/reference/wilson-1927";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import { defineFunction } from "../define";
import { counted, figure } from "../figure";
import {
  cowsParameter,
  FEW_COWS_EXAMINED,
  GROUP,
  lesionsParameter,
  refuseNoSound,
  remarkLeftOut,
  selectionParameter,
} from "./kinds-of-findings";

export const lesionShare = defineFunction({
  id: "LESION.SHARE",
  group: GROUP,
  summary: "Share of the cows examined that had a lesion.",
  parameters: { cows: cowsParameter, lesions: lesionsParameter, lesion: selectionParameter },
  result: { shape: "scalar", type: "number", unit: "share of cows", format: "0.0%" },
  sources: [kelton1998, wilson1927, solano2016],
  limits: [
    "Counts cows, not rows, over the rows handed over: pass the rows of one session, or read it as a share over the whole time.",
    'Sound cows must be in the rows as "none". Where only part of the herd was trimmed (under 80 %), the share comes out too high.',
  ],
  cautions: [],
  examples: [
    {
      arguments: [[[1], [2], [3], [4], [1]], [["DD"], ["none"], ["SU"], ["none"], ["DD"]], "DD"],
      result: 0.25,
      origin: "hand",
      where: "cow 1 of cows 1 to 4",
    },
    {
      arguments: [[["a"], ["b"], ["c"]], [["WLF"], ["WLA"], ["none"]], "WL"],
      result: 2 / 3,
      origin: "hand",
      where: "both forms of white line disease count: 2 of 3 cows",
    },
  ],
  compute(args, remarks) {
    const { affected, examined, leftOut } = countedCows(args);
    remarkLeftOut(remarks, leftOut, 'no cow or no lesion ("none" is the word for a sound cow)');
    if (examined < FEW_COWS_EXAMINED) remarks.add(`Only ${counted(examined, "cow")} examined: a small number`);
    return affected / examined;
  },
  steps(args, share) {
    const { affected, examined, sound } = countedCows(args);
    const { low, high } = wilsonInterval(affected, examined, USUAL_LEVEL);
    return [
      { label: "Cows examined", working: `${sound} of them recorded sound`, value: String(examined) },
      { label: args.lesion.title, working: "cows with it", value: String(affected) },
      { label: "Share", working: `${affected} / ${examined}`, value: `${figure(100 * Number(share), 1)} %` },
      { label: "95 % limits", working: "Wilson", value: `${figure(100 * low, 1)} to ${figure(100 * high, 1)} %` },
    ];
  },
});

function countedCows({ cows, lesions, lesion }: Arguments): ReturnType<typeof affectedCows> {
  const counts = affectedCows(cows.values, lesions.values, lesion);
  refuseNoSound(counts.sound);
  return counts;
}

interface Arguments {
  readonly cows: { readonly values: readonly (string | null)[] };
  readonly lesions: { readonly values: readonly (string | null)[] };
  readonly lesion: Parameters<typeof affectedCows>[2];
}
