import { day } from "../../../../src/core/shared/days";
import { checkBook } from "../../../../src/herd/check/check-book";
import type { Doubt } from "../../../../src/herd/check/doubt";
import { neaterWords, repairChange, safeRepairs } from "../../../../src/herd/check/repairs/safe-repairs";
import { cellAt } from "../../../../src/workbook/plain-book";
import { cellPosition } from "../../../../src/workbook/cell-address";
import { openSetUp, sampleBook } from "../../../workbook/mapped/own-book";
import { book, sheet } from "../plain-sheet";

const AS_OF = day("2026-09-01");

function nameOf({ check, sheet: name, address }: Doubt): string {
  return `${check}: ${name}!${address}`;
}

describe("the planted mistakes of a farm's own book", () => {
  test("all safe repairs at once leave exactly the other doubts, and taking them back restores the book", async () => {
    const open = await openSetUp(sampleBook("own-headings.xlsx"));
    const before = await open.book.readBook();
    const { doubts } = checkBook(before, AS_OF);
    const repairs = safeRepairs(doubts);
    const change = repairChange(repairs, "repair")!;
    expect(change.cells.length).toBe(repairs.cells.length);
    expect(repairs.settled.map(({ check }) => check).sort()).toEqual(
      ["mixed unit", "mixed unit", "text date", "text number", "text number", "unknown cow", "zero count"],
    ); // prettier-ignore
    await open.book.changeCells(change);

    const after = await open.book.readBook();
    const left = checkBook(after, AS_OF).doubts.map(nameOf);
    expect(left.sort()).toEqual(repairs.left.map(nameOf).sort());

    const at = (address: string, name: string) => {
      const { row, column } = cellPosition(address);
      return cellAt(
        after.sheets.find((one) => one.name === name)!,
        row,
        column,
      );
    };
    for (const { sheet: name, address, set } of repairs.cells) {
      const value = at(address, name);
      expect([address, value]).toEqual([address, typeof set === "object" && set !== null ? set.day : set]);
    }

    await open.book.takeBack("repair");
    expect(await open.book.readBook()).toEqual(before);
  });
});

test("a cell that two doubts would change in two ways is left to the user", () => {
  const doubt = (check: string, to: number): Doubt => ({
    check,
    level: "wrong",
    table: "Tests",
    sheet: "MLP",
    address: "F2",
    cells: 1,
    holds: "253000",
    wrong: "",
    touches: "",
    repair: { title: "", cells: [{ address: "F2", from: "253000", to }] },
  });
  expect(safeRepairs([doubt("text number", 253_000), doubt("mixed unit", 253)])).toMatchObject({
    cells: [],
    settled: [],
  });
  expect(safeRepairs([doubt("text number", 253), doubt("mixed unit", 253)]).cells.length).toBe(1);
  expect(repairChange(safeRepairs([]), "x")).toBeUndefined();
});

test("words that differ by spaces and capitals become the usual one; nothing else is touched", () => {
  const rows = [
    ["Visit", "Tag", "Leg", "What found", "What done"],
    [46_100, 1, "LH", "digi", "trim"],
    [46_101, 2, "lh ", "Digi", "Trim "],
    [46_102, 3, "LH", "digi", " trim"],
    [46_103, 4, "left back", "digi ", null],
  ];
  const { tables } = checkBook(book(sheet("Feet", rows, { days: [0], table: "Feet" })), day("2026-09-01"));
  expect(neaterWords({ tables })).toEqual([
    { sheet: "Feet", address: "C3", was: "lh ", set: "LH" },
    { sheet: "Feet", address: "D3", was: "Digi", set: "digi" },
    { sheet: "Feet", address: "D5", was: "digi ", set: "digi" },
  ]);
});
