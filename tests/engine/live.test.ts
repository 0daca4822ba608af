import { ICommandService } from "@univerjs/core";
import { ICalculateFormulaService, IFormulaRuntimeService, LexerTreeBuilder } from "@univerjs/engine-formula";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { SetSheetTableCommand } from "@univerjs/sheets-table";
import { type OpenEngine, openEngine } from "../../src/engine/open-engine";
import { readResults } from "../../src/engine/results";
import { sheetId, toSnapshot } from "../../src/engine/snapshot";
import { parseCell } from "../../src/xlsx/address";
import type { FunctionSpec } from "../../src/functions/define";
import { registry } from "../../src/functions/registry";
import { Answers, type Cells, type Extras, workbook } from "./support";

jest.setTimeout(60_000);

let engine: OpenEngine | undefined;
let opened = 0;
afterEach(() => engine?.close());

async function open(cells: Cells, extras?: Extras, specs?: readonly FunctionSpec[]): Promise<Answers> {
  engine = openEngine(toSnapshot(workbook({ Data: cells }, extras), { id: `live-${opened++}` }), specs);
  return settled();
}

async function settled(): Promise<Answers> {
  await engine!.settled();
  return new Answers(readResults(engine!.workbook, engine!.injector, engine!.log));
}

/** Types into a cell and waits for the result. */
async function type(address: string, content: number | string): Promise<Answers> {
  await enter(address, content);
  return settled();
}

/** Types into a cell, and does not wait. */
async function enter(address: string, content: number | string): Promise<void> {
  const { row, column } = parseCell(address)!;
  const value = typeof content === "string" && content.startsWith("=") ? { f: content } : { v: content };
  await engine!.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
    unitId: engine!.workbook.getUnitId(),
    subUnitId: sheetId(0),
    range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
    value,
  });
}

describe("while cells are being typed", () => {
  test("spill-order, range-union: a changed cell changes what follows from it", async () => {
    await open({ A1: 1, A2: "=A1*2", B1: "=SEQUENCE(A1)", C1: "=SUM(B2:B9)", D1: "=B1#*10", F1: "=B3+100" });
    const result = await type("A1", 3);
    expect(result.value("A2")).toBe(6);
    expect(result.block("B1:B3")).toEqual([[1], [2], [3]]);
    expect(result.value("C1")).toBe(5);
    expect(result.block("D1:D3")).toEqual([[10], [20], [30]]);
    expect(result.value("F1")).toBe(103);
    const less = await type("A1", 2);
    expect(less.value("F1")).toBe(100);
    expect(less.block("B1:B3")).toEqual([[1], [2], [null]]);
    expect(less.value("C1")).toBe(2);
    expect(less.block("D1:D3")).toEqual([[10], [20], [null]]);
  });

  test("runs-in-turn: what is typed while the formulas are computed is in all of them", async () => {
    const pauses = [130, 130, 130, 130];
    const cells: Record<string, number | string> = {};
    // So many that a run is not over when the next number is typed.
    const rows = 3_000;
    for (let row = 1; row <= rows; row++) cells[`B${row}`] = `=A${row}*2+A$1+Z$1`;
    await open(cells);
    await enter("Z1", 100);
    for (const [index, pause] of pauses.entries()) {
      await new Promise((resolve) => setTimeout(resolve, pause));
      await enter("A1", index + 1);
      await enter(`A${index + 2}`, 10);
    }
    const result = await settled();
    const last = pauses.length;
    expect(result.value("B1")).toBe(3 * last + 100);
    for (let row = 2; row <= last + 1; row++) expect(result.value(`B${row}`)).toBe(20 + last + 100);
    expect(result.value(`B${rows}`)).toBe(last + 100);
  });

  test("runs-in-turn: a run that breaks keeps no later one waiting", async () => {
    await open({ A1: 1, B1: "=A1*2" });
    const begin = jest.spyOn(engine!.injector.get(IFormulaRuntimeService), "setFormulaExecuteStage");
    begin.mockImplementationOnce(() => {
      throw new Error("broken on purpose");
    });
    const nothing = {} as Parameters<ICalculateFormulaService["execute"]>[0];
    await expect(engine!.injector.get(ICalculateFormulaService).execute(nothing)).rejects.toThrow("broken on purpose");
    expect((await type("A1", 5)).value("B1")).toBe(10);
  });

  test("let-and-lambda: computed again and again", async () => {
    await open({ A1: 1, B1: "=LET(x,A1,x*2)", B2: "=SUM(MAP(A1:A1,LAMBDA(v,v+1)))" });
    for (const content of [5, 6, 7]) {
      const result = await type("A1", content);
      expect([result.value("B1"), result.value("B2")]).toEqual([content * 2, content + 1]);
    }
  });

  test("half-typed-bracket: a half-typed table reference spoils no later formula", async () => {
    await open({ A1: 1 });
    // The editor parses what stands in the cell after each key.
    engine!.injector.get(LexerTreeBuilder).treeBuilder("=SUM(Milk[");
    const result = await type("B1", "=SUM(A1,2)");
    expect(result.value("B1")).toBe(3);
    expect((await type("B2", "=A1:A1+1")).value("B2")).toBe(2);
  });

  test("table-references: a table that has grown is read whole, now and at the next change", async () => {
    await open(
      { A1: "Cow", B1: "Milk", A2: 1, B2: 10, A3: 2, B3: 20, D1: "=SUM(Milk[Milk])", D2: "=ROWS(Milk)" },
      { tables: [{ sheet: "Data", name: "Milk", area: "A1:B3" }] },
    );
    await type("B4", 30);
    await engine!.injector.get(ICommandService).executeCommand(SetSheetTableCommand.id, {
      unitId: engine!.workbook.getUnitId(),
      tableId: "table-Milk",
      updateRange: { newRange: { startRow: 0, endRow: 3, startColumn: 0, endColumn: 1 } },
    });
    const grown = await settled();
    expect([grown.value("D1"), grown.value("D2")]).toEqual([60, 3]);
    const changed = await type("B4", 31);
    expect([changed.value("D1"), changed.value("D2")]).toEqual([61, 3]);
  });

  test("let-and-lambda: parsed anew after a table has changed", async () => {
    await open(
      { A1: "Cow", A2: 1, A3: 2, D1: "=LET(x,A2,x*2)", D2: "=SUM(MAP(A2:A3,LAMBDA(v,v+1)))" },
      { tables: [{ sheet: "Data", name: "Cows", area: "A1:A3" }] },
    );
    await engine!.injector.get(ICommandService).executeCommand(SetSheetTableCommand.id, {
      unitId: engine!.workbook.getUnitId(),
      tableId: "table-Cows",
      updateRange: { newRange: { startRow: 0, endRow: 3, startColumn: 0, endColumn: 0 } },
    });
    await settled();
    const result = await type("A2", 5);
    expect([result.value("D1"), result.value("D2")]).toEqual([10, 9]);
  });

  test("throwing-formula: a formula that throws leaves the others alone", async () => {
    const broken: FunctionSpec = {
      ...registry[0]!,
      id: "TEST.BROKEN",
      parameters: [],
      compute: () => 1,
      get result(): FunctionSpec["result"] {
        throw new Error("broken on purpose");
      },
    };
    const result = await open({ A1: "=HERD.TEST.BROKEN()", A2: "=1+1", A3: "=A1" }, undefined, [broken]);
    expect(result.block("A1:A3")).toEqual([["#VALUE!"], [2], ["#VALUE!"]]);
    expect((await type("A2", "=2+2")).value("A2")).toBe(4);
  });
});
