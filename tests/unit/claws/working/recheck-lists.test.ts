import { day } from "../../../../src/core/shared/days";
import { recheckList } from "../../../../src/functions/claws/recheck-list";
import { recheckPlan } from "../../../../src/functions/claws/recheck-plan";
import { told } from "../../cells/call";

const day20 = day("2024-02-20");
const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

// February 2024 has 29 days: 20 February + 7 = 27 February, + 14 = 5 March, + 28 = 19 March, + 35 = 26 March.
const THREE_RECHECKS = [
  ["first recheck", "2024-02-20 + 7 days", "2024-02-27"],
  ["second recheck", "2024-02-20 + 28 days", "2024-03-19"],
  ["third recheck", "2024-02-20 + 35 days", "2024-03-26"],
];

describe("the working of RECHECK.PLAN", () => {
  test("each job with the days it counts", () => {
    const [first, second, third] = THREE_RECHECKS;
    expect(told(recheckPlan, "SU", day20, "block, pain relief")).toEqual({
      steps: [
        ["Rule", "SU, built-in rules", "SU"],
        ["Treatment read as", "block, pain relief", "block, pain relief"],
        ["last day of pain relief", "2024-02-20 + 2 days", "2024-02-22"],
        first,
        ["look at the block", "2024-02-20 + 14 days", "2024-03-05"],
        second,
        ["take the block off", "2024-02-20 + 28 days", "2024-03-19"],
        third,
      ],
      remarks: [],
    });
  });

  test.each([undefined, null, ""])("a form by the row of its parent, with the treatment left out as %p", (blank) => {
    expect(told(recheckPlan, "WLA", day20, blank).steps).toEqual([
      ["Rule", "WLA, built-in rules", "WL"],
      ["Treatment read as", "left out", "nothing to follow up"],
      ...THREE_RECHECKS,
    ]);
  });

  test("a lesion without a rule is left over", () => {
    expect(told(recheckPlan, "HHE", day20, "wrap, spray").steps).toEqual([
      ["Rule", "HHE, built-in rules", "none"],
      ["Treatment read as", "wrap, spray", "bandage, topical"],
      ["take the bandage off", "2024-02-20 + 1 day", "2024-02-21"],
      ["Left over", "no recheck rule for HHE: add a row to rules", "no day"],
    ]);
  });

  test("the farm's rules", () => {
    const rules = [
      ["Lesion", "First recheck (days)"],
      ["U", 1],
    ];
    expect(told(recheckPlan, "TU", day20, "washed", rules).steps).toEqual([
      ["Rule", "TU, the farm's rules", "U"],
      ["Treatment read as", "washed", "nothing to follow up"],
      ["first recheck", "2024-02-20 + 1 day", "2024-02-21"],
    ]);
  });

  test("a sound foot has no rule, and needs none", () => {
    expect(told(recheckPlan, "none", day20, "pain relief 1 d").steps).toEqual([
      ["Rule", "none, built-in rules", "none"],
      ["Treatment read as", "pain relief 1 d", "pain relief"],
      ["last day of pain relief", "2024-02-20 + 0 days", "2024-02-20"],
    ]);
  });
});

describe("the working of RECHECK.LIST", () => {
  const list = (rows: readonly (readonly unknown[])[], today: string, ...more: unknown[]): string[][] => {
    const [cows, lesions, treatedOn, closedOn, seenAgainOn] = [0, 1, 2, 3, 4].map((place) =>
      column(...rows.map((row) => row[place] ?? null)),
    );
    const feet = rows.map(() => ["LH"]);
    const nothing = rows.map(() => [null]);
    return told(recheckList, cows, feet, lesions, treatedOn, nothing, closedOn, day(today), null, ...more, seenAgainOn)
      .steps;
  };

  test("what is overdue, what comes up to the last day, and what has no day", () => {
    const rows = [
      // Due on 27 February, then not before 19 March.
      ["A", "SU", day20],
      // Due on 2, 9 and 16 March.
      ["B", "DD", day("2024-02-24")],
      ["C", "HHE", day20],
      ["D", "HHE", day20],
      ["E", "SU", null],
      [null, "SU", day20],
      [null, "SU", day20],
      // Closed.
      ["F", "SU", day20, day("2024-03-01")],
      // The one recheck, on 23 February, was done.
      ["G", "IP", day20, null, day("2024-02-24")],
      ["H", "none", day20],
    ];
    // Open with a cow and a day: A, B, C, D and G. Seven days ahead are up to 9 March: B is due twice by then.
    expect(list(rows, "2024-03-02", null)).toEqual([
      ["Open findings", "of 10 rows", "5"],
      ["Overdue", "due before 2024-03-02", "1"],
      ["Today and to come", "due up to 2024-03-09", "2"],
      ["Left over", "2 findings of HHE without a recheck: no row in rules", "no day"],
      ["Left over", "1 finding seen again without a next look", "no day"],
      ["Left over", "1 finding without a day of treatment", "no day"],
      ["Left over", "2 findings without a cow", "no day"],
    ]);
  });

  test.each([
    ["one row that is overdue", "2024-02-28", "1", "0"],
    ["one row that is due today", "2024-02-27", "0", "1"],
    ["one row that is not due yet", "2024-02-26", "0", "0"],
  ])("%s", (_, today, overdue, toCome) => {
    expect(list([["A", "SU", day20]], today, 0)).toEqual([
      ["Open findings", "of 1 row", "1"],
      ["Overdue", `due before ${today}`, overdue],
      ["Today and to come", `due up to ${today}`, toCome],
    ]);
  });
});
