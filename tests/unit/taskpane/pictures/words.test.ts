import { intervalsSentence, intervalText } from "../../../../src/taskpane/parts/pictures/interval-words";
import { linesSentence } from "../../../../src/taskpane/parts/pictures/lines-words";
import { stackedSentence } from "../../../../src/taskpane/parts/pictures/stacked-words";
import { twoByTwoSentence } from "../../../../src/taskpane/parts/pictures/two-by-two-words";

const rate = { label: "Digital dermatitis", value: 34.12, low: 28.2, high: 41, target: 12, against: "above" };

describe("bars with limits", () => {
  test("each says its limits, its target and its remark", () => {
    expect(intervalText({ ...rate, remark: "few cases" }, "0.0")).toBe("28.2 to 41.0; target 12: above it; few cases");
    expect(intervalText({ ...rate, against: "within chance" }, "0.0")).toBe(
      "28.2 to 41.0; target 12: chance may explain the difference",
    );
    expect(intervalText({ label: "Heifers", value: undefined, remark: "no cow examined" }, "0.0%")).toBe(
      "no cow examined",
    );
    expect(intervalText({ label: "x", value: 0.1, low: 0.05, high: 0.2, target: 0.15 }, "0.0%")).toBe(
      "5.0 % to 20.0 %; target 15.0 %",
    );
  });

  test("all together name the highest and what lies above target", () => {
    const low = { label: "Ulcer", value: 9, low: 6, high: 13, target: 13.8, against: "below" };
    expect(intervalsSentence([low, rate], "cases", "0.0")).toBe(
      "Highest: Digital dermatitis, 34.1 cases (28.2 to 41.0). Above target beyond chance: Digital dermatitis.",
    );
    expect(intervalsSentence([low], "cases", "0.0")).toBe(
      "Highest: Ulcer, 9.0 cases (6.0 to 13.0). None of 1 with a target lies above it beyond chance.",
    );
    expect(intervalsSentence([{ label: "Heifers", value: undefined }], "cases", "0")).toBe(
      "There is no figure to show.",
    );
  });
});

describe("stacked columns", () => {
  const names = ["January 2026", "February 2026"];
  test("say the whole, its parts, the most and the fewest", () => {
    const series = [
      { name: "Horn", values: [6, 4] },
      { name: "Infectious", values: [24, 6] },
      { name: "Other", values: [0, 0] },
    ];
    expect(stackedSentence(names, series, "new cases")).toBe(
      "40 new cases: horn 10 (25 %), infectious 30 (75 %). Most in January 2026 (30), fewest in February 2026 (10).",
    );
  });

  test("of nothing, of one month, and of even months", () => {
    expect(stackedSentence(names, [{ name: "Horn", values: [0, 0] }], "new cases")).toBe("No new cases.");
    expect(stackedSentence(["May 2026"], [{ name: "Horn", values: [2] }], "new cases")).toBe(
      "2 new cases: horn 2 (100 %).",
    );
    expect(stackedSentence(names, [{ name: "Horn", values: [3, 3] }], "new cases")).toBe(
      "6 new cases: horn 6 (100 %). The same in each: 3.",
    );
  });
});

describe("lines", () => {
  const names = ["2026-01-05", "2026-02-03", "2026-03-04"];
  test("say first, last, lowest and highest", () => {
    expect(linesSentence(names, [{ name: "Share lame", values: [0.24, 0.31, 0.19] }], "0.0%")).toBe(
      "Share lame: first 24.0 % (2026-01-05), last 19.0 % (2026-03-04); lowest 19.0 % (2026-03-04), highest 31.0 % (2026-02-03).",
    );
  });

  test("with gaps, one point and none", () => {
    const one = { name: "Tank", values: [undefined, 210, undefined] };
    expect(linesSentence(names, [one, { name: "Cows", values: [] }], "0")).toBe(
      "Tank: 210 (2026-02-03). Cows: no value.",
    );
  });
});

test("a two-by-two says of each group how many have it", () => {
  const rows = [
    { name: "lame cows", having: 12, not: 22 },
    { name: "cows not lame", having: 0, not: 0 },
  ];
  // 12 of 34 is 35 %.
  expect(twoByTwoSentence(rows, "high count")).toBe(
    "Of 34 lame cows, 12 (35 %) have a high count. There are no cows not lame. What causes what, the counts cannot tell.",
  );
});
