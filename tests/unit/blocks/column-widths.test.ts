import { computeBlock } from "../../../src/blocks/compute";
import { BlockData } from "../../../src/blocks/data";
import { lesionRates } from "../../../src/blocks/herd/lesion-rates";
import { layOutBlock } from "../../../src/blocks/layout";
import { ownReferences } from "../../../src/blocks/references/own";
import { specOf } from "./both-sides";
import { AT, tablesOf } from "./sheet-side";
import { AS_OF_DAY, SETTINGS, smallBook, soundCows } from "./small-books";

function widthsOf(lesions: readonly string[], isComputed = true): readonly number[] {
  const findings = lesions.map((lesion, index) => ({ date: AS_OF_DAY - 10, cow: 100 + index, foot: "LH", lesion }));
  const tables = tablesOf(smallBook({ cows: soundCows, findings, settings: SETTINGS }));
  const data = new BlockData({ tables, asOf: AS_OF_DAY, scale: "0-3" });
  const references = ownReferences([...tables.values()], true);
  const computed = isComputed ? { computed: computeBlock(lesionRates, data, specOf).parts } : {};
  return layOutBlock(lesionRates, { references, specOf, at: AT, ...computed }).columnWidths;
}

test("a column of names is as wide as its longest, one of figures as its heading", () => {
  // "Interdigital/superficial dermatitis" has 35 letters, "Per 100 cow-years" above the rates 17.
  const [labels, names, , , , rate] = widthsOf(["ID", "none"]);
  expect([labels, names, rate]).toEqual([34, 37, 19]);
});

test("short names need little room", () => {
  // "Infectious lesions", the longest of the groups, has 18 letters.
  expect(widthsOf(["U", "none"])[1]).toBe(20);
});

test("before the rows are known there is room for any lesion", () => {
  expect(widthsOf(["none"], false)[1]).toBe(38);
});
