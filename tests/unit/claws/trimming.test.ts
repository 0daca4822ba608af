import { clawAngle } from "../../../src/functions/claws/claw-angle";
import { clawBalance } from "../../../src/functions/claws/claw-balance";
import { clawGrowOut } from "../../../src/functions/claws/claw-grow-out";
import { clawReference } from "../../../src/functions/claws/claw-reference";
import { toeCheck } from "../../../src/functions/claws/toe-check";
import { toeCut } from "../../../src/functions/claws/toe-cut";
import { toeMinimum } from "../../../src/functions/claws/toe-minimum";
import { toeSole } from "../../../src/functions/claws/toe-sole";
import { trimPlan } from "../../../src/functions/claws/trim-plan";
import { evaluate, explain } from "../../../src/functions/evaluate";

test("CLAW.REFERENCE knows feet by code and in plain words", () => {
  for (const foot of ["LH", "rh", "hind", "left hind", "Rear Right", "HL", "RR"])
    expect(evaluate(clawReference, [foot]).value).toBe("inner");
  for (const foot of ["LF", "FR", "front", "left-front", "right fore"])
    expect(evaluate(clawReference, [foot]).value).toBe("outer");
  expect(() => evaluate(clawReference, ["L"])).toThrow('foot must be "front" or "hind"; got "L"');
});

describe("TOE.MINIMUM, TOE.CHECK and TOE.CUT", () => {
  test("the landmark has no default", () => {
    expect(() => evaluate(toeMinimum, [null, 3])).toThrow(/^landmark is blank: enter "hard horn" or "skin-horn line"/);
    expect(() => evaluate(toeCheck, [85, "", 3])).toThrow(/^landmark is blank/);
    expect(() => evaluate(toeCheck, [85, "coronet", 3])).toThrow(/landmark must be .*got "coronet"/);
  });

  test("a lactation that is not known, or a blank handed over as 0, gives the longer length", () => {
    for (const lactation of [null, undefined, "", 0, 2, 9])
      expect(evaluate(toeMinimum, ["hard horn", lactation]).value).toBe(81);
    for (const lactation of [1, "heifer", "Heifer"])
      expect(evaluate(toeMinimum, ["hard horn", lactation]).value).toBe(75);
  });

  test("an age adds to the minimum only when given, and says that it is weak", () => {
    expect(evaluate(toeMinimum, ["hard horn", 3, null])).toEqual({ value: 81, remarks: [] });
    expect(evaluate(toeMinimum, ["skin-horn line", null, 4])).toEqual({
      value: 94,
      remarks: [expect.stringContaining("one herd")],
    });
  });

  test.each<[lengthMm: number, landmark: string, lactation: unknown, advice: string, cut: number]>([
    [78.9, "hard horn", 3, "short: do not cut", 0],
    [79, "hard horn", 3, "leave", 0],
    [83, "hard horn", 3, "leave", 0],
    [83.1, "hard horn", 3, "shorten 2 mm", 2],
    [84.9, "hard horn", 3, "shorten 3 mm", 3],
    [87, "hard horn", 3, "shorten 6 mm", 6],
    [81, "hard horn", 1, "shorten 6 mm", 6],
    [72.9, "hard horn", 1, "short: do not cut", 0],
    [87.9, "skin-horn line", 1, "short: do not cut", 0],
    [92, "skin-horn line", 4, "leave", 0],
    [93, "skin-horn line", 4, "shorten 3 mm", 3],
  ])("%d mm from the %s, lactation %j: %s", (lengthMm, landmark, lactation, advice, cut) => {
    expect(evaluate(toeCheck, [lengthMm, landmark, lactation]).value).toBe(advice);
    expect(evaluate(toeCut, [lengthMm, landmark, lactation]).value).toBe(cut);
  });

  test("no cut goes below the minimum", () => {
    for (const [landmark, minimum] of [
      ["hard horn", 81],
      ["skin-horn line", 90],
    ] as const)
      for (let lengthMm = 30; lengthMm <= 250; lengthMm += 0.1) {
        const left = lengthMm - Number(evaluate(toeCut, [lengthMm, landmark]).value);
        expect(left >= minimum || left === lengthMm).toBe(true);
      }
  });

  test("centimetres and inches are noticed", () => {
    expect(() => evaluate(toeCheck, [8.1, "hard horn"])).toThrow(/lengthMm must be .*30 to 250 mm.*not cm.*got 8.1/);
    expect(() => evaluate(toeCheck, [810, "hard horn"])).toThrow(/lengthMm must be/);
  });
});

describe("TOE.SOLE", () => {
  test.each([
    ["inner", 72.1, 72.05, 79.8, 79.85],
    ["outer", 72.7, 72.65, 78.4, 78.45],
  ])("%s claw: answers from %d mm, not from %d, up to %d, not to %d", (claw, from, below, to, above) => {
    expect(evaluate(toeSole, [from, claw]).value).toBeCloseTo(5, 10);
    expect(evaluate(toeSole, [to, claw]).value).toBeCloseTo(7, 10);
    for (const outside of [below, above])
      expect(() => evaluate(toeSole, [outside, claw])).toThrow(new RegExp(`lengthMm must be from .*got ${outside}`));
  });

  test("grows with the length", () => {
    let before = 0;
    for (let lengthMm = 72.7; lengthMm <= 78.4; lengthMm += 0.1) {
      const sole = Number(evaluate(toeSole, [lengthMm, "outer"]).value);
      expect(sole).toBeGreaterThan(before);
      before = sole;
    }
  });

  test("is flagged under 7 mm only", () => {
    expect(evaluate(toeSole, [79.7, "inner"]).remarks).toHaveLength(1);
    expect(evaluate(toeSole, [79.8, "inner"]).remarks).toEqual([]);
    const meaning = (length: number) => explain(toeSole, [length, "inner"]).steps.at(-1)!.value;
    expect([meaning(79.7), meaning(79.8)]).toEqual(["caution", "enough"]);
  });
});

test.each([
  [44.9, "shallow: raise towards 50"],
  [45, "within 45-52"],
  [52, "within 45-52"],
  [52.1, "steep"],
])("CLAW.ANGLE: %d degrees is %s", (degrees, words) => {
  expect(evaluate(clawAngle, [degrees]).value).toBe(words);
});

describe("CLAW.BALANCE", () => {
  const balance = (inner: number, outer: number, foot: string) => evaluate(clawBalance, [inner, outer, foot]).value;

  test.each([
    [40, 42, "LH", "level: leave"],
    [40, 42.5, "LH", "lower outer heel 2 mm"],
    [40, 43, "LH", "lower outer heel 3 mm"],
    [40, 43.5, "LH", "lower outer heel 3 mm; thin sole: stop when it yields"],
    [42, 40, "LH", "level: leave"],
    [43, 40, "LH", "leave: never lower the inner heel of a hind foot"],
    [43, 40, "LF", "lower inner heel 3 mm"],
    [40, 43, "LF", "leave: never lower the outer heel of a front foot"],
  ])("inner %d mm, outer %d mm, %s: %s", (inner, outer, foot, advice) => {
    expect(balance(inner, outer, foot)).toBe(advice);
  });

  test("no pair of heights ever lowers the inner heel of a hind foot", () => {
    for (let inner = 10; inner <= 120; inner += 5)
      for (let outer = 10; outer <= 120; outer += 5) expect(balance(inner, outer, "RH")).not.toMatch(/lower inner/);
  });

  test("heights in centimetres are refused", () => {
    expect(() => balance(3.8, 4.1, "LH")).toThrow(/innerHeelMm must be .*not cm/);
  });
});

test("CLAW.GROWOUT refuses a growth that no wall has", () => {
  expect(evaluate(clawGrowOut, [36, 5]).value).toBeCloseTo(7.2, 10);
  for (const growth of [2.9, 15.1, -6]) expect(() => evaluate(clawGrowOut, [36, growth])).toThrow(/mmPerMonth must be/);
});

describe("TRIM.PLAN", () => {
  const plan = (...args: unknown[]) => (evaluate(trimPlan, args).value as string[][]).slice(1);
  const advice = (step: number, ...args: unknown[]) => plan(...args)[step - 1]![1];

  test("always five steps", () => {
    for (const lame of ["lame", "sound"])
      for (const lesion of [null, "none", "SU", "DD", "TN", "AC", "HFV"])
        expect(plan("RH", 85, 88, "hard horn", 3, lame, lesion)).toHaveLength(5);
  });

  test("no advice without its caution, whatever the foot", () => {
    for (const foot of ["LF", "RH"])
      for (const toes of [
        [85, 88],
        [75, 75],
        [82, 90],
      ])
        // oxfmt-ignore
        for (const lame of ["lame", "sound"])
          for (const lesion of [null, "SU", "DD", "TN", "AC", "HFV"])
            for (const step of plan(foot, ...toes, "hard horn", 3, lame, lesion))
              expect(step.map((text) => /\w/.test(text))).toEqual([true, true, true]);
  });

  test("loose horn is cut to the edges, but in a skin disease at the heel alone; one shorter claw is enough not to hollow", () => {
    expect(advice(5, "LH", 85, 88, "hard horn", 3, "lame", "DD")).toBe("loose heel horn and hard ridges only");
    expect(advice(5, "LH", 85, 88, "hard horn", 3, "lame", "WL")).toMatch(/under-run/);
    expect(advice(3, "LH", 87, 76, "hard horn", 3, "sound")).toBe("do not hollow out the sole");
  });

  test("a sound cow with nothing seen is not searched", () => {
    for (const lesion of [null, "", "none"]) {
      const [, , , relieve, loose] = plan("RH", 85, 88, "hard horn", 3, "sound", lesion);
      expect(relieve).toEqual(["4 relieve", "nothing: walks sound and nothing seen", "do not search"]);
      expect(loose![1]).toBe("nothing to remove");
    }
  });

  test("the second claw is matched to what is left of the first, never below the minimum", () => {
    expect(advice(2, "LH", 87, 90, "hard horn", 3, "sound")).toContain("shorten 9 mm");
    expect(advice(2, "LH", 82, 90, "hard horn", 3, "sound")).toContain("shorten 8 mm");
    expect(advice(2, "LH", 70, 90, "hard horn", 3, "sound")).toContain("shorten 9 mm");
    expect(advice(2, "LH", 87, 76, "hard horn", 3, "sound")).toBe("outer claw: shorter than it should be: do not cut");
  });

  test("a front foot begins with the outer claw and hollows the inner", () => {
    expect(advice(1, "LF", 90, 87, "hard horn", 3, "sound")).toBe("outer claw: shorten 6 mm");
    expect(advice(3, "LF", 90, 87, "hard horn", 3, "sound")).toContain("most in the inner claw");
  });

  test("a short claw is neither cut nor hollowed", () => {
    expect(advice(1, "LH", 75, 75, "hard horn", 3, "sound")).toBe("inner claw: short: do not cut");
    expect(advice(3, "LH", 75, 75, "hard horn", 3, "sound")).toBe("do not hollow out the sole");
  });

  test("a lame cow with nothing seen is searched, the other hind foot too", () => {
    const [, , , relieve] = plan("LH", 85, 88, "hard horn", 3, "lame", "none");
    expect(relieve![1]).toContain("find the cause");
    expect(relieve![2]).toContain("lift the other hind foot too");
    expect(relieve![2]).toContain("veterinarian");
    expect(plan("LF", 85, 88, "hard horn", 3, "lame", "none")[3]![2]).toBe("do not dig; no cause found: veterinarian");
  });

  test("no knife in what belongs to the veterinarian, nor in diseased skin", () => {
    for (const lesion of ["TN", "IP", "SW"]) {
      expect(advice(4, "LH", 85, 88, "hard horn", 3, "lame", lesion)).toBe("for the veterinarian today");
      expect(advice(5, "LH", 85, 88, "hard horn", 3, "lame", lesion)).toBe("for the veterinarian today");
    }
    expect(plan("LH", 85, 88, "hard horn", 3, "lame", "DD")[3]![2]).toContain("no knife in diseased skin");
  });

  test("a block only for a lame cow with a horn lesion", () => {
    for (const lesion of ["SU", "WL", "BU"]) {
      expect(advice(4, "LH", 85, 88, "hard horn", 3, "lame", lesion)).toContain("block the sound claw");
      expect(advice(4, "LH", 85, 88, "hard horn", 3, "sound", lesion)).not.toContain("block");
    }
    for (const lesion of ["DD", "ID", "IH", "HHE", "AC", null])
      expect(advice(4, "LH", 85, 88, "hard horn", 3, "lame", lesion)).not.toMatch(/block the/);
  });

  test("an unknown lesion is refused", () => {
    expect(() => plan("LH", 85, 88, "hard horn", 3, "lame", "XQ")).toThrow(/lesion must be .*"XQ"/);
  });
});
