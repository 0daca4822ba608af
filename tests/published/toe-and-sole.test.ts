import { neededLengthMm } from "../../src/core/reference/archer-2015";
import { clawAngle } from "../../src/functions/claws/claw-angle";
import { clawGrowOut } from "../../src/functions/claws/claw-grow-out";
import { toeCheck } from "../../src/functions/claws/toe-check";
import { toeMinimum } from "../../src/functions/claws/toe-minimum";
import { toeSole } from "../../src/functions/claws/toe-sole";
import { explain, evaluate } from "../../src/functions/evaluate";

/** Tsuka et al. 2014, J Dairy Sci 97:6271-6285: front wall from hard horn and sole of hind claws. */
const tsuka: readonly (readonly [claw: string, wallMm: number, soleMm: number])[] = [
  ["inner", 72.1, 5],
  ["inner", 75, 6.1],
  ["inner", 79.8, 7],
  ["outer", 72.7, 5],
  ["outer", 75, 6.4],
  ["outer", 78.4, 7],
];

test.each(tsuka)("Tsuka 2014: %s claw, wall %d mm, sole %d mm", (claw, wallMm, soleMm) => {
  expect(evaluate(toeSole, [wallMm, claw]).value).toBeCloseTo(soleMm, 10);
});

test("Tsuka 2014: at 75 mm both soles are under the recommended 7 mm and not under the critical 5 mm", () => {
  for (const claw of ["inner", "outer"]) {
    const { value, remarks } = explain(toeSole, [75, claw]);
    expect(Number(value)).toBeGreaterThan(5);
    expect(Number(value)).toBeLessThan(7);
    expect(remarks.join()).toContain("under 7 mm");
  }
});

test("Tsuka 2014: a wall under 70 mm goes with a sole under 4 mm: no figure is made of it", () => {
  expect(() => evaluate(toeSole, [69.9, "inner"])).toThrow("lengthMm must be from 72.1 to 79.8 mm");
  expect(() => evaluate(toeSole, [69.9, "outer"])).toThrow("lengthMm must be from 72.7 to 78.4 mm");
});

test.each([
  [69, 83],
  [76, 90],
])("Archer 2015, Vet Rec 177:222: %d mm inside the claw need %d mm of wall", (insideMm, wallMm) => {
  expect(neededLengthMm(insideMm)).toBe(wallMm);
});

test("Archer 2015: 90 mm from the skin-horn line for all, 1 mm longer a year of age", () => {
  expect(evaluate(toeMinimum, ["skin-horn line"]).value).toBe(90);
  expect(evaluate(toeMinimum, ["skin-horn line", 1]).value).toBe(90);
  const atAge = (years: number) => Number(evaluate(toeMinimum, ["skin-horn line", 3, years]).value);
  expect(atAge(6) - atAge(5)).toBe(1);
});

test("Archer 2015: 75 mm or less from the skin-horn line is enough for only 5 % of claws", () => {
  expect(evaluate(toeCheck, [75, "skin-horn line", 4]).value).toBe("short: do not cut");
});

test("Toussaint Raven 1985: 75 mm from hard horn, here for heifers", () => {
  expect(evaluate(toeMinimum, ["hard horn", "heifer"]).value).toBe(75);
  expect(evaluate(toeMinimum, ["hard horn", 1]).value).toBe(75);
});

describe("common practice, no source", () => {
  test("the toe of the inner hind claw is about 81 mm from where the horn turns hard, down to 75 mm in a heifer", () => {
    expect(evaluate(toeMinimum, ["where the horn turns hard", 2]).value).toBe(81);
    expect(evaluate(toeCheck, [81, "hard horn", 2]).value).toBe("leave");
    expect(evaluate(toeCheck, [75, "hard horn", 1]).value).toBe("leave");
    expect(evaluate(toeCheck, [75, "hard horn", 2]).value).toBe("short: do not cut");
  });
  test("the angle goes up to about 50 degrees", () => {
    expect(evaluate(clawAngle, [50]).value).toBe("within 45-52");
    expect(evaluate(clawAngle, [44]).value).toBe("shallow: raise towards 50");
  });
  test("the wall grows about 6 mm a month: 36 mm in 6 months, 75 mm in 12.5", () => {
    expect(evaluate(clawGrowOut, [36]).value).toBe(6);
    expect(evaluate(clawGrowOut, [75]).value).toBe(12.5);
  });
});
