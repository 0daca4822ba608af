import { BlockData } from "../../../../src/blocks/data";
import { type ComputedBlock, computeBlock } from "../../../../src/blocks/compute";
import { blocksOf } from "../../../../src/blocks/gallery";
import { day } from "../../../../src/core/shared/days";
import { registry } from "../../../../src/functions/registry";
import { readHerdTables } from "../../../../src/taskpane/parts/live-blocks/read-herd-tables";
import { answerOf, coverageWarning } from "../../../../src/taskpane/screens/herd/answer";
import { givenTo } from "../../../../src/taskpane/screens/herd/given";
import { sectionAnswer } from "../../../../src/taskpane/screens/herd/section-answers";
import { allBlocks } from "../../../../src/taskpane/screens/herd/shown-blocks";
import { MemoryBook, type MemoryTable } from "../../../../src/workbook/memory/book";
import type { PlainCell } from "../../../../src/workbook/port";
import { table, userOf } from "../due/small-book";

const AS_OF = day("2026-09-01");
const specs = new Map(registry.map((spec) => [spec.id, spec]));

type Rows = readonly (readonly PlainCell[])[];
const findings = (rows: Rows): MemoryTable =>
  table("Findings", ["Date", "Cow", "Lactation", "Days in milk", "Foot", "Zone", "Lesion"], rows);
const cows = (rows: Rows): MemoryTable =>
  table("Cows", ["Cow", "Lactation", "Calved", "Dry-off", "Entered", "Left"], rows);
const scores = (rows: Rows): MemoryTable => table("Scores", ["Date", "Cow", "Score"], rows);

/** The blocks of the screen, computed as it computes them. */
async function computed(
  tables: readonly MemoryTable[],
  typed: Readonly<Record<string, string>> = {},
): Promise<ReadonlyMap<string, ComputedBlock>> {
  const port = userOf(new MemoryBook(tables));
  const data = new BlockData(await readHerdTables(port, ["Cows", "Findings", "Scores", "Targets"], AS_OF));
  return new Map(
    allBlocks.flatMap((block): [string, ComputedBlock][] => {
      const given = givenTo(block, typed, AS_OF);
      return given === undefined ? [] : [[block.id, computeBlock(block, data, (id) => specs.get(id), given)]];
    }),
  );
}

function answers(blocks: ReadonlyMap<string, ComputedBlock>): Record<string, string> {
  return Object.fromEntries([...blocks].map(([id, block]) => [id, sectionAnswer(block)]));
}

/** Ten cows in milk since 2024, each in her second lactation. */
const TEN = Array.from({ length: 10 }, (_, index): PlainCell[] => [
  1 + index,
  2,
  day("2026-01-10"),
  null,
  day("2024-01-10"),
  null,
]);

test("empty tables: every section says in a sentence why there is nothing", async () => {
  const blocks = await computed([findings([]), cows([]), scores([])]);
  expect(answerOf(blocks, "all")?.first).toBe("Which lesions dominate cannot be told.");
  for (const [id, answer] of Object.entries(answers(blocks))) {
    expect([id, answer]).toEqual([id, expect.stringMatching(/^(Cannot be told\. .+|No .+)\.?$/)]);
    expect(answer).not.toMatch(/NaN|undefined|#/);
  }
});

test("no lists of cows and scores: what findings alone tell is there", async () => {
  const blocks = await computed([
    findings([
      [day("2026-03-02"), 1, 1, 50, "LH", 4, "SU"],
      [day("2026-03-02"), 2, 3, 90, "RH", null, "DD"],
      [day("2026-03-09"), 2, 3, 97, "RH", null, "DD"],
      [day("2026-03-02"), 3, 2, 20, null, null, "none"],
    ]),
  ]);
  expect(answers(blocks)).toMatchObject({
    coverage: "Cannot be told. The workbook has no table Cows.",
    "lesion-rates": expect.stringMatching(/^Cannot be told\. .*Cows/),
    "lesions-by-lactation": "Digital dermatitis: first lactation 0 %, second and later 50 %.",
    "lesion-months": "2 new cases in 14 months, most in March 2026 (2).",
    "new-and-repeat": "33 % of 3 records are repeats; no cow has many.",
    "lame-share": "Cannot be told. The workbook has no table Scores.",
    "where-to-look": "Too few findings (3): 10 or more are needed.",
  });
});

test("one cow and one month", async () => {
  const blocks = await computed(
    [
      findings([[day("2026-08-03"), 1, 2, 60, "LH", 4, "SU"]]),
      cows([[1, 2, day("2026-06-04"), null, day("2024-01-10"), null]]),
      scores([[day("2026-08-20"), 1, 2]]),
    ],
    { period: "own dates", from: "2026-08-01", to: "2026-08-31" },
  );
  expect(answerOf(blocks, "all")).toEqual({
    first: "Only 1 new case was recorded: ulcer 1.",
    rest: "That is too few to say which lesion dominates.",
  });
  expect(answers(blocks)).toMatchObject({
    coverage: "1 milking cow, 1 of them examined (100 %).",
    // 1 case in 31 cow-days: 1 / (31 / 365.25) × 100.
    "lesion-rates": "1 new case, 1178.2 per 100 cow-years.",
    "lesion-months": "1 new case in 1 month, most in August 2026 (1).",
    "lame-share": "100.0 % lame on 2026-08-20 (20.7 % to 100.0 %).",
    "against-before": "Cannot be told: the list of findings begins within the time before.",
  });
});

test("findings without sound cows and without lactations: rates stand, shares say what they need", async () => {
  const blocks = await computed([
    findings(TEN.map(([cow], index) => [day("2026-05-04") + index, cow!, null, null, "LH", null, "DD"])),
    cows(TEN),
  ]);
  const told = answers(blocks);
  // 10 cases; 10 cows on 365 days: 10 / (3650 / 365.25) × 100 = 100.07.
  expect(told["lesion-rates"]).toBe("10 new cases, 100.1 per 100 cow-years.");
  expect(told["lesions-by-lactation"]).toMatch(/^Cannot be told\. .*no sound cow/);
  expect(told["horn-and-infectious"]).toBe("Infectious 100.1, horn 0.0 new cases per 100 cow-years.");
  expect(answerOf(blocks, "all")?.first).toBe("Digital dermatitis makes 100 % of 10 new cases.");
});

test("targets of groups are told beside the rates", async () => {
  const book = [
    findings(TEN.map(([cow]) => [day("2026-05-04"), cow!, 2, 100, "LH", null, "DD"])),
    cows(TEN),
    table("Targets", ["Lesion", "Target per 100 cow-years"], [["infectious", 20]]),
  ];
  const blocks = await computed(book);
  // 10 cases in 10 cow-years: the lower limit of a count of 10 is 4.795 (R, poisson.test), 48 per 100 cow-years.
  expect(answers(blocks)["lesion-rates"]).toBe(
    "10 new cases, 100.1 per 100 cow-years; above target: infectious lesions.",
  );
  expect(answerOf(blocks, "all")?.rest).toMatch(/^Above target, .*: infectious lesions \(100\.1 against 20 per/);
});

test("fewer than 80 % examined is warned of, 80 % is not", async () => {
  const examined = (count: number): Promise<ReadonlyMap<string, ComputedBlock>> =>
    computed([
      findings(TEN.slice(0, count).map(([cow]) => [day("2026-05-04"), cow!, 2, 100, null, null, "none"])),
      cows(TEN),
    ]);
  expect(coverageWarning((await examined(7)).get("coverage"))).toMatch(/^7 of 10 milking cows were examined.*70 %/);
  expect(coverageWarning((await examined(8)).get("coverage"))).toBeUndefined();
});

test("a group of cows alone: its own findings over its own days at risk", async () => {
  const tables = [
    findings([
      [day("2026-05-04"), 1, 1, 64, "LH", null, "DD"],
      [day("2026-05-04"), 2, 2, 114, "LH", 4, "SU"],
      [day("2026-05-04"), 9, "heifer", null, "LH", null, "DD"],
      [day("2026-05-04"), 8, null, null, "LH", null, "DD"],
    ]),
    // Of the year to 2026-08-31: 184 days in the first lactation of cows 1 and 4, 131 of cow 2 until she calved.
    cows([
      [1, 1, day("2026-03-01"), null, day("2026-03-01"), null],
      [2, 2, day("2026-01-10"), null, day("2024-01-10"), null],
      [3, 3, day("2026-01-10"), null, day("2023-01-10"), null],
      [4, 1, day("2026-03-01"), null, day("2026-03-01"), null],
    ]),
  ];
  const first = answers(await computed(tables, { group: "first" }));
  // 1 / (499 / 365.25) × 100, and 1 / ((184 + 365 + 365 + 184 - 499) / 365.25) × 100.
  expect(first["lesion-rates-first"]).toBe("1 new case, 73.2 per 100 cow-years.");
  const later = answers(await computed(tables, { group: "later" }));
  expect(later["lesion-rates-later"]).toBe("1 new case, 61.0 per 100 cow-years.");
  // The figures of the cows chosen before are still there while others are computed.
  const [before, now] = [await computed(tables, {}), await computed(tables, { group: "first" })];
  expect(answerOf(before, "first")).toBeUndefined();
  expect(answerOf(new Map([...before, ...now]), "first")?.first).toBe(
    "Only 1 new case was recorded: digital dermatitis 1.",
  );
  expect(answerOf(before, "heifers")).toBeUndefined();
  const heifers = answers(await computed(tables, { group: "heifers" }));
  expect(Object.keys(heifers)).not.toContain("lesion-rates-heifers");
  expect(heifers["lesion-months-heifers"]).toBe("1 new case in 14 months, most in May 2026 (1).");
});

test("dates that were chosen reach every block that has them, what is usual stays a formula", () => {
  const typed = { period: "own dates", from: "2026-03-01", to: "2026-03-31" };
  const [rates] = blocksOf("herd").filter(({ id }) => id === "lesion-rates");
  expect(givenTo(rates!, typed, AS_OF)).toEqual({ from: day("2026-03-01"), to: day("2026-03-31") });
  expect(givenTo(rates!, {}, AS_OF)).toEqual({});
  expect(givenTo(rates!, { ...typed, to: "" }, AS_OF)).toBeUndefined();
});
