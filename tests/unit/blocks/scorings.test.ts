import type { Block } from "../../../src/blocks/block";
import { lameAndHigh } from "../../../src/blocks/cells/lame-and-high";
import { lame } from "../../../src/blocks/herd/lame";
import { visitReport } from "../../../src/blocks/report/visit-report";
import type { SheetModel, WorkbookModel } from "../../../src/xlsx/model";
import { type BothSides, bothSides, figure } from "./both-sides";
import { dataOnly } from "./sheet-side";
import { AS_OF_DAY, SETTINGS, smallBook } from "./small-books";

jest.setTimeout(180_000);

const SHEETS = ["Start", "Cows", "Findings", "Scores", "Tests", "Targets", "Prices", "Costs"];
const BLOCKS: readonly Block[] = [lame, lameAndHigh, visitReport];

/** The workbook with rows written below those under Scores. */
function withScores(model: WorkbookModel, rows: readonly (readonly number[])[]): WorkbookModel {
  const below = (sheet: SheetModel): SheetModel => {
    const [table] = sheet.tables;
    const { firstColumn, lastRow } = table!.area;
    const cells = rows.flatMap((row, index) =>
      row.map((value, column) => ({ row: lastRow + 1 + index, column: firstColumn + column, style: 0, value })),
    );
    const area = { ...table!.area, lastRow: lastRow + rows.length };
    return { ...sheet, cells: [...sheet.cells, ...cells], tables: [{ ...table!, area }] };
  };
  return { ...model, sheets: model.sheets.map((sheet) => (sheet.name === "Scores" ? below(sheet) : sheet)) };
}

describe("three cows scored at the chute after the last scoring of the herd", () => {
  let [before, after]: BothSides[] = [];
  let asOf: number;
  beforeAll(async () => {
    const model = dataOnly("sample-workbooks/herd-workbook.xlsx", SHEETS);
    const start = model.sheets.find(({ name }) => name === "Start")!;
    asOf = start.cells.find(({ row, column }) => row === 4 && column === 1)!.value as number;
    const chute = [101, 102, 103].map((cow) => [asOf - 1, cow, 3]);
    before = await bothSides(model, asOf, undefined, undefined, BLOCKS);
    after = await bothSides(withScores(model, chute), asOf, undefined, undefined, BLOCKS);
  });

  test("are no later day than the last scoring in the sample", () => {
    expect(Number(figure(before!, visitReport.id, "scored now"))).toBeLessThan(asOf - 1);
  });

  test.each([
    [lame.id, "summary"],
    [lame.id, "trend"],
    [lameAndHigh.id, "link"],
    [visitReport.id, "scored now"],
    [visitReport.id, "scores now"],
    [visitReport.id, "lame now"],
    [visitReport.id, "lame low now"],
    [visitReport.id, "lame before"],
  ])("leave %s, %s as it was", (block, part) => {
    expect(figure(after!, block, part)).toEqual(figure(before!, block, part));
  });

  test("and the sheet shows the same", () => {
    expect([before!.differences, after!.differences]).toEqual([[], []]);
  });
});

test("a day of few cows between two scorings is no point of the trend", async () => {
  const scored = (day: number, cows: number) =>
    Array.from({ length: cows }, (_, index) => ({ date: day, cow: 1 + index, score: index % 4 }));
  // Two of four is not more than half, three of four is.
  const scores = [
    ...scored(AS_OF_DAY - 60, 4),
    ...scored(AS_OF_DAY - 50, 2),
    ...scored(AS_OF_DAY - 40, 3),
    ...scored(AS_OF_DAY - 10, 1),
  ];
  const sides = await bothSides(smallBook({ scores, settings: SETTINGS }), AS_OF_DAY, undefined, undefined, [lame]);
  expect(sides.differences).toEqual([]);
  const [, ...rows] = figure(sides, lame.id, "trend") as unknown[][];
  const days = rows.filter(([day]) => day !== "").map(([day, cows]) => [day, cows]);
  expect(days).toEqual([
    [AS_OF_DAY - 60, 4],
    [AS_OF_DAY - 40, 3],
  ]);
});
