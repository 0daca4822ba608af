import { affectedByGroup, type GroupShare } from "../../core/claws/lesion-by-group";
import { kelton1998 } from "../../core/reference/kelton-1998";
import { randall2016 } from "../../core/reference/randall-2016";
import { wilson1927 } from "../../core/reference/wilson-1927";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import { columnOf, numbersOf } from "../columns";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import {
  cowsParameter,
  GROUP,
  lesionsParameter,
  refuseNoSound,
  remarkLeftOut,
  selectionParameter,
} from "./kinds-of-findings";
import { lactation } from "./kinds-of-trimming";

const share = (heading: string) => ({ heading, type: "number", format: "0.0%" }) as const;
const count = (heading: string) => ({ heading, type: "number", unit: "cows", format: "0" }) as const;
const columns = [
  { heading: "Group", type: "text" } as const,
  count("Examined"),
  count("Affected"),
  share("Share"),
  share("Low"),
  share("High"),
];
const headings = columns.map(({ heading }) => heading);

export const lesionBygroup = defineFunction({
  id: "LESION.BYGROUP",
  group: GROUP,
  summary: "Share of cows with a lesion among heifers, cows in first lactation, and later ones.",
  parameters: {
    cows: cowsParameter,
    lesions: lesionsParameter,
    lactations: required(
      columnOf(lactation, { notes: "refuse" }),
      'Lactation of each row; "heifer" before the first calving (a 0 is read as a blank)',
    ),
    lesion: selectionParameter,
  },
  result: { shape: "table", columns },
  sources: [kelton1998, wilson1927, randall2016],
  limits: [
    "Low and high are Wilson 95 % limits; groups whose limits overlap much may differ by chance.",
    "Cows examined only because they were lame, or only part of a group, make its share too high.",
    "A cow with rows in two groups counts in both.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [
        [[1], [2], [3], [4], [5], [6]],
        [["DD"], ["none"], ["DD"], ["none"], ["SU"], ["DD"]],
        [["heifer"], ["heifer"], [1], [1], [3], [null]],
        "DD",
      ],
      result: [
        headings,
        ["heifers", 2, 1, 0.5, 0.0945, 0.9055],
        ["first lactation", 2, 1, 0.5, 0.0945, 0.9055],
        ["second and later", 1, 0, 0, 0, 0.7935],
        ["lactation not given", 1, 1, 1, 0.2065, 1],
      ],
      decimals: 4,
      origin: "oracle",
      where: 'counts by hand; limits by R 4.2.2 with epiR 2.0.57, epi.conf(method = "wilson")',
    },
    {
      arguments: [[[1], [2]], [["WLF"], ["none"]], [[2], [2]], "WL"],
      result: [
        headings,
        ["heifers", 0, 0, "", "", ""],
        ["first lactation", 0, 0, "", "", ""],
        ["second and later", 2, 1, 0.5, 0.0945, 0.9055],
      ],
      decimals: 4,
      origin: "oracle",
      where: 'counts by hand; limits by R 4.2.2 with epiR 2.0.57, epi.conf(method = "wilson")',
    },
  ],
  compute(args, remarks) {
    const { groups, leftOut } = counted(args);
    remarkLeftOut(remarks, leftOut, 'no cow or no lesion ("none" is the word for a sound cow)');
    return [headings, ...groups.map(line)];
  },
  steps: (args) =>
    counted(args).groups.map(({ group, affected, examined }) => ({
      label: `${args.lesion.title}, ${group}`,
      working: `${affected} / ${examined}`,
      value: examined === 0 ? "no cow" : `${figure((100 * affected) / examined, 1)} %`,
    })),
});

function line({ group, affected, examined }: GroupShare): (string | number)[] {
  if (examined === 0) return [group, 0, 0, "", "", ""];
  const { low, high } = wilsonInterval(affected, examined, USUAL_LEVEL);
  return [group, examined, affected, affected / examined, low, high];
}

interface Arguments {
  readonly cows: { readonly values: readonly (string | null)[] };
  readonly lesions: { readonly values: readonly (string | null)[] };
  readonly lactations: Parameters<typeof numbersOf>[0];
  readonly lesion: Parameters<typeof affectedByGroup>[3];
}

/** The groups; the one without a lactation only where a cow is in it. */
function counted({ cows, lesions, lactations, lesion }: Arguments): { groups: GroupShare[]; leftOut: number } {
  const { groups, sound, leftOut } = affectedByGroup(cows.values, lesions.values, numbersOf(lactations), lesion);
  refuseNoSound(sound);
  return { groups: groups.filter(({ group, examined }) => group !== "lactation not given" || examined > 0), leftOut };
}
