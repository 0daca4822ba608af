import fc from "../../random";

import { parentCode } from "../../../src/core/claws/disorder-key";
import { type Findings, SOUND, UNKNOWN } from "../../../src/core/claws/findings";
import { markNewCases, NEW_CASE, NO_CASE, REPEAT } from "../../../src/core/claws/new-cases";
import { evaluate } from "../../../src/functions/evaluate";
import { lesionNewcase } from "../../../src/functions/claws/lesion-newcase";

type Row = readonly [cow: string | null, foot: string | null, lesion: string | null, date: number];

function findings(rows: readonly Row[]): Findings {
  return {
    cows: rows.map(([cow]) => cow),
    feet: rows.map(([, foot]) => foot),
    lesions: rows.map(([, , lesion]) => lesion),
    dates: rows.map(([, , , date]) => date),
  };
}

const marks = (rows: readonly Row[], gapDays: number) => [...markNewCases(findings(rows), gapDays).marks];

/** The rule word for word, every row against every other. */
function byDefinition(rows: readonly Row[], gapDays: number): number[] {
  const isCase = ([cow, , lesion, date]: Row) =>
    cow !== null && lesion !== null && lesion !== SOUND && lesion !== UNKNOWN && !Number.isNaN(date);
  return rows.map((row, place) => {
    if (!isCase(row)) return NO_CASE;
    const recordedBefore = rows.some(
      (other, otherPlace) =>
        otherPlace !== place &&
        isCase(other) &&
        other[0]!.toLowerCase() === row[0]!.toLowerCase() &&
        other[1] === row[1] &&
        parentCode(other[2]!) === parentCode(row[2]!) &&
        (other[3] < row[3] || (other[3] === row[3] && otherPlace < place)) &&
        row[3] - other[3] <= gapDays,
    );
    return recordedBefore ? REPEAT : NEW_CASE;
  });
}

test("exactly the gap after the last record is a repeat, one day more is new", () => {
  expect(marks([["1", "LH", "SU", 100], ["1", "LH", "SU", 128]], 28)).toEqual([NEW_CASE, REPEAT]); // oxfmt-ignore
  expect(marks([["1", "LH", "SU", 100], ["1", "LH", "SU", 129]], 28)).toEqual([NEW_CASE, NEW_CASE]); // oxfmt-ignore
});

test("a chain of records stays one case: the gap counts from the last record, not from the new case", () => {
  const chain = [100, 120, 140, 160, 180].map((date): Row => ["1", "LH", "DD", date]);
  expect(marks(chain, 28)).toEqual([NEW_CASE, REPEAT, REPEAT, REPEAT, REPEAT]);
});

test("forms of one parent are one case; another foot, cow or parent is another", () => {
  const rows: Row[] = [
    ["1", "LH", "SU", 100],
    ["1", "LH", "TU", 101],
    ["1", "RH", "SU", 101],
    ["2", "LH", "SU", 101],
    ["1", "LH", "WLF", 101],
    ["1", "LH", "WLA", 102],
  ];
  expect(marks(rows, 28)).toEqual([NEW_CASE, REPEAT, NEW_CASE, NEW_CASE, NEW_CASE, REPEAT]);
});

test("a row without a foot is one more foot of the cow", () => {
  const tally = markNewCases(findings([["1", null, "DD", 1], ["1", "LH", "DD", 2], ["1", null, "DD", 3]]), 28); // oxfmt-ignore
  expect([...tally.marks]).toEqual([NEW_CASE, NEW_CASE, REPEAT]);
  expect(tally.tally.withoutFoot).toBe(2);
});

test("sound, blank, unknown, cowless and undated rows are no cases and are counted", () => {
  const rows: Row[] = [
    ["1", "LH", SOUND, NaN],
    ["1", "LH", UNKNOWN, 5],
    [null, "LH", "DD", 5],
    ["1", "LH", "DD", NaN],
    ["1", "LH", null, 5],
    [null, null, null, NaN],
  ];
  const { marks, tally } = markNewCases(findings(rows), 28);
  expect([...marks]).toEqual(rows.map(() => NO_CASE));
  expect(tally).toEqual({ used: 0, sound: 1, withoutLesion: 1, withoutCow: 1, withoutDate: 1, unknownLesion: 1, withoutFoot: 0 }); // oxfmt-ignore
});

test("follows its definition for rows in any order", () => {
  const row = fc.tuple(
    fc.constantFrom("1", "2", "a", "A", null),
    fc.constantFrom("LH", "RH", null),
    fc.constantFrom("SU", "BU", "U", "DD", SOUND, UNKNOWN, null),
    fc.oneof({ weight: 9, arbitrary: fc.integer({ min: 100, max: 200 }) }, { weight: 1, arbitrary: fc.constant(NaN) }),
  );
  fc.assert(
    fc.property(fc.array(row, { maxLength: 40 }), fc.integer({ min: 1, max: 40 }), (rows, gapDays) => {
      expect(marks(rows, gapDays)).toEqual(byDefinition(rows, gapDays));
    }),
    { numRuns: 500 },
  );
});

describe("HERD.LESION.NEWCASE", () => {
  const column = (...values: unknown[]) => values.map((value) => [value]);

  test("the number 114 and the text 114 are one cow", () => {
    const { value } = evaluate(lesionNewcase, [
      column(114, "114"),
      column("LH", "left hind"),
      column("SU", "Sole ulcer"),
      column(45_300, 45_310),
    ]);
    expect(value).toEqual([[1], [0]]);
  });

  test("a number 0 as lesion is a blank, the word is a sound cow", () => {
    const { value, remarks } = evaluate(lesionNewcase, [
      column(1, 2, 3),
      column("LH", "", ""),
      column("DD", 0, "none"),
      column(45_300, 45_300, 45_300),
    ]);
    expect(value).toEqual([[1], [""], [""]]);
    expect(remarks.join("; ")).toMatch(/1 row left out: no lesion/);
  });

  test("the remarks state the gap", () => {
    const call = [column(1), column("LH"), column("DD"), column(45_300)];
    expect(evaluate(lesionNewcase, call).remarks.join()).toContain("28 days");
    expect(evaluate(lesionNewcase, [...call, 14]).remarks.join()).toContain("14 days");
  });

  test("a million rows", () => {
    const rows = 1_000_000;
    const of = <T>(value: (row: number) => T) => Array.from({ length: rows }, (_, row) => [value(row)]);
    const { value } = evaluate(lesionNewcase, [
      of((row) => 1 + (row % 50_000)),
      of(() => "LH"),
      of(() => "DD"),
      of((row) => 45_000 - Math.floor(row / 50_000) * 30),
    ]);
    expect(value).toHaveLength(rows);
    expect((value as number[][]).every(([mark]) => mark === 1)).toBe(true);
  });
});

test.each([
  ["one way of writing capitals", ["a1", "A1", "a1"], [NEW_CASE, REPEAT, REPEAT]],
  ["letters beyond English", ["Ö1", "ö1", "Ö2"], [NEW_CASE, REPEAT, NEW_CASE]],
  ["capitals alone", ["A1", "B1", "A1"], [NEW_CASE, NEW_CASE, REPEAT]],
])("cows are told apart whatever their capitals: %s", (_, cows, expected) => {
  expect(marks(cows.map((cow, day) => [cow, "LH", "DD", day + 1]), 28)).toEqual(expected); // oxfmt-ignore
});

test("a cow has the name of her first row, and a number below the limit", () => {
  const written = ["Öse", "114", "öse", "Ada", "ADA", "ÖSE"];
  const { cows, cowLimit, cowName } = markNewCases(findings(written.map((cow) => [cow, "LH", "DD", 45_000])), 28);
  expect(Array.from(cows, (cow) => cowName(cow))).toEqual(["Öse", "114", "Öse", "Ada", "Ada", "Öse"]);
  expect(Math.max(...cows)).toBeLessThan(cowLimit);
});

describe("rows that are not counted", () => {
  const row = fc.tuple(
    fc.constantFrom("1", "2"),
    fc.constantFrom("LH", "RH", null),
    fc.constantFrom("DD", "SU", SOUND, UNKNOWN, null),
    fc.integer({ min: 45_000, max: 45_100 }),
    fc.boolean(),
  );

  test("leave the marks of the others as they are, and stand in no tally", () => {
    fc.assert(
      fc.property(fc.array(row), (rows) => {
        const all = findings(rows.map(([cow, foot, lesion, date]) => [cow, foot, lesion, date]));
        const isCounted = (place: number): boolean => rows[place]![4];
        const [whole, some] = [markNewCases(all, 28), markNewCases({ ...all, isCounted }, 28)];
        expect([...some.marks]).toEqual([...whole.marks].map((mark, place) => (isCounted(place) ? mark : NO_CASE)));
        const counted = rows.filter(([, , , , is]) => is).map(([cow, foot, lesion, date]): Row => [cow, foot, lesion, date]); // oxfmt-ignore
        expect(some.tally).toEqual(markNewCases(findings(counted), 28).tally);
      }),
    );
  });
});
