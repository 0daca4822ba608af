import { dueList, type DueList } from "../../core/claws/due-list";
import { defaultRecheckRules, phlegmonPractice, type RecheckRule, ruleFor } from "../../core/claws/recheck-rules";
import { bandagePractice, blockPractice, painReliefPractice, topicalPractice } from "../../core/claws/standard-care";
import { klawitter2019 } from "../../core/reference/klawitter-2019";
import { thomas2015 } from "../../core/reference/thomas-2015";
import { day, type DaySerial, isoDate } from "../../core/shared/days";
import { AS_PRESCRIBED, VETERINARIAN } from "../cautions";
import type { CellValue } from "../cell";
import { type Column, wholeNumbersOf, wordsOf } from "../columns";
import { defineFunction, optional, required, withDefault } from "../define";
import { counted } from "../figure";
import { date, number } from "../scalars";
import { cows, dates, feet, lesions } from "./kinds";
import { BUILT_IN_RULES, LONGEST_RECHECK_DAYS, recheckRules, treatments } from "./kinds-of-care";

const HEADINGS: readonly CellValue[] = ["Cow", "Foot", "What to do", "Due", "Days over"];
const DAYS_AHEAD = 7;

const daysAheadKind = number({
  unit: "days",
  min: 0,
  max: LONGEST_RECHECK_DAYS,
  whole: true,
  reason: "no recheck lies further ahead",
});

interface ListArguments {
  readonly cows: Column<string>;
  readonly feet: Column<string>;
  readonly lesions: Column<string>;
  readonly treatedOn: Column<DaySerial>;
  readonly treatments: Column<string>;
  readonly closedOn: Column<DaySerial>;
  readonly today: DaySerial;
  readonly rules: readonly RecheckRule[] | undefined;
  readonly daysAhead: number;
  readonly seenAgainOn: Column<DaySerial> | undefined;
  readonly nextLookOn: Column<DaySerial> | undefined;
}

function listOf({ rules, ...args }: ListArguments): DueList {
  return dueList(
    {
      cows: wordsOf(args.cows),
      lesions: wordsOf(args.lesions),
      treatedOn: wholeNumbersOf(args.treatedOn),
      treatments: wordsOf(args.treatments),
      closedOn: wholeNumbersOf(args.closedOn),
      seenAgainOn: args.seenAgainOn && wholeNumbersOf(args.seenAgainOn),
      nextLookOn: args.nextLookOn && wholeNumbersOf(args.nextLookOn),
    },
    (code) => ruleFor(rules ?? defaultRecheckRules, code),
    args.today,
    args.daysAhead,
  );
}

/** What the list cannot place on a day, in words, so that nothing is dropped unsaid. */
function leftOver({ withoutRule, withoutDate, withoutCow, withoutNextLook }: DueList): string[] {
  return [
    ...[...withoutRule].map(
      ([code, count]) => `${counted(count, "finding")} of ${code} without a recheck: no row in rules`,
    ),
    ...(withoutNextLook > 0 ? [`${counted(withoutNextLook, "finding")} seen again without a next look`] : []),
    ...(withoutDate > 0 ? [`${counted(withoutDate, "finding")} without a day of treatment`] : []),
    ...(withoutCow > 0 ? [`${counted(withoutCow, "finding")} without a cow`] : []),
  ];
}

const day20 = day("2024-02-20");

export const recheckList = defineFunction({
  id: "RECHECK.LIST",
  group: "Rechecks and treatment dates",
  summary: "What is due on all open findings, the longest overdue first.",
  parameters: {
    cows: required(cows, "Cow of each finding"),
    feet: required(feet, "Foot of each finding"),
    lesions: required(lesions, "What was found"),
    treatedOn: required(dates, "Day of treatment of each finding"),
    treatments: required(treatments, "What was done, in words: block, pain relief, bandage, topical"),
    closedOn: required(dates, "Day on which the finding was closed; blank while it is open"),
    today: required(date(), "Today, from the cell of the sheet that holds it"),
    rules: optional(recheckRules, "Recheck rules of the farm", BUILT_IN_RULES),
    daysAhead: withDefault(daysAheadKind, "Days ahead that are listed too", DAYS_AHEAD, "7 days"),
    seenAgainOn: optional(dates, "Day of the last look since treatment that left the finding open", "not seen again"),
    nextLookOn: optional(dates, "Day set at that look for the next one", "the days of the rules"),
  },
  result: {
    shape: "table",
    columns: [
      { heading: "Cow", type: "text" },
      { heading: "Foot", type: "text" },
      { heading: "What to do", type: "text" },
      { heading: "Due", type: "date", format: "yyyy-mm-dd" },
      { heading: "Days over", type: "number", unit: "days", format: "0" },
    ],
  },
  sources: [
    thomas2015,
    klawitter2019,
    phlegmonPractice,
    blockPractice,
    bandagePractice,
    painReliefPractice,
    topicalPractice,
  ],
  limits: [
    "Of each kind of work a finding shows the last that has fallen due and those to come: a later recheck stands in for a missed one.",
    "A bandage or topical treatment is dropped once a later recheck is due, pain relief after its last day; a block stays until the finding is closed.",
    "A length stated beside its word, as in pain relief 2 d or bandage 48 h, takes the place of the rule's.",
    "A look since treatment does what was due up to its day; a day set for the next look takes the place of the rule's rechecks.",
    "Last rows without a day count the findings that have no rule, no next look, no day of treatment or no cow.",
  ],
  cautions: [AS_PRESCRIBED, VETERINARIAN],
  examples: [
    {
      arguments: [
        [[114], [27], [8], [61]],
        [["LH"], ["RH"], ["LF"], ["RH"]],
        [["SU"], ["DD"], ["none"], ["WL"]],
        [[day20], [day("2024-03-01")], [day("2024-03-01")], [day("2024-02-01")]],
        [["block"], ["bandage"], [null], [null]],
        [[null], [null], [null], [day("2024-02-29")]],
        day("2024-03-02"),
        null,
        7,
      ],
      result: [
        HEADINGS,
        ["114", "LH", "first recheck", day("2024-02-27"), 4],
        ["27", "RH", "take the bandage off", day("2024-03-02"), 0],
        ["114", "LH", "look at the block", day("2024-03-05"), -3],
        ["27", "RH", "first recheck", day("2024-03-08"), -6],
      ],
      origin: "hand",
      where: "20 February + 7 and + 14 days; 1 March + 1 and + 7 days; 27 February to 2 March 2024 are 4 days",
    },
    {
      arguments: [
        [["A"], ["B"]],
        [["LH"], ["LH"]],
        [["SU"], ["HHE"]],
        [[day20], [day20]],
        [[null], [null]],
        [[null], [null]],
        day("2024-03-20"),
        null,
        0,
      ],
      result: [
        HEADINGS,
        ["A", "LH", "second recheck", day("2024-03-19"), 1],
        ["", "", "1 finding of HHE without a recheck: no row in rules", "", ""],
      ],
      origin: "hand",
      where: "20 February + 28 days = 19 March 2024; the second recheck stands in for the first",
    },
    {
      arguments: [
        [["A"], ["B"]],
        [["LH"], ["RH"]],
        [["SU"], ["DD"]],
        [[day20], [day20]],
        [["block"], [null]],
        [[null], [null]],
        day("2024-03-20"),
        null,
        0,
        [[day("2024-03-05")], [day("2024-03-12")]],
        [[null], [day("2024-03-17")]],
      ],
      result: [
        HEADINGS,
        ["B", "RH", "next look", day("2024-03-17"), 3],
        ["A", "LH", "second recheck", day("2024-03-19"), 1],
        ["A", "LH", "take the block off", day("2024-03-19"), 1],
      ],
      origin: "hand",
      where: "The look of 5 March did what 27 February and 5 March asked for; 20 February + 28 days = 19 March",
    },
  ],
  compute(args) {
    const list = listOf(args);
    const { due } = list;
    const last = leftOver(list).map((text) => ["", "", text, "", ""]);
    const result = new Array<readonly CellValue[]>(1 + due.length + last.length);
    result[0] = HEADINGS;
    for (let index = 0; index < due.length; index++) {
      const finding = due.finding(index);
      const day = due.due(index);
      const cow = args.cows.at(finding)!;
      const foot = args.feet.at(finding) ?? "";
      result[1 + index] = [cow, foot, due.job(index).what, day, args.today - day];
    }
    last.forEach((cells, index) => (result[1 + due.length + index] = cells));
    return result;
  },
  steps(args) {
    const list = listOf(args);
    let overdue = 0;
    while (overdue < list.due.length && list.due.due(overdue) < args.today) overdue++;
    const until = isoDate(args.today + args.daysAhead);
    return [
      { label: "Open findings", working: `of ${counted(args.cows.length, "row")}`, value: String(list.open) },
      { label: "Overdue", working: `due before ${isoDate(args.today)}`, value: String(overdue) },
      { label: "Today and to come", working: `due up to ${until}`, value: String(list.due.length - overdue) },
      ...leftOver(list).map((text) => ({ label: "Left over", working: text, value: "no day" })),
    ];
  },
});
