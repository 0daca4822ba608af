import { rationBiotin } from "../../../src/functions/ration/ration-biotin";
import { rationCheck } from "../../../src/functions/ration/ration-check";
import { rationNeed } from "../../../src/functions/ration/ration-need";
import { rationSupply } from "../../../src/functions/ration/ration-supply";
import { evaluate } from "../../../src/functions/evaluate";

describe("RATION.NEED", () => {
  const need = (...args: unknown[]) => Number(evaluate(rationNeed, args).value);

  test("a dry cow is written as dry: a 0 could be a blank", () => {
    expect(need("copper", 700, "dry", 13)).toBeCloseTo((0.0145 * 700) / 0.05, 10);
    expect(() => need("copper", 700, 0, 13)).toThrow(/milkKg is blank: enter .*or "dry"/);
  });

  test.each([
    ["copper", 89, 0],
    ["copper", 90, 0.0003],
    ["copper", 190, 0.0003],
    ["copper", 191, 0.0023],
    ["zinc", 190, 0],
    ["zinc", 191, 0.017],
    ["manganese", 190, 0],
    ["manganese", 191, 0.00042],
  ])("%s on day %d of pregnancy adds %d mg for each kg of weight", (mineral, day, perKg) => {
    const absorbed: Record<string, number> = { copper: 0.05, zinc: 0.2, manganese: 0.004 };
    const more = need(mineral, 700, 20, 18, null, day) - need(mineral, 700, 20, 18);
    expect(more).toBeCloseTo((perKg * 700) / absorbed[mineral]!, 8);
  });

  test("NRC 2001 has no pregnancy here", () => {
    expect(() => need("zinc", 700, 20, 18, "NRC 2001", 200)).toThrow(/daysPregnant must be left out with NRC 2001/);
  });

  test("other minerals and systems are refused with what there is", () => {
    expect(() => need("selenium", 700, 20, 18)).toThrow(
      'mineral must be "zinc", "copper" or "manganese"; got "selenium"',
    );
    expect(() => need("zinc", 700, 20, 18, "NRC 1989")).toThrow(/system must be "NASEM 2021" or "NRC 2001"/);
  });
});

describe("RATION.CHECK", () => {
  const check = (...args: unknown[]) => evaluate(rationCheck, args).value;

  test.each([
    ["zinc", 980, "meets the need"],
    ["zinc", 1020, "meets the need"],
    ["zinc", 979, "2 % short: ask the nutritionist"],
    ["zinc", 1100, "10 % over the need"],
    ["copper", 1020, "meets the need"],
    ["copper", 1021, "copper 2 % over the need: toxic in excess, ask the nutritionist"],
    ["copper", 900, "copper 10 % under the need: only the nutritionist changes copper"],
  ])("%s, %d mg for a need of 1,000: %s", (mineral, supply, words) => {
    expect(check(mineral, supply, 1000)).toBe(words);
  });

  test("never asks for copper, whatever the supply", () => {
    for (let supply = 1; supply < 2000; supply += 37)
      expect(check("copper", supply, 200)).not.toMatch(/add|raise|more/);
  });
});

test("RATION.SUPPLY notices the content of a premix", () => {
  expect(() => evaluate(rationSupply, [25, 5000])).toThrow(/mgPerKg must be .*not of a premix/);
});

test.each([
  [19.9, "under the 20 mg a day of the trials"],
  [20, "the 20 mg a day of the trials"],
  [20.1, "over the 20 mg a day of the trials: no gain shown"],
])("RATION.BIOTIN: %d mg is %s", (dose, words) => {
  expect(evaluate(rationBiotin, [dose]).value).toBe(words);
});
