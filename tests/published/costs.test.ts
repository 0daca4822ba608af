import { publishedCosts } from "../../src/core/money/published-costs";
import { costCases } from "../../src/functions/money/cost-cases";
import { costDelay } from "../../src/functions/money/cost-delay";
import { evaluate } from "../../src/functions/evaluate";

const cases = (count: number, cost: number) =>
  evaluate(costCases, [Array.from({ length: count }, () => ["SU"]), [["Lesion", "Cost"], ["SU", cost]]]).value; // oxfmt-ignore

test("University of Wisconsin: 300 cows × 20 % at $90 a case are $5,400", () => {
  expect(cases(300 * 0.2, 90)).toBe(5400);
});

test("a veterinary bulletin of 2008: 55 cases at £178 are £9,790, about £10,000 for 100 cows", () => {
  expect(cases(55, 178)).toBe(9790);
});

test("Bruijnis et al. 2010: $4,899 in a herd of 65 are $75 a cow, clinical and subclinical together", () => {
  expect(Number(cases(65, 4899 / 65)) / 65).toBeCloseTo(75, 0);
});

test("Robcis et al. 2023: EUR 12.10 for every further week lame", () => {
  expect(evaluate(costDelay, [1, 12.1]).value).toBeCloseTo(12.1, 10);
});

/** As printed, each in its own currency and year. Cha 2010 and Willshire & Bell 2009 from memory. */
test.each([
  ["Dolecheck et al. 2019", "USD", 2018, { SU: 178, WL: 152, DD: 64 }],
  ["Cha et al. 2010", "USD", 2010, { SU: 216.07, DD: 132.96, IP: 120.7 }],
  ["Willshire & Bell 2009", "GBP", 2009, { SU: 518.73, WL: 300.05, IP: 154.24, DD: 75.57 }],
])("%s", (name, currency, year, byLesion) => {
  expect(publishedCosts.find(({ source }) => source.name === name)).toMatchObject({ currency, year, byLesion });
});
