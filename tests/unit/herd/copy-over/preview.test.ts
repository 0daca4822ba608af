import fc from "../../../random";
import { day } from "../../../../src/core/shared/days";
import { LesionWords } from "../../../../src/herd/codes/words";
import { copySave, type CopyTarget, previewCopy } from "../../../../src/herd/copy-over/preview";
import { guessBook } from "../../../../src/herd/mapping/guess-book";
import { wordsProposal } from "../../../../src/herd/set-up/keep-words";
import { inputColumns, type TableDefinition } from "../../../../src/workbook/table-definition";
import { isDay, type TableContent } from "../../../../src/workbook/table-port";
import { cowsTable, findingsTable, scoresTable, testsTable } from "../../../../src/workbook/tables";
import type { PlainCell } from "../../../../src/workbook/port";
import { plantedMistakes } from "../../../../src/samples/own-headings";
import { sampleBook } from "../../../workbook/mapped/own-book";
import { book, sheet } from "../plain-sheet";

const AS_OF = day("2026-09-01");

function blank(definition: TableDefinition): TableContent {
  const columns = inputColumns(definition).map(({ heading }) => ({ heading, calculated: false }));
  return { name: definition.name, sheet: definition.name, columns, rowCount: 0, rows: [] };
}

const target: CopyTarget = { tables: [cowsTable, findingsTable, scoresTable, testsTable].map(blank), scale: "0-3" };

/** The tables with the rows of a preview in them. */
function withRows({ tables, scale }: CopyTarget, preview: ReturnType<typeof previewCopy>): CopyTarget {
  return {
    scale,
    tables: tables.map((table) => {
      const added = (preview.rows.find((one) => one.table === table.name)?.rows ?? []).map((row) =>
        table.columns.map(({ heading }): PlainCell => {
          const value = row[heading] ?? null;
          return isDay(value) ? value.day : value;
        }),
      );
      return { ...table, rows: [...table.rows, ...added], rowCount: table.rowCount + added.length };
    }),
  };
}

const own = sampleBook("own-headings.xlsx");
const mapping = { sources: guessBook(own).sources };
const rows = wordsProposal(own, mapping, undefined).rows.map(({ word, code }) => [word, code]);
const words = new LesionWords({ name: "Words", sheet: "Words", columns: ["Word", "Code"].map((heading) => ({ heading, calculated: false })), rowCount: rows.length, rows }); // oxfmt-ignore
const old = { book: own, mapping, words, asOf: AS_OF };

/** Rows below the headings in which anything stands, counted by hand from the sheet. */
function filledRows(name: string, headingRow: number): number {
  const { rows: all } = own.sheets.find((one) => one.name === name)!;
  return all.slice(headingRow + 1).filter((row) => row.some((cell) => cell !== null)).length;
}

describe("a client's old book", () => {
  const preview = previewCopy(old, target);

  test("every row comes over or is listed", () => {
    expect(preview.counts.map(({ table, rows: all }) => [table, all])).toEqual([
      ["Cows", filledRows("Herd", 3)],
      ["Findings", filledRows("Feet 2026", 5)],
      ["Scores", filledRows("Walking", 3)],
      ["Tests", filledRows("Milk recording", 3)],
    ]);
    for (const { table, rows: all, over, double, doubtful } of preview.counts) {
      expect([table, over + double + doubtful]).toEqual([table, all]);
      expect(preview.rows.find((one) => one.table === table)?.rows.length).toBe(over);
      expect(preview.left.filter((row) => row.table === table).length).toBe(double + doubtful);
    }
    expect(preview.notRead).toEqual(["Butterfat on Milk recording"]);
    expect(preview.problems).toEqual([]);
  });

  test("the rows with a planted mistake are those that stay behind, each with its cell", () => {
    const rowOf = (place: { sheet: string; address: string }): string =>
      `${place.sheet} ${/\d+$/.exec(place.address)![0]}`;
    // A capped count is only worth knowing: its row comes over.
    const planted = new Set(
      plantedMistakes()
        .filter(({ check }) => check !== "capped count")
        .map(rowOf),
    );
    const stayed = new Set(preview.left.map(rowOf));
    expect([...planted].filter((row) => !stayed.has(row))).toEqual([]);
    expect([...stayed].filter((row) => !planted.has(row))).toEqual([]);
    expect(preview.left.every(({ why }) => why.length > 10)).toBe(true);
  });

  test("what was written comes over in our terms, medicine and withdrawal in the note", () => {
    const findings = preview.rows.find(({ table }) => table === "Findings")!.rows;
    expect(findings[0]).toMatchObject({ Date: { day: expect.any(Number) }, Cow: expect.any(Number) });
    const treated = findings.find(({ Note }) => typeof Note === "string" && Note.includes("Withdrawal"));
    expect(treated?.["Note"]).toBe("Drug: oxytetracycline spray; Withdrawal: as on the label, see medicine book");
    const lengths = findings.flatMap((row) => (typeof row["Toe mm"] === "number" ? [row["Toe mm"]] : []));
    expect(Math.min(...lengths)).toBeGreaterThan(50);
  });

  test("copied once more, every row that came over is double, and nothing comes over", () => {
    const again = previewCopy(old, withRows(target, preview));
    expect(again.rows).toEqual([]);
    expect(copySave(again, "x", "x")).toBeUndefined();
    again.counts.forEach(({ double, rows: all }, at) => {
      expect(double).toBeGreaterThanOrEqual(preview.counts[at]!.over);
      expect(double).toBeLessThanOrEqual(all);
    });
  });

  test("scores on another scale stay behind", () => {
    const other = previewCopy(old, { ...target, scale: "1-5" });
    expect(other.counts.find(({ table }) => table === "Scores")?.over).toBe(0);
    expect(other.left.find(({ table }) => table === "Scores")?.why).toMatch(/scale 0-3, those of the workbook on 1-5/);
  });

  test("without a table to go to, rows are listed", () => {
    const none = previewCopy(old, { tables: [], scale: "0-3" });
    expect(none.rows).toEqual([]);
    expect(none.left.length).toBe(none.counts.reduce((sum, count) => sum + count.rows, 0));
  });

  test("the save appends what the preview shows", () => {
    expect(copySave(preview, "copy", "Old book")).toEqual({
      id: "copy",
      title: "Old book",
      changes: preview.rows.map((one) => ({ append: one.table, rows: one.rows })),
    });
  });
});

test("whatever stands in the cells, rows in are rows over and rows listed, and nothing comes over twice", () => {
  const cell = fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom<PlainCell>(null, "DD", "SU", "LH", "outer", "bad un", "-", "12") },
    fc.integer({ min: 1, max: 40 }),
    fc.integer({ min: 46_000, max: 46_300 }),
    fc.string({ maxLength: 4 }),
    fc.boolean(),
  );
  const line = fc.tuple(fc.integer({ min: 46_000, max: 46_260 }).map((serial): PlainCell => serial), fc.integer({ min: 1, max: 9 }).map((cow): PlainCell => cow), cell, cell, cell, cell); // oxfmt-ignore
  const spoiled = fc.tuple(line, fc.integer({ min: 0, max: 5 }), cell).map(([cells, at, other]) => cells.map((one, place) => (place === at ? other : one))); // oxfmt-ignore
  fc.assert(
    fc.property(fc.array(spoiled, { minLength: 1, maxLength: 30 }), (lines) => {
      const headings = ["Visit", "Tag", "Leg", "Claw", "Finding", "Shed"];
      const feet = sheet("Feet", [headings, [46_000, 1, "LH", "outer", "DD", "A"], ...lines], {
        days: [0],
        table: "Feet",
      });
      const columns = ["date", "cow", "foot", "claw", "lesion"].map((key, column) => ({ key, heading: headings[column]!, column })); // oxfmt-ignore
      const sources = [{ table: "Findings" as const, sheet: "Feet", source: "Feet", headingRow: 0, columns }];
      const from = { book: book(feet), mapping: { sources }, words: new LesionWords(), asOf: AS_OF };
      const preview = previewCopy(from, target);
      const { rows: all, over, double, doubtful } = preview.counts[0]!;
      expect(over + double + doubtful).toBe(all);
      expect(preview.left.length).toBe(double + doubtful);
      expect(preview.rows[0]?.rows.length ?? 0).toBe(over);
      expect(previewCopy(from, withRows(target, preview)).rows).toEqual([]);
    }),
    { numRuns: 100 },
  );
});

describe("lists here that lack columns of the old book", () => {
  const headings = ["Visit", "Tag", "Lact", "Found", "Zone no"];
  const lines = [
    [46_000, 1, 2, "SU", 4],
    [46_000, 1, 2, "SU", 5],
    [46_001, 2, 3, "DD", null],
  ];
  const feet = sheet("Feet", [headings, ...lines], { days: [0], table: "Feet" });
  const columns = ["date", "cow", "lactation", "lesion", "zone"].map((key, column) => ({ key, heading: headings[column]!, column })); // oxfmt-ignore
  const sources = [{ table: "Findings" as const, sheet: "Feet", source: "Feet", headingRow: 0, columns }];
  const from = { book: book(feet), mapping: { sources }, words: new LesionWords(), asOf: AS_OF };
  const here = (...wanted: readonly TableContent["columns"][number][]): CopyTarget => ({
    tables: [{ name: "Findings", sheet: "Feet", columns: wanted, rowCount: 0, rows: [] }],
    scale: "0-3",
  });
  const [date, cow, lesion, note, zone] = ["Date", "Cow", "Lesion", "Note", "Zone"].map((heading) => ({ heading, calculated: false })); // oxfmt-ignore

  test("take the zone into the note, leave out what follows from Cows and say so", () => {
    const preview = previewCopy(from, here(date!, cow!, lesion!, note!));
    expect(preview.rows[0]!.rows).toEqual([
      { Date: { day: 46_000 }, Cow: 1, Lesion: "SU", Note: "Zone: 4" },
      { Date: { day: 46_000 }, Cow: 1, Lesion: "SU", Note: "Zone: 5" },
      { Date: { day: 46_001 }, Cow: 2, Lesion: "DD" },
    ]);
    expect(preview.notRead).toEqual(["Lact on Feet"]);
  });

  test("hold every row already when they are copied to once more", () => {
    const first = here(date!, cow!, lesion!, note!);
    const again = previewCopy(from, withRows(first, previewCopy(from, first)));
    expect(again.counts).toEqual([{ table: "Findings", rows: 3, over: 0, double: 3, doubtful: 0 }]);
  });

  test("a row of two that are alike here but for the zone comes over where one of them is here", () => {
    const first = here(date!, cow!, lesion!, note!);
    const one = { ...first, tables: [{ ...first.tables[0]!, rowCount: 1, rows: [[46_000, 1, "SU", "seen by A"]] }] };
    expect(previewCopy(from, one).counts).toEqual([{ table: "Findings", rows: 3, over: 2, double: 1, doubtful: 0 }]);
  });

  test("columns that only older lists have count as lacking", () => {
    const preview = previewCopy(from, here(date!, cow!, lesion!, note!, { ...zone!, oldRowsOnly: true }));
    expect(preview.rows[0]!.rows[0]).toEqual({ Date: { day: 46_000 }, Cow: 1, Lesion: "SU", Note: "Zone: 4" });
  });

  test("without a note a row with what has no column stays behind and is told; the others come over", () => {
    const preview = previewCopy(from, here(date!, cow!, lesion!));
    expect(preview.rows[0]!.rows).toEqual([{ Date: { day: 46_001 }, Cow: 2, Lesion: "DD" }]);
    expect(preview.left.map(({ address, why }) => [address, why])).toEqual([
      ["E2", "Table Findings has no column Zone."],
      ["E3", "Table Findings has no column Zone."],
    ]);
  });
});
