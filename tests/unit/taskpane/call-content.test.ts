import { explainCall } from "../../../src/taskpane/screens/explain/call-content";
import type { FunctionCall, PlainArgument, SelectedCell } from "../../../src/workbook/port";
import { later, litres, milk, stern } from "./specs";

const cell: SelectedCell = { sheet: "Rechecks", address: "D5", formula: "=…", shown: "…" };
/** 2025-03-01 and the days after it. */
const MARCH = 45_717;

function laterCall(rawArguments: readonly PlainArgument[], argumentTexts: readonly string[]): FunctionCall {
  return { functionId: "TEST.LATER", argumentTexts, rawArguments };
}

function litresCall(weights: readonly (number | string | null)[]): FunctionCall {
  return {
    functionId: "TEST.LITRES",
    argumentTexts: ["Tests[Day]", "Tests[Weight]", "Rules[#All]"],
    rawArguments: [
      weights.map((_, row) => [MARCH + row]),
      weights.map((weight) => [weight]),
      [["Word"], ["dry"], ["open"]],
    ],
  };
}

describe("a call with one value", () => {
  const content = explainCall(later, laterCall([MARCH, 7], ["[@Seen]", "7"]), cell);

  test("says the function, the result in its format, the working and what to take care of", () => {
    expect(content.functionName).toBe("HERD.TEST.LATER");
    expect(content.outcome).toEqual({ kind: "value", text: "2025-03-08", details: [] });
    expect(content.steps).toEqual([{ label: "Day", working: "45717 + 7", value: "45724" }]);
    expect(content.cautions).toEqual(["As the veterinarian prescribed."]);
    expect(content.limits).toEqual(["Made up for tests."]);
  });

  test("lists the inputs by name, as written and as read, with units", () => {
    expect(content.inputs).toEqual([
      { name: "start", description: "First day", text: "[@Seen]", value: "2025-03-01" },
      { name: "days", description: "Days to add", text: "7", value: "7 d" },
      { name: "place", description: "Where", value: "left out: the place is not used" },
    ]);
  });

  test("says the value used for an input left out", () => {
    expect(explainCall(later, laterCall([MARCH], ["[@Seen]"]), cell).inputs[1]?.value).toBe("left out: 14 d");
  });

  test("says the standing of each source in words", () => {
    expect(content.sources).toEqual([
      {
        name: "Common practice",
        citation: "Two weeks",
        standing: "common practice, no source",
      },
    ]);
  });
});

test("a unit that an argument chooses is the one chosen", () => {
  const milked = (...rawArguments: PlainArgument[]): FunctionCall => ({
    functionId: "TEST.MILK",
    argumentTexts: rawArguments.map(String),
    rawArguments,
  });
  expect(explainCall(milk, milked(30), cell).outcome).toMatchObject({ text: "30.0", unit: "litres" });
  expect(explainCall(milk, milked(30, "kg"), cell).outcome).toMatchObject({ text: "30.0", unit: "kg" });
});

describe("a call that was refused", () => {
  test("a wrong value marks its input and keeps the others readable", () => {
    const content = explainCall(later, laterCall([MARCH, 120], ["[@Seen]", "120"]), cell);
    const message = "days must be a number from 1 to 90 d (a season); got 120";
    expect(content.outcome).toEqual({ kind: "refused", error: "#VALUE!", message, argument: "days" });
    expect(content.inputs.map(({ value, fault }) => [value, fault])).toEqual([
      ["2025-03-01", undefined],
      ["120", message],
      ["left out: the place is not used", undefined],
    ]);
    expect(content.steps).toEqual([]);
  });

  test("a blank is missing, not wrong", () => {
    const content = explainCall(later, laterCall([null], ["[@Seen]"]), cell);
    expect(content.outcome).toMatchObject({ kind: "refused", error: "#N/A", argument: "start" });
    expect(content.inputs[0]).toMatchObject({ value: "blank", fault: "start is blank: enter a date" });
  });

  test("a value refused only beside the others is marked too", () => {
    const content = explainCall(later, laterCall([60_000, 7], ["60000", "7"]), cell);
    expect(content.inputs[0]?.fault).toBe("start must be a day up to 2030-12-31; got 60000");
  });

  test("a message that names no input marks none", () => {
    const call = { functionId: "TEST.STERN", argumentTexts: [], rawArguments: [] };
    const content = explainCall(stern, call, cell);
    expect(content.outcome).toEqual({ kind: "refused", error: "#N/A", message: "nothing was recorded yet" });
    expect(content.inputs[0]?.fault).toBeUndefined();
  });

  test("a range where one cell is wanted is shown by its size", () => {
    const content = explainCall(later, laterCall([[[MARCH], [MARCH]]], ["Seen[Day]"]), cell);
    expect(content.inputs[0]?.value).toBe("2 rows");
  });
});

describe("a call over columns", () => {
  test("a column is summed up: rows, used, left out, and the span of its values", () => {
    const content = explainCall(litres, litresCall([30, null, "dry", 24.5]), cell);
    expect(content.inputs.map(({ value }) => value)).toEqual([
      "4 rows: 4 with a value; from 2025-03-01 to 2025-03-04",
      "4 rows: 2 with a value, 2 left out (1 blank, 1 with a note); from 24.5 to 30 kg",
      "2 rows under Word",
    ]);
    expect(content.remarks).toEqual(["1 row left out: no weight"]);
  });

  test("the anchor of a spilled table says its size and that it holds a heading", () => {
    const content = explainCall(litres, litresCall([30, 20]), cell);
    expect(content.outcome).toEqual({
      kind: "value",
      text: "2 rows by 2 columns",
      details: ["Filled from D5.", "This cell is the heading “Day”."],
    });
  });

  test("a cell inside it says its row, heading, value and unit", () => {
    const spill = { anchor: "D5", row: 2, column: 1 };
    const content = explainCall(litres, litresCall([30, 20]), { ...cell, address: "E7", spill });
    expect(content.outcome).toMatchObject({
      details: ["Filled from D5.", "This cell is row 2, “Litres”: 10.0 L."],
    });
  });
});

test("where the host cannot tell the values, its message is shown", () => {
  const call: FunctionCall = { functionId: "TEST.LATER", argumentTexts: ["x"], errorMessage: "start is blank" };
  const content = explainCall(later, call, cell);
  expect(content.outcome).toEqual({ kind: "unknown", message: "start is blank" });
  expect(content.inputs[0]?.value).toBe("the host does not tell its value");
});
