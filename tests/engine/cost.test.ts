import { CELL_INVERTED_INDEX_CACHE, FormulaRuntimeService, Lexer } from "@univerjs/engine-formula";
import { applyFixes } from "../../src/engine/fixes";
import { answers, type Cells } from "./support";

jest.setTimeout(120_000);

applyFixes();

describe("what the engine does too often", () => {
  test("inverted-index: a column of many different results is entered in the time that its rows take", () => {
    const rows = 60_000;
    const start = performance.now();
    for (let row = 0; row < rows; row++) CELL_INVERTED_INDEX_CACHE.set("book", "sheet", 0, row * 1.5, row, true);
    // Without the fix some thousand million look-ups, over ten seconds; with it a few hundredths of one.
    expect(performance.now() - start).toBeLessThan(4000);
    CELL_INVERTED_INDEX_CACHE.clear();
  });

  test("inverted-index: a cell stands under its last value alone", () => {
    for (const value of [5, "Sole", 7]) CELL_INVERTED_INDEX_CACHE.set("book", "sheet", 0, value, 3, true);
    CELL_INVERTED_INDEX_CACHE.set("book", "sheet", 0, "SOLE", 4, true);
    const values = CELL_INVERTED_INDEX_CACHE.getCellValuePositions("book", "sheet", 0);
    const rows = (value: number | string): number[] => [...(values?.get(value) ?? [])];
    expect([rows(5), rows(7), rows("sole")]).toEqual([[], [3], [4]]);
    CELL_INVERTED_INDEX_CACHE.clear();
  });

  test("table-references: the formula of a table's column is parsed once, not in every row", async () => {
    const cells: Record<string, Cells[string]> = { A1: "Cow", B1: "Double" };
    for (let row = 2; row <= 300; row++) {
      cells[`A${row}`] = row;
      cells[`B${row}`] = "=Cows[@Cow]*2";
    }
    const parse = jest.spyOn(Lexer.prototype, "treeBuilder");
    const result = await answers({ Data: cells }, { tables: [{ sheet: "Data", name: "Cows", area: "A1:B300" }] });
    const parsed = parse.mock.calls.length;
    parse.mockRestore();
    expect(result.value("B300")).toBe(600);
    expect(parsed).toBeLessThan(10);
  });

  test("spill-order: what reads no filled cell is computed once", async () => {
    const cells: Record<string, Cells[string]> = { D1: "=SEQUENCE(3)", E1: "=D3*10" };
    for (let row = 1; row <= 100; row++) cells[`A${row}`] = `=${row}*2`;
    const compute = jest.spyOn(FormulaRuntimeService.prototype, "setRuntimeData");
    const result = await answers({ Data: cells });
    const computed = compute.mock.calls.length;
    compute.mockRestore();
    expect([result.value("A100"), result.value("E1")]).toEqual([200, 30]);
    // Each formula once, and the reader of D3 once more.
    expect(computed).toBe(103);
  });
});
