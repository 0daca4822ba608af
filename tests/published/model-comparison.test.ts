/**
 * 100 cows in milk, 30 of them in first lactation, all at 200,000 cells/mL, litres a year at 1.03 kg a litre: each
 * figure worked by hand from the slope its paper prints (30 × 2 × first + 70 × 2 × later, times days, over 1.03).
 */
import { cellHerdLoss } from "../../src/functions/cells/cell-herd-loss";
import { cellLactationLoss } from "../../src/functions/cells/cell-lactation-loss";
import { cellSummary } from "../../src/functions/cells/cell-summary";
import { evaluate } from "../../src/functions/evaluate";

const counts = Array<number[]>(100).fill([200]);
const lactations = Array.from({ length: 100 }, (_, row) => [row < 30 ? 1 : 2]);
const milk = Array<number[]>(100).fill([28]);

const herdLoss = (model: string, days: number): number =>
  evaluate(cellHerdLoss, [counts, lactations, days, model]).value as number;
const lactationLoss = (model: string): number =>
  30 * (evaluate(cellLactationLoss, [4, 1, model]).value as number) +
  70 * (evaluate(cellLactationLoss, [4, 2, model]).value as number);

const perDay: readonly (readonly [model: string, days305: number, days365: number])[] = [
  ["US extension table", 34_251, 40_988],
  ["Hortet-Seegers 1998", 31_981, 38_272],
  ["Koldeweij 1999", 32_358, 38_723],
  ["Potter 2018", 40_810, 48_838],
  ["Luo 2022", 49_155, 58_825],
];
const perLactation: readonly (readonly [model: string, litres: number])[] = [
  ["US extension table", 29_946],
  ["Raubertas-Shook 1982", 30_889],
  ["Hortet-Seegers 1998", 20_971],
];

test.each(perDay)("%s: %d litres over 305 days, %d over 365", (model, days305, days365) => {
  expect(Math.round(herdLoss(model, 305))).toBe(days305);
  expect(Math.round(herdLoss(model, 365))).toBe(days365);
});

test.each(perLactation)("%s: %d litres a lactation", (model, litres) => {
  expect(Math.round(lactationLoss(model))).toBe(litres);
});

describe("the trade says about 50,000 litres a year, and published models span about 20,000 to 60,000", () => {
  const figures = [...perDay.flatMap(([, a, b]) => [a, b]), ...perLactation.map(([, litres]) => litres)];

  test("the models here span 20,971 to 58,825 litres, which holds 50,000", () => {
    expect(Math.min(...figures)).toBe(20_971);
    expect(Math.max(...figures)).toBe(58_825);
    expect(Math.min(...figures)).toBeLessThan(50_000);
    expect(Math.max(...figures)).toBeGreaterThan(50_000);
  });

  test("the default falls at 40,988 litres when all are in milk all year: 18 % below 50,000, in the middle of the span", () => {
    expect(Math.round(evaluate(cellHerdLoss, [counts, lactations, 365]).value as number)).toBe(40_988);
    const middle = (20_971 + 58_825) / 2;
    expect(Math.abs(40_988 - middle) / middle).toBeLessThan(0.03);
  });

  test("over 365 days CELL.SUMMARY shows 25,096 - 40,988 - 58,825 litres, and 50,000 lies inside", () => {
    const rows = evaluate(cellSummary, [counts, lactations, milk, 365, 0.4]).value as unknown[][];
    const row = (figure: string): unknown[] => rows.find(([label]) => label === figure)!;
    const [low, central, high] = ["low", "central", "high"].map((level) => row(`milk lost, ${level}`));
    // Low: 80 and 120 kg a lactation over its 305 days, 21,600 kg × 365 / 305 / 1.03.
    expect(Math.round(low![1] as number)).toBe(25_096);
    expect(Math.round(central![1] as number)).toBe(40_988);
    expect(Math.round(high![1] as number)).toBe(58_825);
    expect(low![3]).toContain("Hortet-Seegers 1998");
    expect(central![3]).toBe("US extension table");
    expect(high![3]).toBe("Luo 2022");
    expect(Math.round(row("money lost, central")[1] as number)).toBe(16_395);
  });

  test("over 305 days the low figure is the paper's own lactation figure, 20,971 litres", () => {
    const rows = evaluate(cellSummary, [counts, lactations, milk, 305, 0.4]).value as unknown[][];
    expect(Math.round(rows.find(([label]) => label === "milk lost, low")![1] as number)).toBe(20_971);
  });
});
