import { day } from "../../../src/core/shared/days";
import { recheckList } from "../../../src/functions/claws/recheck-list";
import { evaluate } from "../../../src/functions/evaluate";

/** A machine at other work may be so many times slower than the figure asked for. */
const PATIENCE = 3;

const today = day("2024-06-30");

interface Finding {
  readonly cow?: unknown;
  readonly foot?: unknown;
  readonly lesion?: unknown;
  readonly daysAgo?: number;
  readonly treatment?: unknown;
  readonly closed?: unknown;
  readonly seenDaysAgo?: number;
  readonly nextInDays?: number;
}

const column = (values: unknown[]) => values.map((value) => [value ?? null]);

function run(findings: Finding[], rules: unknown = null, daysAhead: unknown = 0) {
  return evaluate(recheckList, [
    column(findings.map(({ cow = "A" }) => cow)),
    column(findings.map(({ foot = "LH" }) => foot)),
    column(findings.map(({ lesion }) => lesion)),
    column(findings.map(({ daysAgo }) => (daysAgo === undefined ? null : today - daysAgo))),
    column(findings.map(({ treatment }) => treatment)),
    column(findings.map(({ closed }) => closed)),
    today,
    rules,
    daysAhead,
    column(findings.map(({ seenDaysAgo }) => (seenDaysAgo === undefined ? null : today - seenDaysAgo))),
    column(findings.map(({ nextInDays }) => (nextInDays === undefined ? null : today + nextInDays))),
  ]);
}
const rows = (...args: Parameters<typeof run>) => (run(...args).value as unknown[][]).slice(1);
const what = (...args: Parameters<typeof run>) => rows(...args).map((row) => [row[2], row[4]]);

describe("RECHECK.LIST", () => {
  test("a day after the days of a worksheet is refused", () => {
    const last = 2_958_465;
    const list = [["A"], ["LH"], ["SU"], [last], [null], [null]].map((cell) => [cell]);
    expect(() => evaluate(recheckList, [...list, last, null, 30])).toThrow("7 days on from 9999-12-31");
  });

  test.each<[number, unknown[][]]>([
    [6, []],
    [7, [["first recheck", 0]]],
    [27, [["first recheck", 20]]],
    [28, [["second recheck", 0]]],
    [35, [["third recheck", 0]]],
    [400, [["third recheck", 365]]],
  ])("a sole ulcer treated %d days ago", (daysAgo, expected) => {
    expect(what([{ lesion: "SU", daysAgo }])).toEqual(expected);
  });

  test.each<[number, unknown[][]]>([
    [13, []],
    [14, [["look at the block", 0]]],
    [27, [["look at the block", 13]]],
    [28, [["take the block off", 0]]],
    [300, [["take the block off", 272]]],
  ])("a block put on %d days ago is listed until the finding is closed", (daysAgo, expected) => {
    expect(what([{ daysAgo, treatment: "block" }])).toEqual(expected);
  });

  test.each<[number, unknown[][]]>([
    [0, [["last day of pain relief", -2]]],
    [2, [["last day of pain relief", 0]]],
    [3, []],
  ])("pain relief begun %d days ago is not asked for after its last day", (daysAgo, expected) => {
    expect(what([{ daysAgo, treatment: "pain relief" }], null, 2)).toEqual(expected);
  });

  test.each<[number, unknown[][]]>([
    [1, [["take the bandage off", 0]]],
    [6, [["take the bandage off", 5]]],
    [7, [["first recheck", 0]]],
  ])("a bandage put on %d days ago is listed until the foot is looked at again", (daysAgo, expected) => {
    expect(what([{ lesion: "DD", daysAgo, treatment: "bandage" }])).toEqual(expected);
  });

  test("a bandage without any recheck to come stays listed", () => {
    expect(what([{ daysAgo: 90, treatment: "bandage" }])).toEqual([["take the bandage off", 89]]);
  });

  test("a topical treatment that was missed is not made up for after a later recheck", () => {
    expect(what([{ lesion: "DD", daysAgo: 20, treatment: "spray" }])).toEqual([
      ["second recheck", 6],
      ["topical treatment 3 of 3", 6],
    ]);
    expect(what([{ lesion: "DD", daysAgo: 21, treatment: "spray" }])).toEqual([["third recheck", 0]]);
  });

  test("looks as many days ahead as asked, the last of them included", () => {
    expect(what([{ lesion: "SU", daysAgo: 0 }], null, 6)).toEqual([]);
    expect(what([{ lesion: "SU", daysAgo: 0 }], null, 7)).toEqual([["first recheck", -7]]);
    expect(what([{ lesion: "SU", daysAgo: 0 }], null, null)).toEqual([["first recheck", -7]]);
  });

  test("the longest overdue first, and rows of one day in the order of the findings", () => {
    const findings = [
      { cow: "A", lesion: "SU", daysAgo: 7 },
      { cow: "B", lesion: "IP", daysAgo: 20 },
      { cow: "C", lesion: "DD", daysAgo: 7 },
    ];
    expect(rows(findings).map(([cow]) => cow)).toEqual(["B", "A", "C"]);
  });

  test("closed findings, sound cows and blank rows are not listed", () => {
    const findings = [
      { lesion: "SU", daysAgo: 10, closed: today },
      { lesion: "none", daysAgo: 10 },
      { cow: null, foot: null },
    ];
    expect(rows(findings)).toEqual([]);
  });

  test("what has no rule, no day or no cow is counted in the last rows", () => {
    const findings = [
      { lesion: "HHE", daysAgo: 1 },
      { lesion: "HHE", daysAgo: 2 },
      { lesion: "TN", daysAgo: 2 },
      { lesion: "SU" },
      { cow: null, lesion: "SU", daysAgo: 9 },
    ];
    expect(rows(findings)).toEqual([
      ["", "", "2 findings of HHE without a recheck: no row in rules", "", ""],
      ["", "", "1 finding of TN without a recheck: no row in rules", "", ""],
      ["", "", "1 finding without a day of treatment", "", ""],
      ["", "", "1 finding without a cow", "", ""],
    ]);
  });

  test("a rules row without days says that a lesion is not rechecked", () => {
    const rules = [
      ["Lesion", "First recheck"],
      ["HHE", ""],
      ["SU", 9],
    ];
    expect(
      what(
        [
          { lesion: "HHE", daysAgo: 40 },
          { lesion: "SU", daysAgo: 9 },
        ],
        rules,
      ),
    ).toEqual([["first recheck", 0]]);
  });

  test("a look does what was due up to its day, and leaves the block and later rechecks", () => {
    const seen = { lesion: "SU", daysAgo: 29, treatment: "block", seenDaysAgo: 15 };
    expect(what([seen])).toEqual([
      ["second recheck", 1],
      ["take the block off", 1],
    ]);
    expect(what([{ ...seen, seenDaysAgo: 16 }])).toEqual(what([seen]));
    expect(what([{ ...seen, daysAgo: 20, seenDaysAgo: 7 }])).toEqual([["look at the block", 6]]);
    expect(what([{ ...seen, seenDaysAgo: 1 }])).toEqual([]);
  });

  test("a day set for the next look takes the place of the rule's rechecks, not of the block", () => {
    const seen = { lesion: "SU", daysAgo: 29, treatment: "block", seenDaysAgo: 10 };
    expect(what([{ ...seen, nextInDays: 2 }], null, 7)).toEqual([
      ["take the block off", 1],
      ["next look", -2],
    ]);
    expect(what([{ lesion: "HHE", daysAgo: 40, nextInDays: -3 }])).toEqual([["next look", 3]]);
  });

  test("a finding may be seen again and closed on the day it was treated", () => {
    expect(what([{ lesion: "SU", daysAgo: 7, seenDaysAgo: 7 }])).toEqual([["first recheck", 0]]);
    expect(what([{ lesion: "SU", daysAgo: 7, closed: today - 7 }])).toEqual([]);
  });

  test("a next look may be set for the day of treatment itself, and one set for before it is none", () => {
    expect(what([{ lesion: "HHE", daysAgo: 3, nextInDays: -3 }])).toEqual([["next look", 3]]);
    expect(what([{ lesion: "SU", daysAgo: 7, nextInDays: -8 }])).toEqual([["first recheck", 0]]);
  });

  test("a block left to look at is a look left; a bandage is none", () => {
    const seen = { lesion: "SU", daysAgo: 40, seenDaysAgo: 39 };
    const unsaid = "1 finding seen again without a next look";
    const rules = [["Lesion", "First recheck"], ["SU", 1]]; // oxfmt-ignore
    expect(rows([{ ...seen, treatment: "block" }], rules, 0).map((row) => row[2])).not.toContain(unsaid);
    expect(rows([{ ...seen, treatment: "bandage 48 h" }], rules, 0).map((row) => row[2])).toContain(unsaid);
  });

  test("each pair of lesion and treatment has its own work", () => {
    const findings = [
      { cow: "A", lesion: "SU", daysAgo: 7, treatment: "bandage" },
      { cow: "B", lesion: "IP", daysAgo: 7, treatment: "spray" },
      { cow: "C", lesion: "SU", daysAgo: 7, treatment: "spray" },
      { cow: "D", lesion: "IP", daysAgo: 7, treatment: "bandage" },
      { cow: "E", lesion: "IP", daysAgo: 7 },
      { cow: "F", lesion: "DD", daysAgo: 7 },
    ];
    const together = rows(findings, null, 3);
    expect(together.length).toBeGreaterThan(findings.length - 1);
    const alone = findings.flatMap((finding) => rows([finding], null, 3));
    const text = (list: readonly unknown[]) => list.map((row) => JSON.stringify(row)).sort();
    expect(text(together)).toEqual(text(alone));
  });

  test("once the look that was set has been done, the rule's days stand again", () => {
    expect(what([{ lesion: "SU", daysAgo: 29, seenDaysAgo: 3, nextInDays: -3 }])).toEqual([["second recheck", 1]]);
  });

  test("an open finding without any look left is counted, not dropped unsaid", () => {
    expect(rows([{ lesion: "SU", daysAgo: 60, seenDaysAgo: 10 }])).toEqual([
      ["", "", "1 finding seen again without a next look", "", ""],
    ]);
    expect(rows([{ lesion: "HHE", daysAgo: 60, seenDaysAgo: 10 }])).toEqual([
      ["", "", "1 finding of HHE without a recheck: no row in rules", "", ""],
    ]);
  });

  test.each<[string, Finding, RegExp]>([
    [
      "seen again after today",
      { lesion: "SU", daysAgo: 3, seenDaysAgo: -1 },
      /^seenAgainOn row 2 must be no later than today .*got 2024-07-01$/,
    ],
    [
      "seen again before it was treated",
      { lesion: "SU", daysAgo: 3, seenDaysAgo: 4 },
      /^seenAgainOn row 2 must be no earlier than treatedOn \(2024-06-27\); got 2024-06-26$/,
    ],
    [
      "treated after today",
      { lesion: "SU", daysAgo: -1 },
      /^treatedOn row 2 must be no later than today \(2024-06-30\); got 2024-07-01$/,
    ],
    [
      "closed after today",
      { lesion: "SU", daysAgo: 3, closed: today + 1 },
      /^closedOn row 2 must be no later than today .*got 2024-07-01$/,
    ],
    [
      "closed before it was treated",
      { lesion: "SU", daysAgo: 3, closed: today - 4 },
      /^closedOn row 2 must be no earlier than treatedOn \(2024-06-27\); got 2024-06-26$/,
    ],
    ["an unknown lesion", { lesion: "XQ", daysAgo: 3 }, /lesions row 2 .*"XQ"/],
    ["an unknown foot", { lesion: "SU", daysAgo: 3, foot: "fifth" }, /feet row 2 .*"fifth"/],
  ])("refuses a finding %s and names its row", (_, finding, message) => {
    expect(() => run([{ lesion: "SU", daysAgo: 1 }, finding])).toThrow(message);
  });

  test("100,000 findings take well under a second", () => {
    const codes = ["SU", "WL", "DD", "none", "HHE", "SH"];
    const findings = Array.from({ length: 100_000 }, (_, row) => ({
      cow: row % 500,
      lesion: codes[row % codes.length],
      daysAgo: row % 700,
      treatment: row % 2 === 0 ? "block, pain relief" : "bandage and spray",
      closed: row % 3 === 0 ? today : null,
    }));
    const times = [1, 2, 3].map(() => {
      const started = performance.now();
      expect(rows(findings, null, 7).length).toBeGreaterThan(50_000);
      return performance.now() - started;
    });
    expect(Math.min(...times)).toBeLessThan(1000 * PATIENCE);
  });
});
