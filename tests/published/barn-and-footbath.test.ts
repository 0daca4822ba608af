import { bathChange } from "../../src/functions/barn/bath-change";
import { bathCopper } from "../../src/functions/barn/bath-copper";
import { bathDays } from "../../src/functions/barn/bath-days";
import { bathProduct } from "../../src/functions/barn/bath-product";
import { bathVolume } from "../../src/functions/barn/bath-volume";
import { lyingBudget } from "../../src/functions/barn/lying-budget";
import { stallComfort } from "../../src/functions/barn/stall-comfort";
import { stallPerching } from "../../src/functions/barn/stall-perching";
import { stallStanding } from "../../src/functions/barn/stall-standing";
import { stallUse } from "../../src/functions/barn/stall-use";
import type { FunctionSpec } from "../../src/functions/define";
import { evaluate } from "../../src/functions/evaluate";

const number = (spec: FunctionSpec, ...args: unknown[]) => Number(evaluate(spec, args).value);

/** Exact by definition: international foot and inch, US gallon, avoirdupois pound. */
const M_PER_FT = 0.3048;
const M_PER_IN = 0.0254;
const L_PER_GAL = 3.785411784;
const KG_PER_LB = 0.45359237;
const L_PER_CUBIC_FT = (M_PER_FT * 10) ** 3;

describe("footbath", () => {
  test("NC State, Allison 1996: 2 × 6 × 0.3 ft at 7.46 gal/ft³ hold 26.85 gal; 5 % by weight of 223.66 lb of water is 11.18 lb", () => {
    const cubicFeet = number(bathVolume, 6 * M_PER_FT, 2 * M_PER_FT, 0.3 * M_PER_FT) / L_PER_CUBIC_FT;
    expect(cubicFeet).toBeCloseTo(3.6, 10);
    // Printed as 26.85: the source cuts 26.856 off.
    expect(Math.abs(cubicFeet * 7.46 - 26.85)).toBeLessThan(0.01);
    const litres = 26.85 * L_PER_GAL;
    const pounds = number(bathProduct, litres, 5, "copper sulphate") / KG_PER_LB;
    // By weight of water at 8.33 lb/gal there, by volume here: 0.2 % apart.
    expect(Math.abs(pounds / 11.18 - 1)).toBeLessThan(0.005);
  });

  test("Allison 1996 with 4 in and exact units: 29.92 gal and 12.5 lb", () => {
    const litres = number(bathVolume, 6 * M_PER_FT, 2 * M_PER_FT, 4 * M_PER_IN);
    expect(litres / L_PER_GAL).toBeCloseTo(29.92, 2);
    expect(number(bathProduct, litres, 5, "copper sulphate") / KG_PER_LB).toBeCloseTo(12.5, 1);
  });

  test("Cook et al. 2012: 12 ft × 20 in × 4 in hold 50 gal", () => {
    const litres = number(bathVolume, 12 * M_PER_FT, 20 * M_PER_IN, 4 * M_PER_IN);
    expect(litres / L_PER_GAL).toBeCloseTo(49.87, 2);
    expect(Math.round(litres / L_PER_GAL)).toBe(50);
  });

  test("Cook et al. 2012: 90 gal at 5 % take 37 lb, about $104 at $2.80", () => {
    const pounds = number(bathProduct, 90 * L_PER_GAL, 5, "copper sulphate") / KG_PER_LB;
    expect(Math.floor(pounds)).toBe(37);
    expect(Math.abs(pounds * 2.8 - 104)).toBeLessThan(2);
  });

  test("Weiss, Ohio State: 200 cows, 4 milkings a week, 5 to 2 %, 40 to 50 gal save about 2,200 lb a year", () => {
    const savedPounds = (gallons: number) => {
      const perFill =
        number(bathProduct, gallons * L_PER_GAL, 5, "copper sulphate") -
        number(bathProduct, gallons * L_PER_GAL, 2, "copper sulphate");
      return (perFill / KG_PER_LB) * 4 * 52;
    };
    expect(number(bathChange, 200, 200)).toBe(1);
    expect(savedPounds(40)).toBeLessThan(2200);
    expect(savedPounds(50)).toBeGreaterThan(2200);
    expect(Math.abs(savedPounds(42.3) - 2203)).toBeLessThan(3);
  });

  test("Solano et al. 2017: 3 × 0.5 × 0.15 m at 5 % w/v: 225 L, 11.25 kg, 2.86 kg of copper", () => {
    expect(number(bathVolume, 3, 0.5, 0.15)).toBeCloseTo(225, 10);
    expect(number(bathProduct, 225, 5, "copper sulphate")).toBeCloseTo(11.25, 10);
    expect(number(bathCopper, 11.25)).toBeCloseTo(2.86, 2);
  });

  test("4 % of 37 % formalin stock in 225 L: 9.0 L of stock", () => {
    expect(number(bathProduct, 225, 4, "formalin")).toBeCloseTo(9, 10);
  });

  test("Cook & Reinemann 2007: as needed under 25 %, 7 days a week over 75 % with dirty legs", () => {
    expect(evaluate(bathDays, [0.249]).value).toBe("as needed");
    expect(evaluate(bathDays, [0.751]).value).toBe("7 days a week");
  });
});

describe("pen and time", () => {
  test("a pen of 100 cows: 20 eating, 60 lying, 8 perching, 4 standing in stalls, 8 in the alley", () => {
    expect(number(stallComfort, 60, 4, 8)).toBeCloseTo(0.8333, 4);
    expect(number(stallStanding, 60, 4, 8)).toBeCloseTo(0.1667, 4);
    expect(number(stallPerching, 60, 4, 8)).toBeCloseTo(0.1111, 4);
    expect(number(stallUse, 60, 100 - 20)).toBe(0.75);
  });

  test("Cornell: 24 hours less 8.5 of eating, drinking and company less 12 of rest leave 3.5", () => {
    expect(number(lyingBudget, 3.5, 8.5, 0)).toBe(12);
    expect(evaluate(lyingBudget, [3.5, 8.5, 0]).remarks).toEqual([]);
  });
});
