import { day } from "../../../../src/core/shared/days";
import { printedRecheckRules } from "../../../../src/functions/claws/kinds-of-care";
import { recheckBandageOff } from "../../../../src/functions/claws/recheck-bandage-off";
import { recheckBlockOff } from "../../../../src/functions/claws/recheck-block-off";
import { recheckDate } from "../../../../src/functions/claws/recheck-date";
import { recheckPainRelief } from "../../../../src/functions/claws/recheck-pain-relief";
import { recheckStatus } from "../../../../src/functions/claws/recheck-status";
import { withdrawalClear } from "../../../../src/functions/claws/withdrawal-clear";
import type { FunctionSpec } from "../../../../src/functions/define";
import { refusal, told } from "../../cells/call";

type Told = ReturnType<typeof told>;
type Case = readonly [spec: FunctionSpec, args: readonly unknown[], steps: Told["steps"], remarks?: Told["remarks"]];

const farmRules = [
  ["Lesion", "First recheck (days)"],
  ["U", 1],
];
/** A time of day as a cell holds it: minutes of the 1440 of a day. */
const at = (date: string, minutes: number): number => day(date) + minutes / 1440;

// February 2024 has 29 days.
const cases: readonly Case[] = [
  [
    recheckBandageOff,
    [day("2024-02-28")],
    [
      ["Days on", "24 hours / 24, rounded down", "1 day"],
      ["Off by", "2024-02-28 + 1 day", "2024-02-29"],
    ],
  ],
  // 71 / 24 = 2.96
  [
    recheckBandageOff,
    [day("2024-02-28"), 71],
    [
      ["Days on", "71 hours / 24, rounded down", "2 days"],
      ["Off by", "2024-02-28 + 2 days", "2024-03-01"],
    ],
    ["71 hours is longer than the usual 24; Higginson Cutler et al. 2013 left bandages on for 2 days"],
  ],
  [
    recheckBandageOff,
    [day("2024-02-28"), 1],
    [
      ["Days on", "1 hour / 24, rounded down", "0 days"],
      ["Off by", "2024-02-28 + 0 days", "2024-02-28"],
    ],
  ],
  // 20 February + 28: nine days to the 29th, then 19.
  [
    recheckBlockOff,
    [day("2024-02-20")],
    [
      ["Look at the block", "2024-02-20 + 14 days", "2024-03-05"],
      ["Off at the latest", "2024-02-20 + 28 days", "2024-03-19"],
    ],
    ["take it off by 2024-03-19 (28 days) at the latest"],
  ],
  [
    recheckBlockOff,
    [day("2024-02-20"), 1],
    [
      ["Look at the block", "2024-02-20 + 1 day", "2024-02-21"],
      ["Off at the latest", "2024-02-20 + 28 days", "2024-03-19"],
    ],
    ["take it off by 2024-03-19 (28 days) at the latest"],
  ],
  [
    recheckBlockOff,
    [day("2024-02-20"), 28],
    [
      ["Look at the block", "2024-02-20 + 28 days", "2024-03-19"],
      ["Off at the latest", "2024-02-20 + 28 days", "2024-03-19"],
    ],
  ],
  [
    recheckBlockOff,
    [day("2024-02-20"), 29],
    [
      ["Look at the block", "2024-02-20 + 29 days", "2024-03-20"],
      ["Off at the latest", "2024-02-20 + 29 days", "2024-03-20"],
    ],
    ["29 days is longer than the 28 days after which Thomas et al. 2015 took blocks off"],
  ],
  [
    recheckDate,
    ["SU", day("2024-02-20")],
    [
      ["Rule", "SU uses the built-in row of SU", "recheck 1: 7 days"],
      ["Recheck", "2024-02-20 + 7 days", "2024-02-27"],
    ],
  ],
  [
    recheckDate,
    ["White line abscess", day("2024-02-20"), null, 2],
    [
      ["Rule", "WLA uses the built-in row of WL", "recheck 2: 28 days"],
      ["Recheck", "2024-02-20 + 28 days", "2024-03-19"],
    ],
  ],
  [
    recheckDate,
    ["TU", day("2024-12-31"), farmRules],
    [
      ["Rule", "TU uses the farm's row of U", "recheck 1: 1 day"],
      ["Recheck", "2024-12-31 + 1 day", "2025-01-01"],
    ],
  ],
  [recheckPainRelief, [day("2024-02-27")], [["Last day", "2024-02-27 is day 1 of 3", "2024-02-29"]]],
  [
    recheckPainRelief,
    [day("2024-02-27"), 4],
    [["Last day", "2024-02-27 is day 1 of 4", "2024-03-01"]],
    ["4 days is longer than the usual two to three: only as prescribed"],
  ],
  [recheckPainRelief, [day("2024-02-27"), 1], [["Last day", "2024-02-27 is day 1 of 1", "2024-02-27"]]],
  [
    recheckStatus,
    [day("2024-02-27"), null, day("2024-03-01")],
    [["Status", "due 2024-02-27, open, today 2024-03-01", "overdue 3 d"]],
  ],
  [
    recheckStatus,
    [day("2024-02-27"), day("2024-03-01"), day("2024-03-01")],
    [["Status", "due 2024-02-27, done 2024-03-01", "done"]],
  ],
  // Seven days early says nothing, eight do; today may be left out once it is done.
  [recheckStatus, [day("2024-02-27"), day("2024-02-20")], [["Status", "due 2024-02-27, done 2024-02-20", "done"]]],
  [
    recheckStatus,
    [day("2024-02-27"), day("2024-02-19")],
    [["Status", "due 2024-02-27, done 2024-02-19", "done"]],
    ["done 8 days before it was due: check that the day belongs to this recheck"],
  ],
  // 26 February ends with it; 96 hours are four days, the last of them 1 March.
  [
    withdrawalClear,
    [day("2024-02-26"), 96],
    [
      ["Counted from", "no time of day: the end of the day", "2024-02-26"],
      ["Period", "96 hours / 24", "4 days"],
      ["First whole day after it", "rounded up to a whole day", "2024-03-02"],
    ],
  ],
  // 08:20 is minute 500; 24 hours later it is 08:20 of the 27th.
  [
    withdrawalClear,
    [at("2024-02-26", 500), 24],
    [
      ["Counted from", "the time of day given", "2024-02-26 08:20"],
      ["Period", "24 hours / 24", "1 day"],
      ["First whole day after it", "rounded up to a whole day", "2024-02-28"],
    ],
  ],
  // 23:59 + 12 hours = 11:59 of the 27th.
  [
    withdrawalClear,
    [at("2024-02-26", 1439), 12],
    [
      ["Counted from", "the time of day given", "2024-02-26 23:59"],
      ["Period", "12 hours / 24", "0.5 days"],
      ["First whole day after it", "rounded up to a whole day", "2024-02-28"],
    ],
  ],
];

test.each(cases.map((one) => [one[0].id, one] as const))(
  "the working of %s",
  (_, [spec, args, steps, remarks = []]) => {
    expect(told(spec, ...args)).toEqual({ steps, remarks });
  },
);

const day20 = day("2024-02-20");
const refused: readonly (readonly [FunctionSpec, readonly unknown[], kind: string, message: string])[] = [
  [
    recheckBandageOff,
    [day20, 241],
    "invalid",
    "hours must be a number from 1 to 240 hours (no published trial left a dressing longer than ten days); got 241",
  ],
  [
    recheckBlockOff,
    [day20, 43],
    "invalid",
    "days must be a whole number from 1 to 42 days (no guide leaves a block longer than six weeks); got 43",
  ],
  [
    recheckPainRelief,
    [day20, 15],
    "invalid",
    "days must be a whole number from 1 to 14 days (a longer course is for the veterinarian); got 15",
  ],
  [recheckDate, ["BU", day20], "unavailable", "no source gives a recheck for BU: pass a rules table with a row for it"],
  [
    recheckDate,
    ["TN", day20],
    "unavailable",
    "toe necrosis is for the veterinarian now; no source gives a recheck for TN: pass a rules table with a row for it",
  ],
  [
    recheckDate,
    [
      "TN",
      day20,
      [
        ["Lesion", "Recheck"],
        ["DD", 7],
      ],
    ],
    "unavailable",
    "toe necrosis is for the veterinarian now; rules must have a row for TN; it has DD",
  ],
  [recheckDate, ["DD", day20, farmRules], "unavailable", "rules must have a row for DD; it has U"],
  [recheckDate, ["none", day20], "unavailable", "lesion says that nothing was found: there is nothing to recheck"],
  [
    recheckStatus,
    [day("2024-02-27"), day("2024-03-02"), day("2024-03-01")],
    "invalid",
    "doneOn must be no later than today (2024-03-01); got 2024-03-02",
  ],
  [recheckStatus, [day("2024-02-27")], "unavailable", "today is blank: enter today's date"],
  [
    withdrawalClear,
    [day20, 13],
    "invalid",
    "hours must be a multiple of 12 hours, as labels give days or milkings (days × 24; round anything else up); got 13",
  ],
];

test.each(refused.map((one) => [one[0].id, one] as const))(
  "HERD.%s says what is wrong",
  (_, [spec, args, kind, message]) => {
    expect(refusal(spec, ...args)).toEqual({ kind, message });
  },
);

test("the printed rules name their source, or say that there is none", () => {
  const basis = Object.fromEntries(printedRecheckRules().map((row) => [row[0], row.at(-1)]));
  expect(basis).toEqual({
    Lesion: "Basis",
    SU: "Thomas et al. 2015",
    SH: "Thomas et al. 2015",
    WL: "Thomas et al. 2015",
    DD: "Klawitter et al. 2019",
    IP: "Common practice, no source: interdigital phlegmon is looked at 3 to 5 days after treatment; one that has not answered goes to the veterinarian",
  });
});
