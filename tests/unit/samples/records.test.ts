import { disorderOf } from "../../../src/core/claws/disorder-key";
import { defaultRecheckRules } from "../../../src/core/claws/recheck-rules";
import { inventedHerd } from "../../../src/samples/herd/invented-herd";
import { AS_OF_DAY, FIRST_RECORD, LAST_RECORD } from "../../../src/samples/herd/lives";
import { rowSchema } from "../../../src/workbook/table-rows";
import { cowsTable, findingsTable, scoresTable, testsTable } from "../../../src/workbook/tables";

const herd = inventedHerd(defaultRecheckRules);
const byCow = new Map(herd.cows.map((cow) => [cow.cow, cow]));
const dated = [...herd.findings, ...herd.scores, ...herd.tests];

describe("records of the invented herd", () => {
  test.each([
    ["Cows", cowsTable, herd.cows],
    ["Findings", findingsTable, herd.findings],
    ["Scores", scoresTable, herd.scores],
    ["Tests", testsTable, herd.tests],
  ] as const)("every row of %s is one that its table takes", (_, table, rows) => {
    const schema = rowSchema(table);
    for (const row of rows) expect(schema.parse(row)).toEqual(row);
  });

  test("are the same each time they are made", () => {
    expect(inventedHerd(defaultRecheckRules)).toEqual(herd);
  });

  test("cover fourteen months of about 140 cows and end before the as-of day", () => {
    const here = herd.cows.filter(({ left }) => left === null);
    expect(here.length).toBeGreaterThanOrEqual(130);
    expect(here.length).toBeLessThanOrEqual(150);
    const days = dated.map(({ date }) => date);
    expect(Math.min(...days)).toBeGreaterThanOrEqual(FIRST_RECORD);
    expect(Math.max(...days)).toBeLessThanOrEqual(LAST_RECORD);
    expect(LAST_RECORD).toBe(AS_OF_DAY - 1);
  });

  test("name cows of the herd only, while they are there", () => {
    for (const { cow, date } of dated) {
      const { entered, left } = byCow.get(cow)!;
      expect([cow, date, entered <= date, left === null || date <= Number(left)]).toEqual([cow, date, true, true]);
    }
  });

  test("hold each cow once, born long enough before she calved", () => {
    expect(byCow.size).toBe(herd.cows.length);
    for (const { born, calved, entered, lactation } of herd.cows) {
      const age = Number(calved) - Number(born);
      expect(age).toBeGreaterThan(600 + (Number(lactation) - 1) * 330);
      expect(entered).toBeGreaterThan(Number(born) + 600);
    }
  });

  test("use codes of the claw disorder key, and write sound cows down too", () => {
    for (const { lesion } of herd.findings) expect(lesion === "none" || disorderOf(lesion)?.code === lesion).toBe(true);
    const sound = herd.findings.filter(({ lesion }) => lesion === "none").length;
    expect(sound / herd.findings.length).toBeGreaterThan(0.15);
  });

  test("close no finding before it was made or after the as-of day, and leave some open", () => {
    const open = herd.findings.filter(({ closedOn }) => closedOn === null);
    expect(open.length).toBeGreaterThan(5);
    for (const { date, closedOn } of herd.findings) {
      if (closedOn === null) continue;
      expect(Number(closedOn)).toBeGreaterThanOrEqual(date);
      expect(Number(closedOn)).toBeLessThan(AS_OF_DAY);
    }
  });

  test("have the gaps of real ones: counts missing, one at the laboratory's cap, a note, a cow not seen", () => {
    const counts = herd.tests.map(({ count }) => count);
    expect(counts.filter((count) => count === null).length).toBeGreaterThan(5);
    expect(counts.filter((count) => count === 9999)).toHaveLength(1);
    expect(counts.filter((count) => typeof count === "string")).toEqual(["no sample"]);
    expect(herd.scores.some(({ score }) => score === "-")).toBe(true);
    expect(herd.findings.some(({ treatment }) => treatment === null)).toBe(true);
    expect(herd.findings.filter(({ note }) => note !== null).length).toBeGreaterThan(5);
  });

  test("name nobody: words are those of the tables or of a few notes", () => {
    const words = new Set(
      herd.findings.flatMap(({ note, treatment }) => [note, treatment]).filter((text): text is string => text !== null),
    );
    for (const text of words) expect(text).toMatch(/^[a-z ,:]+$/);
    expect(words.size).toBeLessThan(20);
  });
});

describe("a row that a table does not take", () => {
  const finding = herd.findings[0]!;
  test.each([
    ["a date as text", { date: "2026-08-31" }],
    ["a date with a time", { date: 46_265.5 }],
    ["no cow", { cow: null }],
    ["a foot that is none", { foot: "LX" }],
    ["a zone beyond the map", { zone: 13 }],
    ["a severity between two", { severity: 1.5 }],
    ["a toe length in cm", { toeMm: 8.5 }],
    ["a number typed as text", { toeMm: "85" }],
    ["a day typed as text", { closedOn: "31.8.2026" }],
    ["a column that it does not have", { farmer: "x" }],
  ])("%s", (_, change) => {
    expect(rowSchema(findingsTable).safeParse({ ...finding, ...change }).success).toBe(false);
  });

  test("a note in place of a number is taken", () => {
    expect(rowSchema(testsTable).safeParse({ ...herd.tests[0], count: "dry" }).success).toBe(true);
  });
});
