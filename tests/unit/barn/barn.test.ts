import { comfortIndex } from "../../../src/core/barn/stall-indices";
import { bathChange } from "../../../src/functions/barn/bath-change";
import { bathDays } from "../../../src/functions/barn/bath-days";
import { bathProduct } from "../../../src/functions/barn/bath-product";
import { bathVolume } from "../../../src/functions/barn/bath-volume";
import { bunkSpace } from "../../../src/functions/barn/bunk-space";
import { lyingBudget } from "../../../src/functions/barn/lying-budget";
import { stallComfort } from "../../../src/functions/barn/stall-comfort";
import { stallStanding } from "../../../src/functions/barn/stall-standing";
import { stallUse } from "../../../src/functions/barn/stall-use";
import { evaluate, explain } from "../../../src/functions/evaluate";

describe("stall indices", () => {
  test("standing index and comfort index make one", () => {
    for (const [lying, standing, perching] of [
      [1, 0, 0],
      [60, 4, 8],
      [7, 11, 13],
    ])
      // oxfmt-ignore
      expect(
        Number(evaluate(stallComfort, [lying, standing, perching]).value) +
          Number(evaluate(stallStanding, [lying, standing, perching]).value),
      ).toBeCloseTo(1, 12);
  });

  test("parts of cows and blanks are refused", () => {
    expect(() => evaluate(stallComfort, [60.5, 4, 8])).toThrow(/lying must be a whole number/);
    expect(() => evaluate(stallComfort, [60, null, 8])).toThrow("standing is blank");
    expect(() => evaluate(stallComfort, [0, 4, 8])).toThrow("lying is blank");
  });

  test("no cow at all is no index", () => {
    expect(() => comfortIndex({ lying: 0, standing: 0, perching: 0 })).toThrow(
      expect.objectContaining({
        kind: "unavailable",
        message: expect.stringContaining("no cow touches a stall") as string,
      }),
    );
  });

  test("more lying than in the pen is refused", () => {
    expect(evaluate(stallUse, [50, 50]).value).toBe(1);
    expect(() => evaluate(stallUse, [51, 50])).toThrow("lying must be at most penNotEating (50)");
  });
});

describe("LYING.BUDGET", () => {
  // 24 - 4 - 5 - 3 = 12, just what cows want; half an hour less is too little.
  test("says in the working whether the time is enough", () => {
    const meaning = (other: number) => explain(lyingBudget, [4, 5, other]).steps.at(-1)!.value;
    expect([meaning(3), meaning(3.5)]).toEqual(["enough", "too few"]);
  });

  test("flags less than 12 hours", () => {
    expect(evaluate(lyingBudget, [4, 5, 3]).remarks).toEqual([]);
    expect(evaluate(lyingBudget, [4, 5, 3.1]).remarks).toEqual([expect.stringContaining("under the 12 hours")]);
  });
  test("a day has 24 hours", () => {
    expect(evaluate(lyingBudget, [12, 6, 6]).value).toBe(0);
    expect(() => evaluate(lyingBudget, [12, 6, 7])).toThrow("at most 24 together; got 25");
  });
});

test("BUNK.SPACE notices centimetres", () => {
  expect(() => evaluate(bunkSpace, [6100, 100])).toThrow(/lengthM must be .*metres, not cm/);
});

describe("footbath", () => {
  test("a depth in centimetres is refused", () => {
    expect(() => evaluate(bathVolume, [3, 0.5, 15])).toThrow(/depthM must be .*metres, not cm.*got 15/);
  });

  test("a share typed for a percentage is refused", () => {
    expect(() => evaluate(bathProduct, [225, 0.05, "copper sulphate"])).toThrow(
      /percent must be .*5 means 5 %.*got 0.05/,
    );
    expect(() => evaluate(bathProduct, [225, 11, "formalin"])).toThrow(/percent must be/);
  });

  test("the basis of the percentage is said, and formalin is not formaldehyde", () => {
    const { remarks, steps } = explain(bathProduct, [225, 4, "formalin"]);
    expect(remarks.join()).toContain("v/v: litres of formalin stock");
    expect(steps.at(-1)).toMatchObject({ label: "Formaldehyde", value: "1.48 %" });
    expect(evaluate(bathProduct, [225, 5, "copper sulfate"]).remarks.join()).toContain("w/v");
  });

  test("the product has no default", () => {
    expect(() => evaluate(bathProduct, [225, 5, null])).toThrow(
      /product is blank: enter "copper sulphate" or "formalin"/,
    );
  });

  test.each([
    [65, 200, 0, 3],
    [65, 200, 2, 1],
    [65, 200, 3, 0],
    [65, 200, 9, 0],
    [200, 200, 0, 1],
    [201, 200, 0, 0],
  ])("%d cows, %d passes, %d milkings done: %d left", (cows, limit, done, left) => {
    expect(evaluate(bathChange, [cows, limit, done]).value).toBe(left);
  });

  test("a herd that passes the limit within one milking is told", () => {
    expect(evaluate(bathChange, [200, 200]).remarks).toEqual([]);
    expect(evaluate(bathChange, [201, 200]).remarks.join()).toContain("within the milking");
  });

  test.each([
    [0, "as needed"],
    [0.2499, "as needed"],
    [0.25, "2 days a week"],
    [0.5, "2 days a week"],
    [0.5001, "5 days a week"],
    [0.75, "5 days a week"],
    [0.7501, "7 days a week"],
    [1, "7 days a week"],
  ])("a share of %d with dirty legs: %s", (share, advice) => {
    expect(evaluate(bathDays, [share]).value).toBe(advice);
  });

  test("a percentage typed for a share is refused", () => {
    expect(() => evaluate(bathDays, [30])).toThrow(/hygieneShare must be .*30 % is 0.3.*got 30/);
  });
});
