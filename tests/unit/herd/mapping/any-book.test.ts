import fc from "../../../random";
import { day } from "../../../../src/core/shared/days";
import { checkBook } from "../../../../src/herd/check/check-book";
import { guessBook } from "../../../../src/herd/mapping/guess-book";
import { mappingRows } from "../../../../src/herd/mapping/store";
import { languages } from "../../../../src/herd/mapping/words/all";
import type { PlainCell } from "../../../../src/workbook/port";
import { mappingTable } from "../../../../src/workbook/mapping-table";
import { rowSchema } from "../../../../src/workbook/table-rows";
import { book, sheet } from "../plain-sheet";

const headings = Object.values(languages).flatMap((words) => Object.values(words.headings).flat());
const cell = fc.oneof<fc.Arbitrary<PlainCell>[]>(
  fc.constant(null),
  fc.integer({ min: -5, max: 60_000 }),
  fc.double({ noNaN: true, min: -1e9, max: 1e9 }),
  fc.boolean(),
  fc.constantFrom(
    "LH",
    "sole ulcer",
    "hairy wart",
    "31.12.2025",
    "12/31/2025",
    "1.204",
    "85 mm",
    "-",
    "#N/A",
    "trim",
    "",
  ),
  fc.string({ maxLength: 12 }),
);
const anySheet = fc
  .record({
    name: fc.string({ minLength: 1, maxLength: 8 }),
    top: fc.array(fc.oneof(fc.constantFrom(...headings), cell), { minLength: 1, maxLength: 8 }),
    rows: fc.array(fc.array(cell, { maxLength: 8 }), { maxLength: 20 }),
    table: fc.option(fc.constantFrom("Findings", "Cows", "Mapping", "Words", "T1"), { nil: undefined }),
    days: fc.array(fc.nat({ max: 7 }), { maxLength: 3 }),
  })
  .map(({ name, top, rows, table, days }) =>
    sheet(name, [top, ...rows], { days, ...(table === undefined ? {} : { table }) }),
  );

test("any workbook is guessed at and checked without a failure, and every guess can be kept", () => {
  const schema = rowSchema(mappingTable);
  fc.assert(
    fc.property(fc.array(anySheet, { maxLength: 4 }), (sheets) => {
      const farm = book(...sheets);
      const guess = guessBook(farm);
      for (const { columns } of guess.sources) {
        for (const { certainty, because } of columns) {
          expect(certainty).toBeGreaterThan(0);
          expect(certainty).toBeLessThanOrEqual(1);
          expect(because).not.toBe("");
        }
      }
      for (const row of mappingRows(guess)) expect(schema.safeParse(row).success).toBe(row.sheet.trim() !== "");
      for (const { address, wrong, touches } of checkBook(farm, day("2026-09-01")).doubts) {
        expect(address).toMatch(/^[A-Z]{1,3}\d+(:[A-Z]{1,3}\d+)?$/);
        expect([wrong, touches]).not.toContain("");
      }
    }),
    { numRuns: 120 },
  );
});

test("a list that goes on in a sheet of the next year is read from both", () => {
  const headingsOfBoth = ["Cow", "Date", "Foot", "Lesion", "Treatment"];
  const rows = (from: string): PlainCell[][] => Array.from({ length: 8 }, (_, row) => [100 + row, day(from) + row, "LH", "DD", "topical"]); // oxfmt-ignore
  const farm = book(
    sheet("Feet 2025", [headingsOfBoth, ...rows("2025-05-01")], { days: [1] }),
    sheet("Feet 2026", [headingsOfBoth, ...rows("2026-05-01")], { days: [1] }),
    sheet("Old feet", [["Animal", "Day", "Leg", "Diagnosis"], ...rows("2024-05-01").map((cells) => cells.slice(0, 4))], { days: [1] }), // oxfmt-ignore
  );
  const { sources, alternatives } = guessBook(farm);
  expect(sources.map(({ table, sheet: name }) => [table, name])).toEqual([
    ["Findings", "Feet 2025"],
    ["Findings", "Feet 2026"],
  ]);
  expect(alternatives.map(({ table, sheet: name }) => [table, name])).toEqual([["Findings", "Old feet"]]);
});
