import { NEW_CASE, REPEAT } from "../../core/claws/new-cases";
import { defineFunction, required } from "../define";
import { counted } from "../figure";
import { lesionsAsWritten } from "./kinds";
import {
  cowsParameter,
  datesParameter,
  feetParameter,
  gapLimits,
  gapParameter,
  gapSource,
  gapText,
  GROUP,
  lesionsStep,
  markedRows,
  refuseNoFindings,
  remarkRows,
} from "./kinds-of-findings";

/** Three rows shared by all cells of the result, so that a very long one costs one place a row. */
const NEW_ROW = [1] as const;
const REPEAT_ROW = [0] as const;
const EMPTY_ROW = [""] as const;

export const lesionNewcase = defineFunction({
  id: "LESION.NEWCASE",
  group: GROUP,
  summary: "Marks each finding as a new case (1) or a repeat (0); empty where a row is no case.",
  parameters: {
    cows: cowsParameter,
    feet: feetParameter,
    lesions: required(lesionsAsWritten, 'Lesion of each row, by code or name; "none" for a sound cow'),
    dates: datesParameter,
    gapDays: gapParameter,
  },
  result: { shape: "column", type: "number", format: "0" },
  sources: [gapSource],
  limits: [...gapLimits, "Rows may stand in any order; of two rows of one day the upper one is the case."],
  cautions: [],
  examples: [
    {
      arguments: [
        [[114], [114], [114], [114], [27]],
        [["LH"], ["LH"], ["LH"], ["RH"], ["LH"]],
        [["SU"], ["SU"], ["BU"], ["SU"], ["none"]],
        [[45_342], [45_370], [45_399], [45_342], [45_342]],
      ],
      result: [[1], [0], [1], [1], [""]],
      origin: "hand",
      where:
        "28 days after: repeat; 29 days after that record: new (a bulb ulcer is an ulcer too); the other foot: new",
    },
    {
      arguments: [
        [[5], [5], [5]],
        [["RH"], ["RH"], ["RH"]],
        [["DD"], ["DD"], ["DD"]],
        [[45_330], [45_300], [45_315]],
        14,
      ],
      result: [[1], [1], [1]],
      origin: "hand",
      where: "in order of date 15 and 15 days apart, more than 14",
    },
  ],
  compute(args, remarks) {
    const rows = markedRows(args);
    refuseNoFindings(rows.tally, "lesions");
    remarkRows(remarks, rows.tally, args.gapDays);
    const result = new Array<typeof NEW_ROW | typeof REPEAT_ROW | typeof EMPTY_ROW>(rows.marks.length);
    for (let row = 0; row < result.length; row++) {
      const mark = rows.marks[row];
      result[row] = mark === NEW_CASE ? NEW_ROW : mark === REPEAT ? REPEAT_ROW : EMPTY_ROW;
    }
    return result;
  },
  steps(args) {
    const { marks, tally } = markedRows(args);
    const newCases = marks.reduce((sum, mark) => sum + (mark === NEW_CASE ? 1 : 0), 0);
    return [
      { label: "Rule", working: gapText(args.gapDays), value: "" },
      lesionsStep(tally, marks.length),
      {
        label: "New cases",
        working: `${tally.used} − ${counted(tally.used - newCases, "repeat")}`,
        value: String(newCases),
      },
    ];
  },
});
