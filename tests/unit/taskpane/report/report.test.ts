import { day } from "../../../../src/core/shared/days";
import { shareWords } from "../../../../src/taskpane/screens/report/changes";
import { besideNotes, duePart } from "../../../../src/taskpane/screens/report/due-part";
import { namedThings, type Report } from "../../../../src/taskpane/screens/report/report";
import { initialReportState, nextReportState } from "../../../../src/taskpane/screens/report/state";
import { type LesionFacts, type ThingFacts, thingsOf } from "../../../../src/taskpane/screens/report/things";
import { joined, sheetName, writtenWords } from "../../../../src/taskpane/screens/report/written";
import type { DueLine } from "../../../../src/taskpane/screens/due/line";

const TODAY = day("2024-03-20");

function line(cow: string, work: DueLine["work"], due: number, what = work as string): DueLine {
  const finding = { key: cow, index: 0, foot: "LH", claw: "", lesion: "SU", lesionName: "Sole ulcer", treatment: "", treatedOn: due - 7, note: "" }; // oxfmt-ignore
  const onFoot = work === "recheck" ? { finding } : {};
  return { key: `${cow} ${work} ${due}`, work, what, due, cow, place: "", remarks: [], ...onFoot };
}

const lesion = (changes: Partial<LesionFacts>): LesionFacts => ({
  code: "DD",
  newCases: 30,
  rate: 30,
  low: 20,
  high: 43,
  target: undefined,
  against: "",
  verdict: undefined,
  ...changes,
});

const NOTHING: ThingFacts = {
  day: TODAY,
  due: undefined,
  lesions: [],
  causes: [],
  rolling: undefined,
  top: undefined,
  examined: undefined,
};

describe("things to look at", () => {
  test("nothing known, nothing named", () => {
    expect(thingsOf(NOTHING)).toEqual([]);
  });

  test("lame cows come before feet overdue, the limit, lesions, cells, causes and coverage", () => {
    const things = thingsOf({
      ...NOTHING,
      due: [
        line("7", "recheck", TODAY - 12, "first recheck"),
        line("8", "lame", TODAY - 2),
        line("9", "recheck", TODAY + 1),
      ],
      lesions: [lesion({ target: 12, against: "above" })],
      causes: [
        {
          where: "Hygiene and footbath",
          look: "leg hygiene",
          evidence: "infectious lesions: DD 30; zone 10: 12",
          share: 0.5,
        },
      ],
      rolling: 410,
      top: { cows: ["1", "2"], share: 0.38, tank: 260, without: 190 },
      examined: 0.6,
    });
    expect(things.map(({ id }) => id)).toEqual(["lame", "overdue", "limit", "lesion DD", "cells", "cause", "examined"]);
    expect(things[1]!.why).toBe("The longest waits 12 days: cow 7, first recheck.");
    expect(things[1]!.title).toBe("1 look at treated feet overdue");
    expect(things[3]).toMatchObject({
      title: "Digital dermatitis above the target of 12",
      why: "30 new cases, 30.0 per 100 cow-years (20.0 to 43.0).",
      look: "Hygiene and footbath: leg hygiene.",
    });
    expect(things[4]!.why).toBe("Cows 1, 2; without them the tank would hold 190 instead of 260 thousand/mL.");
    expect(things[6]!.title).toBe("Only 60 % of the cows examined in a year");
  });

  test("a lesion is named where it became more by more than chance, and has ten cases", () => {
    const verdict = "more";
    expect(thingsOf({ ...NOTHING, lesions: [lesion({ verdict })] })).toHaveLength(1);
    expect(thingsOf({ ...NOTHING, lesions: [lesion({ verdict: "may be chance" })] })).toEqual([]);
    expect(thingsOf({ ...NOTHING, lesions: [lesion({ verdict, newCases: 9 })] })).toEqual([]);
    expect(thingsOf({ ...NOTHING, lesions: [lesion({ code: "all", verdict })] })).toEqual([]);
  });

  test.each([
    [299, undefined],
    [300, "Cell counts near the European limit"],
    [400, "Cell counts near the European limit"],
    [401, "Cell counts above the European limit"],
  ])("a rolling mean of %d: %s", (rolling, title) => {
    expect(thingsOf({ ...NOTHING, rolling })[0]?.title).toBe(title);
  });
});

test("shares that differ are called more than chance only where the limits do not touch", () => {
  const before = { value: 10, low: 5, high: 15 };
  expect(shareWords({ value: 20, low: 16, high: 25 }, before)).toBe("higher, more than chance");
  expect(shareWords({ value: 20, low: 15, high: 25 }, before)).toBe("may be chance");
  expect(shareWords({ value: 2, low: 1, high: 4 }, before)).toBe("lower, more than chance");
  expect(shareWords(before, before)).toBe("the same");
  expect(shareWords(before, undefined)).toBe("");
});

test("what is due: counts by work, severely lame cows first, then the longest overdue", () => {
  const lines = [
    line("1", "recheck", TODAY - 5),
    line("2", "lame", TODAY - 3, "lame: lift and treat"),
    line("3", "lame", TODAY - 3, "severely lame: treat today"),
    line("4", "trim", TODAY),
    line("5", "recheck", TODAY + 2),
  ];
  const part = duePart(lines, TODAY, 4);
  expect(part.counts).toEqual([
    { name: "Lame, not treated yet", overdue: 2, today: 0, ahead: 0 },
    { name: "Feet to see again", overdue: 1, today: 0, ahead: 1 },
    { name: "Routine trims", overdue: 0, today: 1, ahead: 0 },
  ]);
  expect(part.first.map(({ cow }) => cow)).toEqual(["3", "2", "1", "4"]);
  expect(part.more).toBe(1);
});

test("notes take the room of lines, four of which stay", () => {
  const part = { counts: [], first: Array.from({ length: 14 }, (_, at) => line(String(at), "trim", TODAY)), more: 3 };
  expect(besideNotes(part, " ")).toEqual(part);
  // Three lines: one short, one of 96 letters that needs two.
  expect(besideNotes(part, `short\n${"x".repeat(96)}`)).toMatchObject({ first: { length: 11 }, more: 6 });
  expect(besideNotes(part, "x\n".repeat(40))).toMatchObject({ first: { length: 4 }, more: 13 });
});

const report: Report = {
  title: "Visit report 2024-03-20",
  period: "Since the visit of 2023-12-20 (91 days), against the 91 days before that.",
  found: [{ name: "Tank estimate, thousand/mL", now: "260", before: "240", change: "up 20" }],
  lesions: [],
  things: ["a", "b", "c", "d"].map((id) => ({ id, title: id, why: "why", look: "look" })),
  noThings: "Nothing stands out.",
  due: duePart([line("1", "recheck", TODAY - 5)], TODAY, 4),
  nothingDue: "Nothing is due.",
  missing: [],
  cautions: ["Take care."],
};

describe("three things at most", () => {
  const press = (state: typeof initialReportState, id: string) =>
    nextReportState(state, { type: "thing pressed", id, report });
  const ids = (state: typeof initialReportState) => namedThings(report, state.chosen).map(({ id }) => id);

  test("the first three unless others are chosen", () => {
    expect(ids(initialReportState)).toEqual(["a", "b", "c"]);
    const without = press(initialReportState, "b");
    expect(ids(without)).toEqual(["a", "c"]);
    expect(ids(press(without, "d"))).toEqual(["a", "c", "d"]);
  });

  test("a fourth is not taken", () => {
    expect(ids(press(initialReportState, "d"))).toEqual(["a", "b", "c"]);
  });
});

describe("writing the report", () => {
  test("a name that is taken is tried with a number, and in the end given up", () => {
    let state = nextReportState(initialReportState, { type: "write pressed" });
    expect(sheetName(TODAY, state.writing!.attempt)).toBe("Visit 2024-03-20");
    state = nextReportState(state, { type: "name taken" });
    expect(sheetName(TODAY, state.writing!.attempt)).toBe("Visit 2024-03-20 2");
    for (let attempt = 0; attempt < 60; attempt++) state = nextReportState(state, { type: "name taken" });
    expect(state.writing).toBeUndefined();
    expect(state.notice).toMatchObject({ kind: "error" });
  });

  test("one thing after the other: what is being taken back is not written over", () => {
    const written = { id: "1", sheet: "Visit 2024-03-20" };
    const going = nextReportState(initialReportState, { type: "take back pressed", written });
    expect(going.takingBack).toEqual(written);
    expect(nextReportState(going, { type: "take back pressed", written })).toBe(going);
    expect(nextReportState(going, { type: "write pressed" })).toBe(going);
    expect(nextReportState(going, { type: "taken back" })).toMatchObject({
      takingBack: undefined,
      notice: { kind: "done", text: "Taken back: the report on sheet Visit 2024-03-20 is out of the workbook." },
    });
    const refused = nextReportState(going, { type: "write refused", message: "changed" });
    expect(refused).toMatchObject({ takingBack: undefined, notice: { kind: "error", text: "changed" } });
  });

  test("words stand above the figures, a row free between, days as days", () => {
    const words = writtenWords(report, namedThings(report, undefined), { heading: " ", notes: "=1+1\nsecond" });
    expect(words[0]).toEqual(["Visit report 2024-03-20"]);
    expect(words).toContainEqual(["1. a", "why", "look"]);
    expect(words).toContainEqual(["1", "LH", "recheck", { day: TODAY - 5 }]);
    // What the user typed stays text: the workbook never takes it for a formula.
    expect(words).toContainEqual(["=1+1"]);
    const live = { sheet: "X", address: "A1", cells: [[{ formula: "1+1" }, null]], room: { rows: 30, columns: 9 } };
    const block = joined("Visit 2024-03-20", words, live);
    expect(block.address).toBe("A1");
    expect(block.cells[words.length]!.every((cell) => cell === null)).toBe(true);
    expect(block.cells[words.length + 1]![0]).toEqual({ formula: "1+1" });
    expect(block.room).toEqual({ rows: words.length + 31, columns: 9 });
    expect(new Set(block.cells.map((row) => row.length)).size).toBe(1);
  });
});
