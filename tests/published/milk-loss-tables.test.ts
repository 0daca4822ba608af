/** Milk-loss models against their printed tables and sentences, at printed precision, through the worksheet functions. */
import { HORTET_SEEGERS_SLOPES } from "../../src/core/reference/hortet-seegers-1998";
import { ROLLIN_CASE_USD } from "../../src/core/reference/rollin-2015";
import { US_EXTENSION_TABLE } from "../../src/core/reference/us-extension-table";
import { cellHerdCost } from "../../src/functions/cells/cell-herd-cost";
import { cellHerdLoss } from "../../src/functions/cells/cell-herd-loss";
import { cellLactationLoss } from "../../src/functions/cells/cell-lactation-loss";
import { cellLoss } from "../../src/functions/cells/cell-loss";
import type { FunctionSpec } from "../../src/functions/define";
import { evaluate } from "../../src/functions/evaluate";

const value = (spec: FunctionSpec, ...raw: unknown[]): number => evaluate(spec, raw).value as number;

describe("US extension table, printed in lb (later lactations read; first-lactation column from memory)", () => {
  test.each(US_EXTENSION_TABLE)("score %d, %d thousand: %d and %d lb a day, %d and %d lb a lactation", (...row) => {
    const [score, thousand, dayFirst, dayLater, lactationFirst, lactationLater] = row;
    expect(value(cellLoss, thousand, 1, null, null, "lb")).toBeCloseTo(dayFirst, 10);
    expect(value(cellLoss, thousand, 2, "US extension table", null, "lb")).toBeCloseTo(dayLater, 10);
    expect(value(cellLactationLoss, score, 1, null, "lb")).toBeCloseTo(lactationFirst, 10);
    expect(value(cellLactationLoss, score, 5, null, "lb")).toBeCloseTo(lactationLater, 10);
  });

  /** The same table in metric units, converted by hand with 0.45359237 kg a lb. */
  test.each([
    [100, 0.34, 0.68, 91, 181],
    [200, 0.68, 1.36, 181, 363],
    [400, 1.02, 2.04, 272, 544],
    [800, 1.36, 2.72, 363, 726],
    [1600, 1.7, 3.4, 454, 907],
    [3200, 2.04, 4.08, 544, 1089],
    [6400, 2.38, 4.76, 635, 1270],
  ])("%d thousand in kg", (thousand, dayFirst, dayLater, lactationFirst, lactationLater) => {
    const score = Math.log2(thousand / 100) + 3;
    expect(value(cellLoss, thousand, 1, null, null, "kg")).toBeCloseTo(dayFirst, 2);
    expect(value(cellLoss, thousand, 2, null, null, "kg")).toBeCloseTo(dayLater, 2);
    expect(Math.round(value(cellLactationLoss, score, 1, null, "kg"))).toBe(lactationFirst);
    expect(Math.round(value(cellLactationLoss, score, 2, null, "kg"))).toBe(lactationLater);
  });

  test("Bailey 1997: 50,000 to 200,000 is 3 lb a day; 800,000 to 1,600,000 is 1.5 lb a day", () => {
    expect(value(cellLoss, 200_000, 2, null, "cells/mL", "lb")).toBeCloseTo(3, 10);
    const step =
      value(cellLoss, 1_600_000, 2, null, "cells/mL", "lb") - value(cellLoss, 800_000, 2, null, "cells/mL", "lb");
    expect(step).toBeCloseTo(1.5, 10);
  });

  test("Keown & Kononoff 2007: 75 cows at 800,000 lose 120,000 lb a year, about $13,000 at $11/cwt", () => {
    const pounds = 75 * value(cellLactationLoss, 6, 2, null, "lb");
    expect(pounds).toBeCloseTo(120_000, 6);
    // 13,200 exactly; the page rounds to thousands.
    expect(Math.round((pounds * 0.11) / 1000)).toBe(13);
    // Through the daily table the same herd loses 6 lb a cow and day, 14 % more over 305 days than the lactation column.
    const [counts, lactations] = [Array<number[]>(75).fill([800]), Array<number[]>(75).fill([2])];
    expect(value(cellHerdLoss, counts, lactations, 305, null, null, "lb")).toBeCloseTo(137_250, 6);
    expect(value(cellHerdCost, counts, lactations, 305, 0.11, null, null, "lb")).toBeCloseTo(15_097.5, 6);
  });
});

describe("Hortet & Seegers 1998", () => {
  /** For each doubling above 50,000: 0.4 / 0.6 kg a test day, 80 / 120 kg a lactation; the columns are worked from that. */
  test.each([
    [100, 0.4, 0.6, 80, 120],
    [200, 0.8, 1.2, 160, 240],
    [400, 1.2, 1.8, 240, 360],
    [600, 1.43, 2.15, 287, 430],
    [800, 1.6, 2.4, 320, 480],
    [1600, 2.0, 3.0, 400, 600],
  ])("%d thousand", (thousand, dayFirst, dayLater, lactationFirst, lactationLater) => {
    const score = Math.log2(thousand / 100) + 3;
    const model = "Hortet-Seegers 1998";
    expect(value(cellLoss, thousand, 1, model, null, "kg")).toBeCloseTo(dayFirst, 2);
    expect(value(cellLoss, thousand, 3, model, null, "kg")).toBeCloseTo(dayLater, 2);
    expect(Math.round(value(cellLactationLoss, score, 1, model, "kg"))).toBe(lactationFirst);
    expect(Math.round(value(cellLactationLoss, score, 3, model, "kg"))).toBe(lactationLater);
  });

  test("a test day times 305 is not the lactation figure, which is kept apart", () => {
    expect(305 * HORTET_SEEGERS_SLOPES.kgPerDay.later).toBeCloseTo(183, 10);
    expect(HORTET_SEEGERS_SLOPES.kgPerLactation.later).toBe(120);
  });
});

describe("papers that print a slope for another logarithm", () => {
  test("Raubertas & Shook 1982: 135 / 270 kg for each unit of ln, 93.6 / 187.1 kg (206 / 413 lb) for each doubling", () => {
    const model = "Raubertas-Shook 1982";
    expect(value(cellLactationLoss, 3, 1, model, "kg")).toBeCloseTo(93.6, 1);
    expect(value(cellLactationLoss, 3, 2, model, "kg")).toBeCloseTo(187.1, 1);
    expect(Math.round(value(cellLactationLoss, 3, 1, model, "lb"))).toBe(206);
    expect(Math.round(value(cellLactationLoss, 3, 2, model, "lb"))).toBe(413);
    // One unit of ln above the base is 1 / ln 2 doublings.
    expect(value(cellLactationLoss, 2 + 1 / Math.LN2, 1, model, "kg")).toBeCloseTo(135, 9);
  });

  test("Koldeweij 1999: ten times the count is 1.29 / 2.04 kg a day, a doubling 0.388 / 0.614", () => {
    expect(value(cellLoss, 500, 1, "Koldeweij 1999", null, "kg")).toBeCloseTo(1.29, 10);
    expect(value(cellLoss, 500, 2, "Koldeweij 1999", null, "kg")).toBeCloseTo(2.04, 10);
    expect(value(cellLoss, 100, 1, "Koldeweij 1999", null, "kg")).toBeCloseTo(0.388, 3);
    expect(value(cellLoss, 100, 2, "Koldeweij 1999", null, "kg")).toBeCloseTo(0.614, 3);
  });

  test("Luo 2022: 0.830 kg a day for each doubling, in any lactation", () => {
    expect(value(cellLoss, 100, 1, "Luo 2022", null, "kg")).toBeCloseTo(0.83, 10);
    expect(value(cellLoss, 400, null, "Luo 2022", null, "kg")).toBeCloseTo(2.49, 10);
  });

  test("Potter 2018: 1.6 kg a day less at 250,000 than at 50,000, 0.689 for each doubling", () => {
    expect(value(cellLoss, 250_000, null, "Potter 2018", "cells/mL", "kg")).toBeCloseTo(1.6, 10);
    expect(value(cellLoss, 100, 2, "Potter 2018", null, "kg")).toBeCloseTo(0.689, 3);
  });
});

test("Rollin 2015: the parts of a clinical case add up to 128, 316 and 444 dollars", () => {
  const sum = (parts: Readonly<Record<string, number>>): number =>
    Object.values(parts).reduce((total, part) => total + part, 0);
  expect(sum(ROLLIN_CASE_USD.directParts)).toBe(128);
  expect(sum(ROLLIN_CASE_USD.indirectParts)).toBe(316);
  expect(ROLLIN_CASE_USD.direct + ROLLIN_CASE_USD.indirect).toBe(444);
  expect(ROLLIN_CASE_USD).toMatchObject({ direct: 128, indirect: 316, total: 444 });
});
