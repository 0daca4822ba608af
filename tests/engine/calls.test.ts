import { ICommandService } from "@univerjs/core";
import { InsertRowMutation } from "@univerjs/sheets";
import { CallLog } from "../../src/engine/call-log";
import { functionDescriptions } from "../../src/engine/descriptions";
import { openEngine, type OpenEngine } from "../../src/engine/open-engine";
import { sheetId, toSnapshot } from "../../src/engine/snapshot";
import { explain } from "../../src/functions/evaluate";
import { registry } from "../../src/functions/registry";
import { type Cells, workbook } from "./support";

jest.setTimeout(60_000);

let engine: OpenEngine | undefined;
let opened = 0;
afterEach(() => engine?.close());

async function open(cells: Cells): Promise<CallLog> {
  engine = openEngine(toSnapshot(workbook({ Data: cells }), { id: `calls-${opened++}` }));
  await engine.settled();
  return engine.log;
}

const spec = (id: string): (typeof registry)[number] => registry.find((known) => known.id === id)!;

describe("what the pane can ask about a cell", () => {
  test("the function, its arguments as handed over, and its result", async () => {
    const log = await open({ A1: 200, B1: "=HERD.CELL.SCORE(A1)", B2: "=HERD.CELL.MEAN(A1:A3)", A2: 50 });
    const call = log.callAt(sheetId(0), 0, 1)!;
    expect(call.spec).toBe(spec("CELL.SCORE"));
    expect(call.rawArguments).toEqual([[[200]]]);
    expect(call.outcome).toEqual({ value: 4, remarks: [] });
    // A blank cell is handed over as a blank, never as 0.
    expect(log.callAt(sheetId(0), 1, 1)?.rawArguments).toEqual([[[200], [50], [null]]]);
    expect(explain(call.spec, call.rawArguments).steps.length).toBeGreaterThan(0);
  });

  test("a left-out argument is a blank; texts, truths and errors are handed over as they are", async () => {
    const log = await open({ A1: "x", A2: true, A3: "=1/0", B1: "=HERD.CELL.LOSS(A1,A2,,A3)" });
    expect(log.callAt(sheetId(0), 0, 1)?.rawArguments).toEqual([[["x"]], [[true]], null, [["#DIV/0!"]]]);
  });

  test("every call of a cell, the outer one last", async () => {
    const log = await open({ A1: 200, B1: "=HERD.CELL.COUNT(HERD.CELL.SCORE(A1))+HERD.CELL.SCORE(100)" });
    expect(log.callsAt(sheetId(0), 0, 1).map((call) => [call.spec.id, call.outcome])).toEqual([
      ["CELL.SCORE", { value: 4, remarks: [] }],
      ["CELL.COUNT", { value: 200, remarks: [] }],
      ["CELL.SCORE", { value: 3, remarks: [] }],
    ]);
  });

  test("the message of an error, and none for a cell that goes on without it", async () => {
    const log = await open({
      A1: -1,
      B1: "=HERD.CELL.SCORE(A1)",
      B2: '=IFERROR(HERD.CELL.SCORE(A1),"?")',
      B3: "=HERD.CELL.SCORE(Z9)",
    });
    expect(log.messageAt(sheetId(0), 0, 1, "#VALUE!")).toMatch(/^count must be .* got -1/);
    expect(log.messageAt(sheetId(0), 2, 1, "#N/A")).toMatch(/^count is blank: enter/);
    expect(log.messageAt(sheetId(0), 1, 1, "#N/A")).toBeUndefined();
    expect(log.messageAt(sheetId(0), 5, 5, "#N/A")).toBeUndefined();
  });

  test("what is told of a cell is never another's that has moved away", async () => {
    const log = await open({ A1: 200, B1: "=HERD.CELL.SCORE(A1)", A2: 100, B2: "=HERD.CELL.SCORE(A2)" });
    await engine!.injector.get(ICommandService).executeCommand(InsertRowMutation.id, {
      unitId: engine!.workbook.getUnitId(),
      subUnitId: sheetId(0),
      range: { startRow: 0, endRow: 0, startColumn: 0, endColumn: 20 },
    });
    expect(log.callAt(sheetId(0), 1, 1)).toBeUndefined();
    await engine!.settled();
    expect(log.callsAt(sheetId(0), 1, 1).length + log.callsAt(sheetId(0), 2, 1).length).toBeGreaterThan(0);
  });

  test("each range is turned into plain values once, however many formulas read it", async () => {
    const log = await open({ A1: 200, A2: 100, B1: "=HERD.CELL.MEAN(A1:A2)", B2: "=HERD.CELL.MEAN(A1:A2)*2" });
    const [first, second] = [log.callAt(sheetId(0), 0, 1), log.callAt(sheetId(0), 1, 1)];
    expect(first?.rawArguments[0]).toBe(second?.rawArguments[0]);
  });
});

describe("the log of calls", () => {
  const call = (size: number): Parameters<CallLog["add"]>[0] => ({
    spec: registry[0]!,
    rawArguments: [Array.from({ length: size }, () => [1])],
    outcome: { value: 1, remarks: [] },
  });

  test("holds so many values at most, and forgets the oldest first", () => {
    const log = new CallLog(100);
    for (let row = 0; row < 5; row++) {
      log.add(call(40));
      log.cellDone("s", row, 0);
    }
    expect([0, 1, 2, 3, 4].map((row) => log.callsAt("s", row, 0).length)).toEqual([0, 0, 0, 1, 1]);
    log.add(call(1000));
    log.cellDone("s", 9, 0);
    expect([3, 4, 9].map((row) => log.callsAt("s", row, 0).length)).toEqual([0, 0, 1]);
  });

  test("forgets a cell that no longer calls anything, and everything when told to", () => {
    const log = new CallLog();
    log.add(call(1));
    log.cellDone("s", 0, 0);
    log.add(call(1));
    log.cellDone("s", 1, 0);
    log.cellDone("s", 0, 0);
    expect([0, 1].map((row) => log.callsAt("s", row, 0).length)).toEqual([0, 1]);
    log.add(call(1));
    log.dropRunning();
    log.cellDone("s", 2, 0);
    expect(log.callsAt("s", 2, 0)).toEqual([]);
    log.clear();
    expect(log.callsAt("s", 1, 0)).toEqual([]);
  });
});

describe("the help shown while a function is typed", () => {
  test("every function has its summary and each argument its description and an example", () => {
    const descriptions = functionDescriptions();
    expect(descriptions.map(({ functionName }) => functionName)).toEqual(registry.map(({ id }) => `HERD.${id}`));
    for (const { functionName, functionParameter, abstract } of descriptions) {
      expect([functionName, abstract]).not.toContain("");
      for (const { name, detail } of functionParameter)
        expect([functionName, name, detail.length > 5]).toEqual([functionName, name, true]);
    }
  });

  test("required and optional arguments are told apart, and what is done without them", () => {
    const { functionParameter } = functionDescriptions([spec("CELL.SCORE")])[0]!;
    expect(functionParameter).toMatchObject([
      { name: "count", require: 1, repeat: 0, example: "200" },
      { name: "unit", require: 0, detail: expect.stringContaining("Left out:"), example: '"cells/mL"' },
    ]);
  });
});
