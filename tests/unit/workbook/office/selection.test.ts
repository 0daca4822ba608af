import { OfficePort } from "../../../../src/workbook/office/port";
import type { SelectedCell } from "../../../../src/workbook/port";
import { FakeHost } from "./fake-host";

const host = (): FakeHost =>
  new FakeHost({
    active: { sheet: "My cows", address: "B2" },
    sheets: [
      {
        name: "My cows",
        values: [
          ["Cow", "Score", "State"],
          [114, 4, "new"],
          [115, "", "lasting"],
        ],
        formulas: { B2: "=HERD.CELL.SCORE(200)", C2: "=HERD.LAME.CASES(A2:A3)" },
        spilledFrom: { C2: "C2", C3: "C2" },
      },
    ],
  });

/** Lets everything that is under way come to its end. */
const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));

test("the selected cell is told at once, then every other", async () => {
  const excel = host();
  const told: (SelectedCell | undefined)[] = [];
  new OfficePort().watchSelection((cell) => told.push(cell));
  await settled();
  excel.select("My cows", "A3");
  await settled();
  expect(told).toEqual([
    { sheet: "My cows", address: "B2", formula: "=HERD.CELL.SCORE(200)", shown: "4" },
    { sheet: "My cows", address: "A3", shown: "115" },
  ]);
});

test("a cell filled from elsewhere is told with the formula that fills it; the anchor itself is not", async () => {
  const excel = host();
  const told: (SelectedCell | undefined)[] = [];
  new OfficePort().watchSelection((cell) => told.push(cell));
  await settled();
  excel.select("My cows", "C3");
  await settled();
  excel.select("My cows", "C2");
  await settled();
  const formula = "=HERD.LAME.CASES(A2:A3)";
  expect(told.slice(1)).toEqual([
    { sheet: "My cows", address: "C3", formula, shown: "lasting", spill: { anchor: "C2", row: 1, column: 0 } },
    { sheet: "My cows", address: "C2", formula, shown: "new" },
  ]);
});

test("a recalculation tells the cell again", async () => {
  const excel = host();
  const listener = jest.fn();
  new OfficePort().watchSelection(listener);
  await settled();
  excel.fire("calculated");
  await settled();
  expect(listener).toHaveBeenCalledTimes(2);
});

test("many changes at once become one more reading, of the last cell", async () => {
  const excel = host();
  const told: (SelectedCell | undefined)[] = [];
  new OfficePort().watchSelection((cell) => told.push(cell));
  await settled();
  for (let time = 0; time < 50; time++) excel.fire("calculated");
  excel.select("My cows", "A2");
  await settled();
  expect(told.length).toBeLessThanOrEqual(3);
  expect(told.at(-1)).toMatchObject({ address: "A2" });
});

test("a cell that cannot be read is told as none", async () => {
  const excel = host();
  const told: (SelectedCell | undefined)[] = [];
  new OfficePort().watchSelection((cell) => told.push(cell));
  await settled();
  excel.select("No such sheet", "A1");
  await settled();
  expect(told.at(-1)).toBeUndefined();
});

test("after the watch ends nothing is told and no handler is left behind", async () => {
  const excel = host();
  const listener = jest.fn();
  const unwatch = new OfficePort().watchSelection(listener);
  await settled();
  unwatch();
  await settled();
  excel.select("My cows", "A2");
  await settled();
  expect(listener).toHaveBeenCalledTimes(1);
  expect([...excel.listeners.values()].map((handlers) => handlers.size)).toEqual([0, 0]);
});
