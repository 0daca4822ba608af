import { causePatterns } from "../../core/claws/cause-patterns";
import { FEWEST_FOR_REVIEW, reviewCauses } from "../../core/claws/cause-review";
import { unavailable } from "../../core/shared/domain-error";
import type { Source } from "../../core/shared/source";
import { type Column, columnOf, numbersOf } from "../columns";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { number } from "../scalars";
import { GROUP, lesionsParameter } from "./kinds-of-findings";
import { lactation } from "./kinds-of-trimming";

const words = (heading: string) => ({ heading, type: "text" }) as const;
const columns = [
  words("Where to look"),
  words("Go and see"),
  words("Evidence"),
  { heading: "Cases", type: "number", format: "0" } as const,
  { heading: "Share of findings", type: "number", format: "0%" } as const,
  words("Note"),
  words("Source"),
];
const headings = columns.map(({ heading }) => heading);
const sources: readonly Source[] = [...new Set(causePatterns.flatMap((pattern) => pattern.sources))];

const FEW = "few cases";
const sole = "sole lesions: SU 12; zone 4: 12; second and later: 12";
const twelve = <T>(value: T): T[][] => Array.from({ length: 12 }, () => [value]);

export const causeReview = defineFunction({
  id: "CAUSE.REVIEW",
  group: GROUP,
  summary: "What to go and look at in the barn, by the pattern of the lesions: it ranks, it does not diagnose.",
  parameters: {
    lesions: lesionsParameter,
    zones: required(
      columnOf(number({ min: 0, max: 12, whole: true, reason: "zones of the claw map", zeroIsBlank: true }), {
        notes: "leave out",
      }),
      "Zone of the claw map, 1 to 12; may be blank (a 0 is read as a blank)",
    ),
    lactations: required(columnOf(lactation, { notes: "refuse" }), 'Lactation, or "heifer"; may be blank'),
    daysInMilk: required(
      columnOf(
        number({ unit: "days", min: 0, max: 1500, whole: true, reason: "days since calving", zeroIsBlank: true }),
        { notes: "leave out" },
      ),
      "Days in milk; may be blank",
    ),
  },
  result: { shape: "table", columns },
  sources,
  limits: [
    "Places with a published link to such lesions; what is wrong on this farm, only looking can tell. One finding may point to several places.",
    `Counts rows: pass new cases only. Below ${FEWEST_FOR_REVIEW} findings nothing is ranked; a row with fewer is marked.`,
    "An ulcer (U) in zone 1, 4 or 6 counts as toe, sole or bulb ulcer (zones from memory). Claw shape, swellings and horn fissures point to no place here.",
  ],
  cautions: ["Talk the causes over with the herd's veterinarian; treat lame cows first."],
  examples: [
    {
      arguments: [twelve("SU"), twelve(4), twelve(3), twelve(200)],
      result: [
        headings,
        [
          "Lying comfort",
          "bedding depth and softness, cows standing in or half in the stalls, stalls free at lying time",
          sole,
          12,
          1,
          "",
          "Barker et al. 2009; Cook & Nordlund 2009",
        ],
        [
          "Standing on concrete",
          "hours in the parlour and collecting yard, time locked up, concrete tracks and feed alleys",
          sole,
          12,
          1,
          "",
          "Barker et al. 2009",
        ],
      ],
      origin: "printed",
      where: "Barker et al. 2009: sole ulcers go with lying surface and standing; counts by hand",
    },
    {
      arguments: [
        [["DD"], ["DD"], ["none"]],
        [[10], [10], [null]],
        [[1], [2], [null]],
        [[30], [60], [null]],
      ],
      result: [headings, [`Too few findings (2): ${FEWEST_FOR_REVIEW} or more are needed`, "", "", "", "", "", ""]],
      origin: "hand",
      where: "two findings are too few",
    },
  ],
  compute(args) {
    const { findings, review } = reviewed(args);
    const only = (text: string) => [headings, headings.map((_, place) => (place === 0 ? text : ""))];
    if (findings < FEWEST_FOR_REVIEW)
      return only(`Too few findings (${findings}): ${FEWEST_FOR_REVIEW} or more are needed`);
    if (review.length === 0) return only("These lesions have no published pattern");
    return [
      headings,
      ...review.map(({ pattern, evidence, cases, share }) => [
        pattern.area,
        pattern.look,
        evidence,
        cases,
        share,
        cases < FEWEST_FOR_REVIEW ? FEW : "",
        pattern.sources.map(({ name }) => name).join("; "),
      ]),
    ];
  },
  steps(args) {
    const { findings, review } = reviewed(args);
    return [
      { label: "Findings", working: `rows with a lesion, of ${args.lesions.length}`, value: String(findings) },
      ...review.map(({ pattern, evidence, cases, share }) => ({
        label: pattern.area,
        working: evidence,
        value: `${cases} (${figure(100 * share, 0)} %)`,
      })),
    ];
  },
});

interface Arguments {
  readonly lesions: Column<string>;
  readonly zones: Column<number>;
  readonly lactations: Column<number>;
  readonly daysInMilk: Column<number>;
}

function reviewed({ lesions, zones, lactations, daysInMilk }: Arguments): ReturnType<typeof reviewCauses> {
  const review = reviewCauses({
    lesions: lesions.values,
    zones: numbersOf(zones),
    lactations: numbersOf(lactations),
    daysInMilk: numbersOf(daysInMilk),
  });
  if (lesions.values.every((lesion) => lesion === null))
    throw unavailable('lesions holds no findings: enter a code a row, or "none" for a sound cow');
  return review;
}
