import { day } from "../../../../src/core/shared/days";
import { checkBook } from "../../../../src/herd/check/check-book";
import type { Doubt } from "../../../../src/herd/check/doubt";
import { safeRepairs } from "../../../../src/herd/check/repairs/safe-repairs";
import { cellAt } from "../../../../src/workbook/plain-book";
import { cellPosition } from "../../../../src/workbook/cell-address";
import { openSetUp, sampleBook } from "../../../workbook/mapped/own-book";

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
    expect(repairs.settled.map(({ check }) => check).sort()).toEqual(
      ["mixed unit", "mixed unit", "text date", "text number", "text number", "unknown cow", "zero count"],
    ); // oxfmt-ignore
    await open.book.changeCells({ id: "repair", title: "all repairs", cells: repairs.cells });

    const after = await open.book.readBook();
    const left = checkBook(after, AS_OF).doubts.map(nameOf);
    const others = doubts.filter((doubt) => !repairs.settled.includes(doubt));
    expect(left.sort()).toEqual(others.map(nameOf).sort());

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
});
