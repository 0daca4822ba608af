import { aftercareJobs } from "../../../src/core/claws/aftercare";
import { statedLengths } from "../../../src/core/claws/stated-lengths";
import { treatmentOf } from "../../../src/core/claws/treatment-words";

test.each([
  ["trim, block on inner claw 21 d, pain relief 2 d", { blockOffDays: 21, painReliefDays: 2 }],
  ["topical 2 times every 3 d, bandage 48 h", { topicalTreatments: 2, topicalRepeatDays: 3, bandageOffHours: 48 }],
  ["Pain relief, 3 d", {}],
  ["block, pain relief 3 days", { painReliefDays: 3 }],
  ["bandage 2 d", {}],
  ["block 900 d", {}],
  ["block 0 d", {}],
  ["block 1 d", { blockOffDays: 1 }],
  ["block 42 d", { blockOffDays: 42 }],
  ["block 43 d", {}],
  ["no block", {}],
  ["", {}],
])("%j states %j", (text, expected) => {
  expect(statedLengths(text)).toEqual(expected);
});

test("a length stated takes the place of the rule's", () => {
  const rule = { lesion: "SU", firstRecheckDays: 7, blockCheckDays: 14, blockOffDays: 28, painReliefDays: 3 };
  const text = "trim, block on inner claw 21 d, pain relief 2 d";
  const jobs = aftercareJobs({ ...rule, ...statedLengths(text) }, treatmentOf(text));
  expect(jobs.map(({ what, afterDays }) => `${afterDays} ${what}`)).toEqual([
    "1 last day of pain relief",
    "7 first recheck",
    "14 look at the block",
    "21 take the block off",
  ]);
});
