import {
  announcement,
  type ExplainEvent,
  type ExplainState,
  initialState,
  nextState,
} from "../../../src/taskpane/screens/explain/model";
import type { FunctionCall, SelectedCell } from "../../../src/workbook/port";
import { broken, later } from "./specs";

const specs = new Map([later, broken].map((spec) => [spec.id, spec]));
const MARCH = 45_717;

function run(...events: ExplainEvent[]): ExplainState {
  return events.reduce((state, event) => nextState(state, event, (id) => specs.get(id)), initialState);
}

function figure(address: string, formula = "=HERD.TEST.LATER([@Seen],7)"): SelectedCell {
  return { sheet: "Rechecks", address, formula, shown: "2025-03-08" };
}

function call(days: number, functionId = "TEST.LATER"): FunctionCall {
  return { functionId, argumentTexts: ["[@Seen]", String(days)], rawArguments: [MARCH, days] };
}

const selected = (cell: SelectedCell | undefined): ExplainEvent => ({ type: "selected", cell });
const read = (cell: SelectedCell, ...calls: FunctionCall[]): ExplainEvent => ({ type: "calls read", cell, calls });

describe("the explain screen", () => {
  test("starts with nothing selected and returns there when the workbook closes", () => {
    expect(initialState.content.kind).toBe("nothing selected");
    expect(run(selected(figure("D5")), selected(undefined))).toEqual(initialState);
  });

  test.each([
    [{ sheet: "Cows", address: "A1", shown: "" }, "blank"],
    [{ sheet: "Cows", address: "A1", shown: "114" }, "value"],
    [{ sheet: "Cows", address: "A1", shown: "3", formula: "=SUM(A2:A9)" }, "formula"],
  ] as const)("%j is pointed elsewhere without asking the workbook", (cell, holds) => {
    const state = run(selected(cell));
    expect(state.content).toEqual({ kind: "no call", holds });
    expect(state.awaited).toBeUndefined();
  });

  test("asks for the calls of a cell with one of our functions, then explains it", () => {
    const cell = figure("D5");
    const asked = run(selected(cell));
    expect(asked.awaited).toBe(cell);
    expect(asked.content.kind).toBe("reading");
    const state = run(selected(cell), read(cell, call(7)));
    expect(state.awaited).toBeUndefined();
    expect(state.content).toMatchObject({ kind: "call", call: { outcome: { text: "2025-03-08" } } });
    expect(announcement(state)).toBe("Rechecks, D5: HERD.TEST.LATER: 2025-03-08");
  });

  test("an answer for a cell that was left meanwhile changes nothing", () => {
    const first = figure("D5");
    const second = figure("D6");
    const state = run(selected(first), selected(second), read(first, call(7)));
    expect(state.content.kind).toBe("reading");
    expect(state.awaited).toBe(second);
  });

  test("with several calls the first is explained until another is chosen", () => {
    const cell = figure("D5", "=HERD.TEST.LATER([@Seen],7)-HERD.TEST.LATER([@Seen],9)");
    const both = [selected(cell), read(cell, call(7), call(9))];
    expect(run(...both).chosen).toBe(0);
    const second = run(...both, { type: "chose", index: 1 });
    expect(second.chosen).toBe(1);
    expect(second.content).toMatchObject({ call: { outcome: { text: "2025-03-10" } } });
    expect(run(...both, { type: "chose", index: 5 })).toEqual(run(...both));
  });

  test("a recalculation of the same formula keeps the choice and the old text until the new one is there", () => {
    const before = figure("D5");
    const after = { ...before, shown: "2025-03-11" };
    const chosen = run(selected(before), read(before, call(7), call(9)), { type: "chose", index: 1 });
    const waiting = nextState(chosen, selected(after), (id) => specs.get(id));
    expect(waiting.content).toEqual(chosen.content);
    const done = nextState(waiting, read(after, call(7), call(10)), (id) => specs.get(id));
    expect(done.content).toMatchObject({ call: { outcome: { text: "2025-03-11" } } });
  });

  test("another formula in the same cell starts afresh", () => {
    const before = figure("D5");
    const after = figure("D5", "=HERD.TEST.LATER([@Seen],8)");
    const state = run(selected(before), read(before, call(7), call(9)), { type: "chose", index: 1 }, selected(after));
    expect(state).toMatchObject({ chosen: 0, content: { kind: "reading" } });
  });

  test("a function that is not ours to explain is named", () => {
    const cell = figure("D5", "=HERD.NO.SUCH(1)");
    const state = run(selected(cell), read(cell, call(7, "NO.SUCH")));
    expect(state.content).toEqual({ kind: "unknown function", functionName: "HERD.NO.SUCH" });
    expect(announcement(state)).toBe("Rechecks, D5: HERD.NO.SUCH is not known");
  });

  test("a formula that only mentions our name in a text has no call", () => {
    const cell = figure("D5", '="HERD.A"');
    expect(run(selected(cell), read(cell)).content).toEqual({ kind: "no call", holds: "formula" });
  });

  test("a cell that cannot be read says so", () => {
    const cell = figure("D5");
    const state = run(selected(cell), { type: "read failed", cell, message: "gone" });
    expect(state.content).toEqual({ kind: "failed", message: "gone" });
    expect(announcement(state)).toBe("Rechecks, D5: gone");
  });

  test("a defect of a function does not take the pane down", () => {
    const cell = figure("D5", "=HERD.TEST.BROKEN()");
    const state = run(selected(cell), read(cell, { functionId: "TEST.BROKEN", argumentTexts: [], rawArguments: [] }));
    expect(state.content).toMatchObject({ kind: "failed", message: expect.stringContaining("TEST.BROKEN") });
  });

  test("an error is announced with its message", () => {
    const cell = figure("D5");
    const state = run(selected(cell), read(cell, call(0)));
    expect(announcement(state)).toBe(
      "Rechecks, D5: HERD.TEST.LATER: error. days must be a number from 1 to 90 d (a season); got 0",
    );
  });
});
