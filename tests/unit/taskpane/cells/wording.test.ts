import { figuresOf } from "../../../../src/taskpane/screens/cells/summary";
import { typedNumber } from "../../../../src/taskpane/screens/cells/typed";
import { shareRows } from "../../../../src/taskpane/screens/cells/wording/change-words";
import { costWords, type CostWords } from "../../../../src/taskpane/screens/cells/wording/cost-words";
import { linkOf, linkWords } from "../../../../src/taskpane/screens/cells/wording/link-words";
import { countText, moneyText, shareText } from "../../../../src/taskpane/screens/cells/wording/money";
import { tankWords } from "../../../../src/taskpane/screens/cells/wording/tank-words";
import {
  cappedCondition,
  curedCondition,
  whatIfWords,
} from "../../../../src/taskpane/screens/cells/wording/what-if-words";

describe("the loss in words", () => {
  /** A herd of 100 cows with a count: 40,000 litres at 0.5, with 2 cows left out and 1 at the cap. */
  const summary = [
    ["figure", "value", "unit", "note"],
    ["cows listed", 102, "cows", ""],
    ["cows with a count", 100, "cows", ""],
    ["left out", 2, "cows", "no count"],
    ["counts at the cap", 1, "cows", "9,999 thousand: the true counts are that or more"],
    ["first lactation", 30, "cows", ""],
    ["later lactations", 70, "cows", ""],
    ["days", 365, "days", "only right if every cow is in milk on all of them; with dry cows about 305 a year"],
    ["milk lost, low", 30_000, "litres", "Model A"],
    ["milk lost, central", 40_000, "litres", "Model B"],
    ["milk lost, high", 60_000, "litres", "Model C"],
    ["of it first lactation", 8_000, "litres", "of the central figure"],
    ["of it later lactations", 32_000, "litres", "of the central figure"],
    ["money lost, low", 15_000, "money", ""],
    ["money lost, central", 20_000, "money", ""],
    ["money lost, high", 30_000, "money", ""],
  ];

  test("names milk, money, days, models, lactations and what is left out", () => {
    const words = costWords(figuresOf(summary), "USD") as CostWords;
    expect(words.headline).toBe("About 20,000 USD: 40,000 litres in 365 days.");
    expect(words.levels).toEqual([
      { level: "low", milk: 30_000, money: 15_000, model: "Model A" },
      { level: "central", milk: 40_000, money: 20_000, model: "Model B" },
      { level: "high", milk: 60_000, money: 30_000, model: "Model C" },
    ]);
    expect(words.parts).toEqual([
      { name: "First lactation", cows: 30, milk: 8_000 },
      { name: "Later lactations", cows: 70, milk: 32_000 },
    ]);
    expect(words.said).toEqual([
      "100 cows with a count.",
      "2 cows left out: no count. What they lose is not in the figure.",
      "1 count at the laboratory's cap (9,999 thousand): the true loss is that or more.",
      "365 days: only right if every cow is in milk on all of them; with dry cows about 305 a year.",
    ]);
  });

  test("without a price it is milk alone", () => {
    const milk = summary.filter(([name]) => !String(name).startsWith("money"));
    expect((costWords(figuresOf(milk), "USD") as CostWords).headline).toBe("About 40,000 litres in 365 days.");
  });

  test("a cow without a lactation stops the total, naming her row", () => {
    const note = "lactations must hold a lactation number wherever there is a count; got a blank or 0 in rows 3, 9";
    const stopped = summary.map((row) =>
      String(row[0]).startsWith("milk lost") ? [row[0]!, "", "litres", note] : row,
    );
    expect(costWords(figuresOf(stopped), "USD")).toEqual({
      reason:
        "A cow with a count has no lactation number (rows 3, 9 of the test): a total without her would be too low. Enter it in the Tests table.",
    });
  });
});

test("the tank lies below the plain mean where high cows give less", () => {
  const words = tankWords({ tank: 200, mean: 260, usual: 90, unit: "thousand" });
  expect(words).toEqual([
    "The tank would hold 200 thousand/mL, though the usual cow has 90 thousand/mL: the tank mixes cells, not cows, so a few high cows fill it.",
    "High cows give less milk than the others, so they weigh less: the plain mean of the cows is 260 thousand/mL.",
  ]);
});

test("shares without cows at risk stay open", () => {
  const rows = shareRows([
    ["figure", "cows", "of", "share", "lower limit", "upper limit", "note"],
    ["new", 1, 4, 0.25, 0.05, 0.7, "of cows low before; few cows"],
    ["recovered", 0, 0, "", "", "", "no cows high before"],
  ]);
  expect(rows[0]).toMatchObject({ name: "new", cows: 1, of: 4, share: 0.25, low: 0.05, high: 0.7 });
  expect(rows[1]).toMatchObject({ share: undefined, low: undefined, note: "no cows high before" });
});

describe("lame against high counts in words", () => {
  const headings = [
    "group",
    "high count",
    "low count",
    "cows",
    "share high, or ratio",
    "lower limit",
    "upper limit",
    "note",
  ];

  test("more than chance, with the cows left out", () => {
    const link = linkOf([
      headings,
      ["lame", 8, 12, 20, 0.4, 0.22, 0.61, ""],
      ["not lame", 16, 64, 80, 0.2, 0.13, 0.3, ""],
      ["all", 24, 76, 100, 0.24, 0.17, 0.33, "1 row left out: one of the two unknown"],
      ["ratio", "", "", "", 2, 1.0002, 3.9992, "association, not cause"],
    ]);
    expect(linkWords(link)).toEqual([
      "Of 20 lame cows 40 % have a high count, of 80 others 20 %.",
      "Lame cows have a high count 2.0 times as often (95 % limits 1.0 to 4.0): more than chance.",
      "1 cow left out: without a score or without a count.",
      "The two go together or they do not; neither is shown to be the cause. Age and stage of lactation drive both.",
    ]);
  });

  test("few cows are said, and a missing ratio", () => {
    const words = linkWords(
      linkOf([
        headings,
        ["lame", 0, 3, 3, 0, 0, 0.56, "few cows"],
        ["not lame", 2, 10, 12, 0.1667, 0.05, 0.45, ""],
        ["all", 2, 13, 15, 0.13, 0.04, 0.38, ""],
        ["ratio", "", "", "", "", "", "", "no ratio: a group without a high cow"],
      ]),
    );
    expect(words).toContain("No ratio: one of the groups has no cow with a high count.");
    expect(words).toContain("Few cows in one of the four places: one cow more or less changes the picture.");
  });

  test("a herd without a low cow has no ratio, though both groups have high cows", () => {
    const words = linkWords(
      linkOf([
        headings,
        ["lame", 2, 0, 2, 1, 0.34, 1, "few cows"],
        ["not lame", 3, 0, 3, 1, 0.44, 1, "few cows"],
        ["all", 5, 0, 5, 1, 0.57, 1, "few cows"],
        ["ratio", "", "", "", "", "", "", "no ratio: every cow is high"],
      ]),
    );
    expect(words).toContain("No ratio: every cow has a high count.");
  });

  test("without a lame cow nothing is set side by side", () => {
    const words = linkWords(
      linkOf([headings, ["lame", 0, 0, 0, "", "", "", "no cows"], ["not lame", 1, 1, 2, 0.5, 0.1, 0.9, ""], [], []]),
    );
    expect(words).toEqual(["No lame cow has a count at this test: there is nothing to set side by side."]);
  });
});

test("what would be left of a loss, and how much less it is", () => {
  const now = { now: 40_000, then: 25_000, unit: "litres", price: 0.5, currency: "USD" };
  expect(whatIfWords(curedCondition(5, 640), now)).toBe(
    "If the 5 highest cows (from 640 thousand) were cured: 12,500 USD (25,000 litres) would be left, 7,500 USD (15,000 litres) less.",
  );
  expect(whatIfWords(cappedCondition(200), { ...now, price: undefined })).toBe(
    "If no cow were above 200 thousand: 25,000 litres would be left, 15,000 litres less.",
  );
});

test("amounts", () => {
  expect(moneyText(34_279.6, "USD")).toBe("34,280 USD");
  expect(moneyText(12.345, "EUR")).toBe("12.35 EUR");
  expect(moneyText(5, "")).toBe("5.00 (no currency given)");
  expect(countText(1234, "thousand")).toBe("1,234 thousand/mL");
  expect(shareText(0.38)).toBe("38 %");
  expect(shareText(0.004)).toBe("0.4 %");
});

describe("a typed number", () => {
  const limits = { name: "Days", min: 1, max: 366, whole: true };

  test.each([
    ["305", 305],
    [" 1 ", 1],
    ["366", 366],
  ])("%j is taken", (text, value) => expect(typedNumber(text, limits)).toEqual({ kind: "number", value }));

  test.each(["0", "367", "30.5", "many", "-3", "1e3"])("%j is refused with the limit", (text) => {
    expect(typedNumber(text, limits)).toEqual({
      kind: "wrong",
      message: `Days must be a whole number from 1 to 366; got "${text}".`,
    });
  });

  test.each([
    ["1,000", "1000", "1"],
    ["9.999", "9999", "9.9990"],
    ["12,500", "12500", "12.5"],
  ])("%s can be one or a thousand, and is asked about", (text, whole, decimals) => {
    const count = { name: "The count", min: 1, max: 20_000 };
    expect(typedNumber(text, count)).toEqual({
      kind: "wrong",
      message: `The count: "${text}" can mean two numbers. Type ${whole}, or ${decimals}.`,
    });
    expect(typedNumber(whole, count)).toEqual({ kind: "number", value: Number(whole) });
    expect(typedNumber(decimals, count)).toEqual({ kind: "number", value: Number(decimals) });
  });

  test("a comma parts decimals, and nothing typed is a blank", () => {
    const price = { name: "Price", min: 0, max: 1000, exclusiveMin: true };
    expect(typedNumber("0,46", price)).toEqual({ kind: "number", value: 0.46 });
    expect(typedNumber("  ", price)).toEqual({ kind: "blank" });
    expect(typedNumber("0", price)).toMatchObject({ kind: "wrong" });
  });
});
