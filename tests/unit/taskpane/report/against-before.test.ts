import { day } from "../../../../src/core/shared/days";
import { reportOf, type Report } from "../../../../src/taskpane/screens/report/report";
import { cases, computedReport, type FindingRow, findingsOf, tenCows, VISIT } from "./computed";

async function reportOn(rows: readonly FindingRow[]): Promise<Report> {
  const block = await computedReport([findingsOf(rows), tenCows]);
  return reportOf({ block, listing: undefined, rolling: undefined, tables: new Map() }) as Report;
}

/** A finding before both times: the list covers them. */
const EARLY: FindingRow = [day("2026-01-05"), 1, "LF", "TS"];

test("a list that begins within the time before is compared with nothing, in the words of Herd", async () => {
  const { found, lesions, things, missing } = await reportOn([
    ...cases("2026-05-20", "HHE", 1),
    ...cases("2026-07-01", "DD", 30),
  ]);
  const cannot = "cannot be told: the list of findings begins within the time before";
  // 30 cases in 920 days: 30 / (920 / 365.25) × 100.
  expect(found[0]).toMatchObject({ now: expect.stringMatching(/^1191\.0 /), before: "–", change: cannot });
  expect(found[1]).toEqual({ name: "of these infectious", now: "1191.0", before: "–", change: cannot });
  expect(lesions).toMatchObject([{ name: "Digital dermatitis", before: "–", change: cannot }]);
  expect(things.filter(({ id }) => id.startsWith("lesion"))).toEqual([]);
  expect(missing).toContain("The list of findings begins on 2026-05-20: the time before is not whole.");
});

test("a lesion without a row in the time before has no case then", async () => {
  const { lesions, things, missing } = await reportOn([EARLY, ...cases("2026-07-01", "HHE", 12)]);
  // Limits by R, poisson.test: 6.20 to 20.96 for 12 cases, up to 3.69 for none; over 920 / 365.25 cow-years.
  expect(lesions[0]).toMatchObject({
    now: "476.4 (246.2 to 832.2)",
    before: "0.0 (0.0 to 146.5)",
    change: "higher, more than chance",
  });
  expect(things.map(({ title }) => title)).toContain("Heel horn erosion more than before, beyond chance");
  expect(missing.join()).not.toMatch(/begins on/);
});

test("two times are compared as Herd compares them, by both counts and their cow-days", async () => {
  // Of 28 cases over equal times 20 or more fall into one with a chance of 2 × 0.0178 = 0.036 (sum of the binomial
  // terms by hand), although the limits of the two rates touch: 12.2 to 30.9 and 3.5 to 15.8 cases.
  const { found, lesions } = await reportOn([
    EARLY,
    ...cases("2026-04-01", "DD", 8, 20),
    ...cases("2026-07-01", "DD", 20),
  ]);
  expect(found[0]!.change).toBe("higher, more than chance");
  expect(lesions[0]!.change).toBe("higher, more than chance");
  const fewer = await reportOn([EARLY, ...cases("2026-04-01", "DD", 20), ...cases("2026-07-01", "DD", 8, 20)]);
  expect(fewer.found[0]!.change).toBe("lower, more than chance");
  // 18 of 28: 2 × 0.0925.
  const near = await reportOn([EARLY, ...cases("2026-04-01", "DD", 10, 20), ...cases("2026-07-01", "DD", 18)]);
  expect(near.found[0]!.change).toBe("may be chance");
  const same = await reportOn([EARLY, ...cases("2026-04-01", "DD", 10, 20), ...cases("2026-07-01", "DD", 10)]);
  expect(same.found[0]!.change).toBe("the same");
});

test("feet looked at count over the year up to the visit", async () => {
  const rows: readonly FindingRow[] = [
    [VISIT - 365, 1, null, "none"],
    [VISIT - 364, 2, null, "none"],
    [VISIT, 3, null, "none"],
    [VISIT + 1, 4, null, "none"],
  ];
  const { things } = await reportOn(rows);
  expect(things.find(({ id }) => id === "examined")).toMatchObject({
    title: "Only 20 % of the cows examined in a year",
    look: "Plan the trimming so that every cow is lifted once a year at least, lame or not.",
  });
});
