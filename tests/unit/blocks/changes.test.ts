import { changes } from "../../../src/blocks/cells/changes";
import { type BothSides, bothSides, figure } from "./both-sides";
import { AS_OF_DAY, smallBook } from "./small-books";

jest.setTimeout(60_000);

const [BEFORE, LATEST] = [AS_OF_DAY - 40, AS_OF_DAY - 10];
const row = (date: number, cow: number | string, lactation: number | null, count: number) => ({ date, cow, lactation, count }); // oxfmt-ignore

/** Cows of the row of a name, and of how many. */
function cowsIn(sides: BothSides, name: string): readonly unknown[] {
  const rows = figure(sides, "cell-changes", "changes") as readonly (readonly unknown[])[];
  return rows.find(([first]) => first === name)!.slice(1, 3);
}

async function sidesOf(tests: readonly ReturnType<typeof row>[], without: readonly string[] = []) {
  const sides = await bothSides(smallBook({ tests, without }), AS_OF_DAY, undefined, undefined, [changes]);
  expect(sides.differences).toEqual([]);
  return sides;
}

const tests = [
  // Low, then high: new.
  row(BEFORE, 1, 2, 100),
  row(LATEST, 1, 2, 300),
  // Calved between: neither new nor recovered.
  row(BEFORE, 2, 2, 100),
  row(LATEST, 2, 3, 300),
  row(BEFORE, 3, 1, 400),
  row(LATEST, 3, 2, 90),
  // Lasting; her lactation is not written at one test.
  row(BEFORE, 4, null, 400),
  row(LATEST, 4, 3, 400),
];

test("a cow that calved between the tests has no test before in this lactation", async () => {
  const sides = await sidesOf(tests);
  expect(cowsIn(sides, "new")).toEqual([1, 1]);
  expect(cowsIn(sides, "recovered")).toEqual([0, 1]);
  expect(cowsIn(sides, "lasting")).toEqual([1, 2]);
  expect(cowsIn(sides, "first high")).toEqual([1, 2]);
});

test("without lactations all cows are compared", async () => {
  const sides = await sidesOf(tests, ["Tests lactation"]);
  expect(cowsIn(sides, "new")).toEqual([2, 2]);
  expect(cowsIn(sides, "recovered")).toEqual([1, 2]);
});

test("a cow is the same whether her number was typed as a number or as text", async () => {
  const sides = await sidesOf([row(BEFORE, "7", 2, 100), row(LATEST, 7, 2, 300)]);
  expect(cowsIn(sides, "new")).toEqual([1, 1]);
});
