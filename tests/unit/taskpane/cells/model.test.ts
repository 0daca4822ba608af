import { computeBlock } from "../../../../src/blocks/compute";
import { BlockData } from "../../../../src/blocks/data";
import { blockOf } from "../../../../src/blocks/gallery";
import { BlockFigures } from "../../../../src/taskpane/parts/live-blocks/block-figures";
import { readHerdTables } from "../../../../src/taskpane/parts/live-blocks/read-herd-tables";
import { specOf } from "../../../../src/taskpane/parts/live-blocks/use-live-blocks";
import { answerOf } from "../../../../src/taskpane/screens/cells/answer";
import { givenTo, isComputable, readFields } from "../../../../src/taskpane/screens/cells/given";
import { milkPriceOf } from "../../../../src/taskpane/screens/cells/milk-price";
import { testDays } from "../../../../src/taskpane/screens/cells/test-days";
import { figuresOf } from "../../../../src/taskpane/screens/cells/summary";
import { costWords, type CostWords } from "../../../../src/taskpane/screens/cells/wording/cost-words";
import { userOf } from "../due/small-book";
import { BEFORE, BOOK_TODAY, BOOKS, LATEST } from "./books";

async function dataOf(name: string): Promise<BlockData> {
  const tables = userOf(BOOKS[name]!());
  return new BlockData(await readHerdTables(tables, ["Tests", "Prices", "Cows", "Scores"], BOOK_TODAY));
}

/** A block of a book with what a user typed. */
async function computed(name: string, id: string, typed: Readonly<Record<string, string>> = {}): Promise<BlockFigures> {
  const herd = await readHerdTables(userOf(BOOKS[name]!()), ["Prices"], BOOK_TODAY);
  const read = readFields(typed, milkPriceOf(herd.tables.get("Prices")));
  const block = blockOf(id);
  expect(isComputable(block, read)).toBe(true);
  return new BlockFigures(computeBlock(block, await dataOf(name), specOf, givenTo(block, read)));
}

test("the loss of a year of two cows, worked by hand", async () => {
  // 2 doublings × 0.75 lb + 2 doublings × 1.5 lb = 4.5 lb a day; × 0.45359237 kg / 1.03 kg a litre × 365 days.
  const litres = ((4.5 * 0.45359237) / 1.03) * 365;
  const bill = await computed("sound", "yearly-bill");
  expect(bill.number("milk")).toBeCloseTo(litres, 6);
  expect(bill.number("money")).toBeCloseTo(litres * 0.5, 6);
  const words = costWords(figuresOf(bill.spilled("summary")!), "EUR") as CostWords;
  // 723.33 litres at 0.50.
  expect(words.headline).toBe("About 362 EUR: 723 litres in 365 days.");
});

test("days and price as typed, with a comma", async () => {
  const bill = await computed("sound", "yearly-bill", { days: "305", milkPrice: "0,40" });
  const litres = ((4.5 * 0.45359237) / 1.03) * 305;
  expect(bill.number("milk")).toBeCloseTo(litres, 6);
  expect(bill.number("money")).toBeCloseTo(litres * 0.4, 6);
});

test("the cows that lose most, with the tank without them", async () => {
  const top = await computed("sound", "top-cows", { number: "1" });
  // A2 loses twice as much a day as A1, and gives 30 of 50 litres at the same count.
  expect(top.rows("cows").map(([cow]) => cow)).toEqual(["A2"]);
  expect(top.number("lossShare")).toBeCloseTo(2 / 3, 9);
  expect(top.number("tankShare")).toBeCloseTo(0.6, 9);
  expect(top.number("without")).toBeCloseTo(200, 9);
});

test("what if no cow were above 100 thousand: half of the loss is left", async () => {
  const whatIf = await computed("sound", "what-if", { ceiling: "100" });
  expect(whatIf.number("below")! / whatIf.number("now")!).toBeCloseTo(0.5, 9);
  expect(whatIf.number("belowTank")).toBeCloseTo(100, 9);
});

describe("what a book lacks is said, and the rest stands", () => {
  test("no lactations: counts without a total", async () => {
    const bill = await computed("no lactations", "yearly-bill");
    expect(costWords(figuresOf(bill.spilled("summary")!), "EUR")).toHaveProperty("reason");
    expect((await computed("no lactations", "tank-and-cows")).number("tank")).toBeCloseTo(200, 9);
  });

  test("mixed units: refused with the row", async () => {
    const bill = await computed("mixed units", "yearly-bill");
    expect(bill.reason("summary")).toContain("row 2");
    expect(bill.reason("summary")).toContain("looks like cells/mL");
  });

  test("capped counts: said beside the loss", async () => {
    const bill = await computed("capped", "yearly-bill");
    const words = costWords(figuresOf(bill.spilled("summary")!), "EUR") as CostWords;
    expect(words.said).toContain("1 count at the laboratory's cap (9,999 thousand): the true loss is that or more.");
  });

  test("one cow: a loss, and no tank without her", async () => {
    expect((await computed("one cow", "yearly-bill")).number("milk")).toBeCloseTo(((1.5 * 0.45359237) / 1.03) * 365, 6);
    expect((await computed("one cow", "top-cows")).number("without")).toBeUndefined();
  });

  test("no milk: a loss, and no tank", async () => {
    expect((await computed("no milk", "yearly-bill")).number("milk")).toBeGreaterThan(0);
    expect((await computed("no milk", "tank-and-cows")).reason("tank")).toContain("no row with both");
  });

  test("no price: milk alone, until a price is typed", async () => {
    const none = milkPriceOf(undefined);
    expect(none).toMatchObject({
      litre: undefined,
      remark: "The workbook has no table Prices: type the price of a litre.",
    });
    expect(readFields({}, none).price).toBeUndefined();
    expect(readFields({ milkPrice: "0.5" }, none).price).toBe(0.5);
    expect((await computed("no price", "yearly-bill")).number("milk")).toBeGreaterThan(0);
  });

  test.each(["empty", "no tables"])("%s: no figure, each with its reason, and no crash", async (name) => {
    for (const [id, part] of [
      ["yearly-bill", "summary"],
      ["top-cows", "cows"],
      ["what-if", "now"],
      ["tank-and-cows", "tank"],
      ["cell-changes", "changes"],
      ["dry-period", "dry"],
      ["legal-limit", "rolling"],
    ] as const) {
      const figures = await computed(name, id);
      expect([id, figures.number(part), figures.spilled(part), figures.reason(part)]).toEqual([
        id,
        undefined,
        undefined,
        expect.stringMatching(/[a-z]{3}/),
      ]);
    }
  });

  test("a section tells no finding before its figures are there, nor while a field holds what cannot be", async () => {
    const read = readFields({}, milkPriceOf(undefined));
    const nothingYet = new BlockFigures({ block: blockOf("top-cows"), inputs: [], parts: [] });
    expect(answerOf({ figures: nothingYet, read }, () => "No cow.")).toBeUndefined();
    const figures = await computed("sound", "top-cows");
    expect(answerOf({ figures, read }, () => "No cow.")).toBe("No cow.");
    const wrong = readFields({ number: "abc" }, milkPriceOf(undefined));
    expect(answerOf({ figures: nothingYet, read: wrong }, () => "No cow.")).toBe("Mend what is typed first.");
  });
});

describe("the price of milk", () => {
  const prices = (...row: readonly (string | number | null)[]) => ({
    name: "Prices",
    sheet: "Prices",
    columns: ["Item", "Price", "Per", "Currency", "Year"].map((heading) => ({ heading, calculated: false })),
    rowCount: 1,
    rows: [row],
  });

  test.each(["litre", "Liter", "l", "per litre"])("of a %s is taken", (per) => {
    expect(milkPriceOf(prices("milk", 0.46, per, "USD", 2026))).toEqual({
      litre: 0.46,
      currency: "USD",
      year: 2026,
      remark: undefined,
    });
  });

  test("of 100 kg is not taken for that of a litre", () => {
    expect(milkPriceOf(prices("Milk", 46, "100 kg", "EUR", 2026))).toMatchObject({
      litre: undefined,
      remark: "The Prices table gives milk per 100 kg: type the price of a litre.",
    });
  });

  test.each([[null], ["0.46"], [0]])("%j is no price", (price) => {
    expect(milkPriceOf(prices("Milk", price, "litre", "EUR", 2026)).litre).toBeUndefined();
  });
});

test("days of tests, the latest first, none after today", () => {
  const rows = [[BEFORE], [LATEST], [LATEST], [BOOK_TODAY + 1], [null], ["soon"]];
  const content = {
    name: "Tests",
    sheet: "Tests",
    columns: [{ heading: "Date", calculated: false }],
    rowCount: 6,
    rows,
  };
  expect(testDays(content, BOOK_TODAY)).toEqual([LATEST, BEFORE]);
  expect(testDays(undefined, BOOK_TODAY)).toEqual([]);
});

test("what is typed wrong keeps only its own blocks from being computed", () => {
  const read = readFields({ days: "400" }, milkPriceOf(undefined));
  expect(read.problems).toEqual({ days: 'Days must be a whole number from 1 to 366; got "400".' });
  expect(isComputable(blockOf("yearly-bill"), read)).toBe(false);
  expect(isComputable(blockOf("top-cows"), read)).toBe(true);
  expect(readFields({ ceiling: "" }, milkPriceOf(undefined)).problems).toEqual({
    ceiling: "The count: type a number.",
  });
});
