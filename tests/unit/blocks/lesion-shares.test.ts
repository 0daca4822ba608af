import { computeBlock } from "../../../src/blocks/compute";
import { BlockData } from "../../../src/blocks/data";
import type { Block } from "../../../src/blocks/block";
import { cowGroups } from "../../../src/blocks/herd/cows-looked-at";
import { lesionShares, lesionSharesOf } from "../../../src/blocks/herd/lesion-shares";
import { layOutBlock } from "../../../src/blocks/layout";
import { ownReferences } from "../../../src/blocks/references/own";
import { lesionShares as spec } from "../../../src/functions/claws/lesion-shares";
import { AT, tablesOf } from "./sheet-side";
import { AS_OF_DAY, smallBook } from "./small-books";

const finding = (daysBefore: number, cow: number, lactation: number, lesion: string) => ({ date: AS_OF_DAY - daysBefore, cow, lactation, lesion }); // oxfmt-ignore
const findings = [
  finding(10, 1, 1, "DD"),
  finding(20, 1, 1, "DD"),
  finding(10, 2, 1, "none"),
  finding(10, 3, 2, "SU"),
  finding(10, 4, 3, "none"),
  // Before the year, and on the day that the year no longer holds.
  finding(400, 5, 2, "WL"),
  finding(0, 6, 2, "WL"),
];
const tables = tablesOf(smallBook({ findings }));
const data = new BlockData({ tables, asOf: AS_OF_DAY, scale: "0-3" });

/** Code, cows and cows examined of each row. */
function countsOf(block: Block): readonly unknown[] {
  const [part] = computeBlock(block, data, () => spec).parts;
  return part?.kind === "rows" ? part.rows.slice(1).map((row) => [row[0], row[2], row[3]]) : [part];
}

test("cows with each lesion among the cows examined in the period", () => {
  expect(countsOf(lesionShares)).toEqual([
    ["U", 1, 4],
    ["DD", 1, 4],
    ["all", 2, 4],
  ]);
});

test("of a group of cows", () => {
  expect(cowGroups.map((cows) => countsOf(lesionSharesOf(cows))).slice(1)).toEqual([
    [
      ["DD", 1, 2],
      ["all", 1, 2],
    ],
    [
      ["U", 1, 2],
      ["all", 1, 2],
    ],
  ]);
});

test("in the sheet it is one formula, with a picture of the lesions above all of them", () => {
  const computed = computeBlock(lesionShares, data, () => spec).parts;
  const references = ownReferences([...tables.values()], true);
  const { cells, charts, places } = layOutBlock(lesionShares, { references, specOf: () => spec, at: AT, computed });
  const at = places["shares"]!;
  expect(cells[at.row]![0]!.formula).toBe(
    "HERD.LESION.SHARES(Findings[Cow],Findings[Lesion],Findings[Date],$C$4,$C$5)",
  );
  const [{ categories, description }] = charts as [(typeof charts)[number]];
  expect([categories.firstRow - at.row, categories.lastRow - at.row]).toEqual([1, 2]);
  expect(description).toBe("Bars of the share of cows with each lesion. The highest is Ulcer, 25 %.");
});
