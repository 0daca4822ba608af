import { whatIf } from "../../../src/blocks/cells/what-if";
import { yearlyBill } from "../../../src/blocks/cells/yearly-bill";
import type { PlainCell } from "../../../src/workbook/port";
import { type Cells, workbook } from "../../engine/support";
import { type BothSides, bothSides, figure } from "./both-sides";
import { AS_OF_DAY, smallBook, soundTests } from "./small-books";

jest.setTimeout(60_000);

/** The small herd with a Prices table of one row: item, price and what it is for. */
async function withPrice(...row: readonly PlainCell[]): Promise<BothSides> {
  const headings = ["Item", "Price", "Per"].slice(0, row.length);
  const cells: Record<string, Cells[string]> = {};
  [headings, row].forEach((line, down) =>
    line.forEach((cell, across) => {
      if (cell !== null) cells[`${"ABC"[across]!}${down + 1}`] = cell;
    }),
  );
  const area = `A1:${"ABC"[row.length - 1]!}2`;
  const extra = workbook({ Prices: cells }, { tables: [{ sheet: "Prices", name: "Prices", area }] });
  const book = smallBook({ tests: soundTests });
  return bothSides({ ...book, sheets: [...book.sheets, ...extra.sheets] }, AS_OF_DAY, undefined, undefined, [
    yearlyBill,
    whatIf,
  ]);
}

function milkPrice(sides: BothSides): PlainCell {
  return sides.computed.get("yearly-bill")!.inputs.find(({ name }) => name === "milkPrice")!.value;
}

describe("the price of milk that the blocks start from", () => {
  test.each([
    ["Milk", 0.46, "litre"],
    ["milk ", 0.46, "Per litre"],
    [" MILK", 0.46, " l "],
    ["Milk", 0.46, null],
    ["Milk", 0.46],
  ])("%j %j %j is a litre's", async (...row) => {
    const sides = await withPrice(...row);
    expect(milkPrice(sides)).toBe(0.46);
    const [litres, money] = ["milk", "money"].map((part) => Number(figure(sides, "yearly-bill", part)));
    expect(money).toBeCloseTo(litres! * 0.46, 9);
    expect(sides.differences).toEqual([]);
  });

  test.each([
    ["Milk", 46, "100 kg", "Prices gives milk per 100 kg: write the price of a litre."],
    ["milk ", 18, "cwt", "Prices gives milk per cwt: write the price of a litre."],
    ["Milk", 46, 100, "Prices gives milk per 100: write the price of a litre."],
    ["Milk", null, "litre", "Prices has no price of milk above 0: write the price of a litre."],
    ["Milk", 0, "litre", "Prices has no price of milk above 0: write the price of a litre."],
    ["Feed", 0.3, "kg", "Prices has no row Milk: add one with its price."],
  ])("%j %j per %j is none, and says why", async (item, price, per, sentence) => {
    const sides = await withPrice(item, price, per);
    expect(milkPrice(sides)).toBe("#N/A");
    expect(figure(sides, "yearly-bill", "money")).toBe(sentence);
    expect(figure(sides, "what-if", "curedMoney")).toBe(sentence);
    expect(sides.differences).toEqual([]);
  });
});
