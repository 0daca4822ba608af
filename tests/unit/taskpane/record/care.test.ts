import { aftercareOf, careOf, filledCare, treatmentText } from "../../../../src/taskpane/screens/record/care";
import type { Care } from "../../../../src/taskpane/screens/record/fields";
import { blankEntry, blankFinding, type Entry, type FindingEntry } from "../../../../src/taskpane/screens/record/state";
import { clearDays, withdrawalNote } from "../../../../src/taskpane/screens/record/withdrawal";
import type { RecheckRule } from "../../../../src/core/claws/recheck-rules";
import { day, isoDate } from "../../../../src/core/shared/days";

const RULES: readonly RecheckRule[] = [
  { lesion: "U", firstRecheckDays: 7, blockCheckDays: 14, blockOffDays: 28, painReliefDays: 3 },
  { lesion: "WL", firstRecheckDays: 7 },
  { lesion: "DD", firstRecheckDays: 7, topicalRepeatDays: 7, topicalTreatments: 3, bandageOffHours: 24 },
];
const finding = (values: Partial<FindingEntry>): FindingEntry => ({
  ...blankFinding,
  foot: "LH",
  claw: "outer",
  ...values,
});
/** The entry beside the rules, before the workbook is read. */
const state = (entry: Entry) => ({ entry, herd: undefined, rules: { rules: RULES } });
const filled = (values: Partial<FindingEntry>, lame?: boolean) =>
  treatmentText(filledCare(finding(values), lame, RULES));

test.each([
  ["a lame cow gets what the rule of the parent has", { lesion: "SU" }, true, "trim, block on inner claw 28 d, pain relief 3 d"],
  ["so does one that was not scored", { lesion: "SU" }, undefined, "trim, block on inner claw 28 d, pain relief 3 d"],
  ["a sound one is only trimmed", { lesion: "SU" }, false, "trim"],
  ["the block goes on the other claw", { lesion: "SU", claw: "inner" as const }, true, "trim, block on outer claw 28 d, pain relief 3 d"],
  ["a rule without a block fills none", { lesion: "WL" }, true, "trim"],
  ["toe necrosis is not cut or blocked, whatever rule its parent has", { lesion: "TN" }, true, ""],
  ["phlegmon is for the veterinarian", { lesion: "IP", claw: "between" as const }, true, ""],
  ["an active stage", { lesion: "DD", stage: "M2" }, true, "topical 3 times every 7 d, bandage 24 h"],
  ["a stage that heals", { lesion: "DD", stage: "M3" }, true, ""],
  ["a lesion that no rule names", { lesion: "CC" }, true, "trim"],
] as const)("%s", (_, values, lame, expected) => {
  expect(filled(values, lame)).toBe(expected);
}); // oxfmt-ignore

test("what the user chose stays when the rules fill in anew", () => {
  const chosen = finding({ lesion: "SU", care: { painRelief: false, blockOffDays: "21" } });
  const entry = { ...blankEntry("a"), score: "2", findings: [chosen] };
  expect(treatmentText(careOf(state(entry), chosen))).toBe("trim, block on inner claw 21 d");
  expect(treatmentText(careOf(state(entry), { ...chosen, claw: "inner" }))).toBe("trim, block on outer claw 21 d");
});

test("the dates before saving follow the lengths typed", () => {
  const chosen = finding({ lesion: "SU", care: { blockOffDays: "21", painReliefDays: "2" } });
  const care = careOf(state(blankEntry("a")), chosen);
  const jobs = aftercareOf(chosen, care, RULES).map(({ what, afterDays }) => `${isoDate(day("2024-02-20") + afterDays)} ${what}`); // oxfmt-ignore
  // 2024 has a 29 February: 20 February + 21 days is 12 March.
  expect(jobs).toEqual([
    "2024-02-21 last day of pain relief",
    "2024-02-27 first recheck",
    "2024-03-05 look at the block",
    "2024-03-12 take the block off",
  ]);
});

describe("withdrawal", () => {
  const care = (values: Partial<Care>): Care => ({ ...filledCare(blankFinding, true, RULES), ...values });
  const date = day("2024-02-24");

  test("is never given a default", () => {
    expect(clearDays(care({ painRelief: true }), date)).toEqual([]);
    expect(withdrawalNote(care({ painRelief: true }), date)).toBe("milk and meat withdrawal not entered");
    expect(withdrawalNote(care({ trim: true }), date)).toBe("");
  });

  test("counts from the last dose of the course", () => {
    // Three days from 24 February: last dose on the 26th; 96 hours from its end are over with 1 March.
    const course = care({ painRelief: true, painReliefDays: "3", drug: "Example", milkHours: "96", meatDays: "0" });
    expect(withdrawalNote(course, date)).toBe(
      "drug Example; milk withdrawal 96 h, clear 2024-03-02; meat withdrawal nil",
    );
  });

  test("is asked for one of both alone", () => {
    // Ten days from the end of 24 February are over with 5 March.
    expect(withdrawalNote(care({ topical: true, meatDays: "10" }), date)).toBe(
      "meat withdrawal 10 d, clear 2024-03-06; milk withdrawal not entered",
    );
  });
});
