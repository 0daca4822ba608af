import { rationNeed } from "../../src/functions/ration/ration-need";
import { rationSupply } from "../../src/functions/ration/ration-supply";
import { evaluate } from "../../src/functions/evaluate";

const need = (mineral: string, system: string) => Number(evaluate(rationNeed, [mineral, 650, 40, 25, system]).value);

/** A cow of 650 kg with 40 kg of milk eating 25 kg; equations of NASEM 2021 and NRC 2001, worked by hand. */
test.each([
  ["copper", "NASEM 2021", 220.5, 8.8],
  ["zinc", "NASEM 2021", 1425, 57],
  ["manganese", "NASEM 2021", 722.5, 28.9],
  ["copper", "NRC 2001", 265.4, 10.6],
  ["zinc", "NRC 2001", 1261.7, 50.5],
  ["manganese", "NRC 2001", 333.3, 13.3],
])("%s, %s: %d mg a day, %d mg/kg of dry matter", (mineral, system, mg, mgPerKg) => {
  expect(need(mineral, system)).toBeCloseTo(mg, 1);
  expect(need(mineral, system) / 25).toBeCloseTo(mgPerKg, 1);
});

test("Weiss on NASEM 2021: manganese about doubled, copper of high yielders fell, zinc rose", () => {
  expect(need("manganese", "NASEM 2021") / need("manganese", "NRC 2001")).toBeGreaterThan(1.8);
  expect(need("copper", "NASEM 2021")).toBeLessThan(need("copper", "NRC 2001"));
  expect(need("zinc", "NASEM 2021")).toBeGreaterThan(need("zinc", "NRC 2001"));
});

test("Weiss on NASEM 2021: copper of dry cows rose", () => {
  const dry = (system: string) => Number(evaluate(rationNeed, ["copper", 700, "dry", 13, system]).value);
  expect(dry("NASEM 2021")).toBeGreaterThan(dry("NRC 2001"));
});

test("mg/kg of dry matter and mg a day are one another times the intake", () => {
  expect(evaluate(rationSupply, [25, 57]).value).toBe(1425);
});
