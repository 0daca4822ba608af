import { groupBlocks } from "../../../src/blocks/herd/blocks";
import { newAndRepeat } from "../../../src/blocks/herd/new-and-repeat";
import type { Rows } from "../../../src/blocks/expression/values";
import { type BothSides, bothSides, figure } from "./both-sides";
import { AS_OF_DAY, DAY_ZERO, smallBook } from "./small-books";

jest.setTimeout(60_000);

const finding = (day: number, lactation: number | string | null, foot: string, lesion: string) => ({ date: DAY_ZERO + day, cow: 1, lactation, foot, lesion }); // oxfmt-ignore

// Her dermatitis of the first lactation is seen again ten days after she calved; the ulcers then are new.
const findings = [
  finding(200, 1, "LH", "DD"),
  finding(215, 2, "LH", "DD"),
  finding(230, 2, "LH", "DD"),
  finding(216, 2, "RH", "SU"),
  finding(217, 2, "RF", "SU"),
];
// Two more, in their second lactation all the time: a group of less than one cow has no rate.
const cows = [1, 2, 3].map((cow) => ({ cow, lactation: 2, entered: DAY_ZERO - 900, calved: cow === 1 ? DAY_ZERO + 205 : DAY_ZERO - 100 })); // oxfmt-ignore

let sides: BothSides;
beforeAll(async () => {
  const blocks = [newAndRepeat, ...groupBlocks.get("first")!, ...groupBlocks.get("later")!];
  sides = await bothSides(smallBook({ cows, findings }), AS_OF_DAY, undefined, undefined, blocks);
});

const rowsOf = (block: string, part: string): Rows => (figure(sides, block, part) as Rows).slice(1);

test("the sheet shows what the pane shows", () => {
  expect(sides.differences).toEqual([]);
});

test("a record is the same case in every figure of a group as in the herd's", () => {
  expect(figure(sides, "new-and-repeat", "new")).toBe(3);
  expect(figure(sides, "new-and-repeat", "repeats")).toBe(2);
  expect([figure(sides, "new-and-repeat-later", "new"), figure(sides, "new-and-repeat-later", "repeats")]).toEqual([2, 2]); // oxfmt-ignore
  expect([figure(sides, "new-and-repeat-first", "new"), figure(sides, "new-and-repeat-first", "repeats")]).toEqual([1, 0]); // oxfmt-ignore
  // Code, lesion, new cases, repeats, cows.
  expect(rowsOf("lesion-rates-later", "lesions").map(([code, , ...counts]) => [code, ...counts.slice(0, 3)])).toEqual([
    ["U", 2, 0, 1],
    ["DD", 0, 2, 1],
    ["all", 2, 2, 1],
  ]);
  const inMonths = rowsOf("lesion-months-later", "months").reduce((sum, row) => sum + Number(row.at(-1)), 0);
  expect(inMonths).toBe(2);
  // New cases per 100 cow-years: none of the infectious ones is new.
  expect(figure(sides, "horn-and-infectious-later", "rate infectious")).toBe(0);
});

test("the list of cows counts new cases as the figures above it do", () => {
  // From three new cases on: she has two; her own records of this group alone would make it three.
  expect(rowsOf("new-and-repeat-later", "cows")).toEqual([]);
});
