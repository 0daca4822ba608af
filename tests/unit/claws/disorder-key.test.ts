import { disorderOf, disorders, nearestCodes, parentCode } from "../../../src/core/claws/disorder-key";
import { lesionSelectionOf } from "../../../src/core/claws/lesion-selection";

describe("claw disorder key", () => {
  test("has 27 rows, four of them with forms", () => {
    expect(disorders).toHaveLength(27);
    expect(new Set(disorders.map(({ parent }) => parent)).size - 1).toBe(4);
    expect(new Set(disorders.map(({ code }) => code)).size).toBe(27);
  });

  test.each([
    ["su", "SU"],
    [" Sole ulcer ", "SU"],
    ["SOLE HEMORRHAGE", "SH"],
    ["sole haemorrhage", "SH"],
    ["white-line disease", "WL"],
    ["Interdigital / superficial dermatitis", "ID"],
    ["Mortellaro", "DD"],
    ["DD M2", "DD"],
    ["digital dermatitis M4.1", "DD"],
  ])("%s is %s", (text, code) => {
    expect(disorderOf(text)?.code).toBe(code);
  });

  test.each(["AF", "IDD", "DD M5", "M2", "", "U1", "toString", "__proto__", "削蹄", "-"])(
    "%p is no disorder",
    (text) => {
      expect(disorderOf(text)).toBeUndefined();
    },
  );

  test("asymmetric claws are AC and horn fissures have three forms", () => {
    expect(disorderOf("Asymmetric claws")?.code).toBe("AC");
    expect(disorders.filter(({ parent }) => parent === "HF").map(({ code }) => code)).toEqual(["HFA", "HFH", "HFV"]);
  });

  test.each([
    ["AF", "AC"],
    ["IDD", "ID"],
    ["WLD", "WL"],
    ["sole ulser", "SU"],
    ["heel", "HHE"],
    // 2 of the 8 letters of "toe ulcer" changed: just a quarter.
    ["toe olcar", "TU"],
    // Part of "toe ulcer" and, after it in the key, of "toe necrosis".
    ["toe", "TU"],
  ])("the nearest code to %s is %s", (text, code) => {
    expect(nearestCodes(text)[0]).toBe(code);
    expect(nearestCodes(text).length).toBeLessThanOrEqual(3);
  });

  test("codes one letter away are near, whether it was changed, left out, added or swapped with its neighbour", () => {
    const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
    const oneAway = (text: string): Set<string> => {
      const places = [...text].map((_, place) => [text.slice(0, place), text.slice(place)] as const);
      const changed = places.flatMap(([before, after]) => letters.map((letter) => before + letter + after.slice(1)));
      const added = [...places, [text, ""] as const].flatMap(([before, after]) => letters.map((letter) => before + letter + after)); // oxfmt-ignore
      const dropped = places.map(([before, after]) => before + after.slice(1));
      const swapped = places.filter(([, after]) => after.length > 1).map(([before, after]) => before + after[1]! + after[0]! + after.slice(2)); // oxfmt-ignore
      return new Set([...changed, ...added, ...dropped, ...swapped]);
    };
    const some = [..."SHDWLFA"];
    const nameHas = (code: string, text: string): boolean =>
      disorderOf(code)!
        .name.toUpperCase()
        .replace(/[^A-Z]/g, "")
        .includes(text);
    const texts = some.flatMap((a) => some.flatMap((b) => some.map((c) => a + b + c)));
    // Codes come first; after them only disorders with the text in their name.
    const isWrong = (text: string): boolean => {
      const away = oneAway(text);
      const near = disorders.filter(({ code }) => away.has(code)).map(({ code }) => code);
      const got = nearestCodes(text);
      const [first, rest] = [got.slice(0, near.length), got.slice(near.length)];
      return (
        first.length !== Math.min(3, near.length) ||
        first.some((code) => !away.has(code)) ||
        rest.some((code) => away.has(code) || !nameHas(code, text))
      );
    };
    expect(texts.filter(isWrong)).toEqual([]);
  });

  test("the same first letter comes first; one letter is near to every code of two that begins with it", () => {
    expect(nearestCodes("S")).toHaveLength(3);
    for (const code of nearestCodes("S")) expect(code).toMatch(/^S.$/);
    expect(nearestCodes("WFL")).toEqual(["WL", "WLF"]);
  });

  test.each(["5", "xyzzy", "", "x".repeat(300)])("nothing is near %p", (text) => {
    expect(nearestCodes(text)).toEqual([]);
  });

  test("the longest text that a cell can hold is near to nothing, at once", () => {
    const started = performance.now();
    expect(nearestCodes("sole ulcer ".repeat(2_900))).toEqual([]);
    expect(performance.now() - started).toBeLessThan(200);
  });

  test("forms are counted as their parent", () => {
    expect(["SU", "TN", "WLF", "SHC", "HFV", "DD", "WL"].map(parentCode)).toEqual([
      "U",
      "U",
      "WL",
      "SH",
      "HF",
      "DD",
      "WL",
    ]);
    expect(parentCode("no such code")).toBe("no such code");
  });
});

describe("selection of lesions", () => {
  test("a parent takes its forms with it, a form only itself", () => {
    expect(lesionSelectionOf("WL")!.has("WLA")).toBe(true);
    expect(lesionSelectionOf("WLA")!.has("WL")).toBe(false);
    expect(lesionSelectionOf("WLA")!.has("WLF")).toBe(false);
  });

  test("groups part the key without overlap", () => {
    const sizes = ["horn", "infectious", "shape", "other"].map((word) => lesionSelectionOf(word)!.places.length);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(27);
    expect(lesionSelectionOf(" All ")).toMatchObject({
      name: "all",
      title: "All lesions",
      places: [...disorders.keys()],
    });
  });

  test.each(["hoof", "", "toString"])("%p is no selection", (text) => {
    expect(lesionSelectionOf(text)).toBeUndefined();
  });
});
