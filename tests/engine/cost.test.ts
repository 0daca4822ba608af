import { ICommandService, RTree, Worksheet } from "@univerjs/core";
import {
  CELL_INVERTED_INDEX_CACHE,
  DependencyManagerService,
  FormulaRuntimeService,
  Interpreter,
  Lexer,
  ValueObjectFactory,
} from "@univerjs/engine-formula";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { applyFixes } from "../../src/engine/fixes";
import { openEngine } from "../../src/engine/open-engine";
import { sheetId, toSnapshot } from "../../src/engine/snapshot";
import { answers, type Cells, workbook } from "./support";

jest.setTimeout(120_000);

/** Texts of which the engine asked whether they are a date or an amount of money. */
const askedOf: unknown[] = [];
const { create } = ValueObjectFactory;
ValueObjectFactory.create = function (rawValue, isIgnoreNumberPattern) {
  if (isIgnoreNumberPattern !== true) askedOf.push(rawValue);
  return create.call(this, rawValue, isIgnoreNumberPattern);
};

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

  test("hidden-rows: no row is asked for unless a function wants to know whether it is hidden", async () => {
    // SUBTOTAL: 9 adds hidden rows up, 109 leaves them out. Source: Microsoft, "SUBTOTAL function".
    const cells = { A1: 1, A2: 2, A3: 4, A4: 8 };
    const asked = jest.spyOn(Worksheet.prototype, "getRowVisible");
    await answers({ Data: { ...cells, C1: "=SUM(A1:A4)" } }, { hiddenRows: { Data: [2, 3] } });
    expect(asked).not.toHaveBeenCalled();
    const subtotals = { C1: "=SUBTOTAL(109,A1:A4)", C2: "=SUBTOTAL(9,A1:A4)", C3: "=AGGREGATE(9,5,A1:A4)" };
    const result = await answers({ Data: { ...cells, ...subtotals } }, { hiddenRows: { Data: [2, 3] } });
    expect(result.block("C1:C3")).toEqual([[9], [15], [9]]);
    expect(asked).toHaveBeenCalled();
    asked.mockRestore();
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

  test("known-ranges, kept-ranges: at a change only what follows from it is worked out", async () => {
    const cells: Record<string, Cells[string]> = { A1: 1, A2: 2, D1: "=SUM(A1:A2)" };
    for (let row = 1; row <= 100; row++) cells[`B${row}`] = `=SUM(C${row}:C${row + 1})`;
    const engine = openEngine(toSnapshot(workbook({ Data: cells }), { id: "cost" }));
    await engine.settled();
    const worked = jest.spyOn(Interpreter.prototype, "execute");
    const entered = jest.spyOn(RTree.prototype, "bulkInsert");
    await engine.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
      unitId: "cost",
      subUnitId: sheetId(0),
      range: { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 },
      value: { v: 5 },
    });
    await engine.settled();
    const counts = [worked.mock.calls.length, entered.mock.calls.flatMap(([items]) => items).length];
    worked.mockRestore();
    entered.mockRestore();
    const sum = engine.workbook.getActiveSheet().getCellRaw(0, 3)?.v;
    engine.close();
    expect(sum).toBe(7);
    // D1 alone is computed; of no formula is it asked again what it reads.
    expect(counts).toEqual([1, 0]);
  });

  test("one-search: what reads a formula's cells is looked up once", async () => {
    const cells: Record<string, Cells[string]> = { A1: "=1" };
    for (let row = 2; row <= 100; row++) cells[`A${row}`] = `=A${row - 1}+1`;
    const search = jest.spyOn(DependencyManagerService.prototype, "searchDependency");
    const result = await answers({ Data: cells });
    const searches = search.mock.calls.length;
    search.mockRestore();
    expect(result.value("A100")).toBe(100);
    // Once for each formula, and for the cells that are new.
    expect(searches).toBeLessThan(110);
  });

  test("one-search: a circle is noticed all the same", async () => {
    const noticed = jest.spyOn(FormulaRuntimeService.prototype, "enableCycleDependency");
    await answers({ Data: { A1: "=B1+1", B1: "=C1+1", C1: "=2+3" } });
    expect(noticed).not.toHaveBeenCalled();
    await answers({ Data: { A1: "=B1+1", B1: "=C1+1", C1: "=A1+1", D1: "=2+3" } });
    expect(noticed).toHaveBeenCalled();
    noticed.mockRestore();
  });

  test("plain-texts: whether a text is a date or an amount of money is asked once", () => {
    askedOf.length = 0;
    const values = ["sole ulcer", "20%", "sole ulcer"].map((text) => ValueObjectFactory.create(text).getValue());
    expect(values).toEqual(["sole ulcer", 0.2, "sole ulcer"]);
    expect(askedOf).toEqual(["sole ulcer", "20%"]);
  });
});
