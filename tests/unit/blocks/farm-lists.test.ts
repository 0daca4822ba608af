import type { MappedSource } from "../../../src/herd/mapping/mapping";
import type { HerdTableName } from "../../../src/herd/mapping/targets";
import type { PlainCell } from "../../../src/workbook/port";
import { cellAddress } from "../../../src/xlsx/address";
import type { WorkbookModel } from "../../../src/xlsx/model";
import { workbook } from "../../engine/support";
import { type BothSides, figure } from "./both-sides";
import { unexplained } from "./compare";
import { farmSides } from "./farm-sides";

jest.setTimeout(120_000);

const AS_OF_DAY = 46_400;
type Sheets = Readonly<Record<string, readonly (readonly PlainCell[])[]>>;

/** A workbook of plain ranges, one a sheet from A1; those in `tables` are tables of the same name. */
function bookOf(sheets: Sheets, tables: readonly string[] = []): WorkbookModel {
  const cells = Object.entries(sheets).map(([name, rows]) => {
    const filled = rows.flatMap((row, index) =>
      row.flatMap((value, column) => (value === null ? [] : [[cellAddress(index, column), value] as const])),
    );
    return [name, Object.fromEntries(filled)] as const;
  });
  const areas = tables.map((name) => {
    const rows = sheets[name]!;
    return { sheet: name, name, area: `A1:${cellAddress(rows.length - 1, rows[0]!.length - 1)}` };
  });
  return workbook(
    { ...Object.fromEntries(cells), Start: { B5: AS_OF_DAY } },
    { tables: areas, names: { AsOf: "Start!$B$5" } },
  );
}

/** How a sheet is read: our keys of its columns from the left, each with its unit where it has one. */
function source(
  table: HerdTableName,
  sheet: string,
  headings: readonly PlainCell[],
  keys: readonly string[],
  isTable = false,
): MappedSource {
  return {
    table,
    sheet,
    source: isTable ? sheet : undefined,
    headingRow: 0,
    columns: keys.map((key, column) => {
      const [name = "", unit] = key.split(" in ");
      return { key: name, heading: String(headings[column]), column, ...(unit === undefined ? {} : { unit: unit as "cells/mL" }) }; // oxfmt-ignore
    }),
  };
}

const herd = [
  ["Ear tag", "Came", "Went"],
  [1, 45_000, null],
  [2, 45_000, null],
  [3, 45_000, null],
];
const feet = ["Day", "Animal", "Leg", "Seen"];
const recordings = ["Sampled", "Animal", "Cells", "Milk", "Calf no"];

/** A sheet a year; the second year is a table. Words differ from ours, some with a space behind them. */
const sheets: Sheets = {
  Herd: herd,
  Feet2025: [
    feet,
    [46_050, 1, "hinten links", "Mortellaro"],
    [46_060, 2, "hinten rechts", "Mortellaro "],
    [46_070, 3, null, "none "],
    [46_200, 1, "hinten links", "DD "],
  ],
  Feet2026: [
    feet,
    [46_310, 1, "hinten links", " mortellaro"],
    [46_320, 1, "hinten  links ", "Mortellaro"],
    [46_330, 2, "hinten rechts", "Sole  sore"],
    [46_340, 3, null, null],
  ],
  Milk2025: [recordings, [46_100, 1, 100_000, 30, 1], [46_100, 2, 400_000, 10, 2]],
  Milk2026: [recordings, [46_300, 1, 200, 30, 1], [46_300, 2, 800, 10, 2], [46_300, 3, null, null, null]],
  Words: [
    ["Word", "Code"],
    ["Mortellaro ", "DD"],
    ["Sole sore", "SU"],
  ],
};
const findingKeys = ["date", "cow", "foot", "lesion"];
const testKeys = ["date", "cow", "count", "milkKg", "lactation"];
const sources = [
  source("Cows", "Herd", herd[0]!, ["cow", "entered", "left"]),
  source("Findings", "Feet2025", feet, findingKeys),
  source("Findings", "Feet2026", feet, findingKeys, true),
  source("Tests", "Milk2025", recordings, ["date", "cow", "count in cells/mL", "milkKg", "lactation"]),
  source("Tests", "Milk2026", recordings, testKeys),
];

function formulasOf({ laidOut }: BothSides, block: string): readonly string[] {
  return laidOut.get(block)!.cells.flat().flatMap((cell) => cell?.formula ?? []); // oxfmt-ignore
}

describe("a list for each year", () => {
  let sides: BothSides;
  beforeAll(async () => {
    sides = await farmSides(bookOf(sheets, ["Feet2026", "Words"]), { sources }, AS_OF_DAY);
  });

  test("the sheet adds them together as the pane does", () => {
    expect(unexplained(sides.differences)).toEqual([]);
  });

  test("new cases of all years are counted", () => {
    // Cow 1: 46050, again after 150 days, again after 110 days; ten days later it is a repeat. Cow 2: DD, then SU.
    expect(figure(sides, "new-and-repeat", "new")).toBe(5);
    expect(figure(sides, "new-and-repeat", "repeats")).toBe(1);
    expect(sides.laidOut.get("new-and-repeat")!.refusals).toEqual([]);
    expect(formulasOf(sides, "new-and-repeat").join()).toMatch(/VSTACK\(.*Feet2025.*Feet2026\[/);
  });

  test("the tests of all years stand one by one, each in its own unit", () => {
    const rows = figure(sides, "cells-by-test", "tests") as unknown[][];
    // (100 x 30 + 400 x 10) / 40 and twice that: milk weighs the counts.
    expect(rows.slice(-2).map(([day, , tank]) => [day, tank])).toEqual([
      [46_100, 175],
      [46_300, 350],
    ]);
    expect(sides.laidOut.get("cells-by-test")!.refusals).toEqual([]);
  });
});

describe("a list for each year that differ", () => {
  test("a column that one of them lacks is not named for both, nor left blank", async () => {
    const without = { ...sources[2]!, columns: sources[2]!.columns.filter(({ key }) => key !== "foot") };
    const changed = sources.map((each, index) => (index === 2 ? without : each));
    const sides = await farmSides(bookOf(sheets, ["Feet2026", "Words"]), { sources: changed }, AS_OF_DAY);
    expect(unexplained(sides.differences)).toEqual([]);
    expect(sides.laidOut.get("new-and-repeat")!.refusals.join("\n")).toMatch(
      /Findings, Foot: the table Feet2026 has no such column and another list has/,
    );
  });

  test("a formula that can ask one list only is refused with both named", async () => {
    const cows = [["Ear tag", "Calf on", "Came"], [1, 46_200, 45_000], [2, 46_210, 45_000]]; // oxfmt-ignore
    const calved = source("Cows", "Herd", cows[0]!, ["cow", "calved", "entered"]);
    const book = bookOf({ ...sheets, Herd: cows }, ["Feet2026", "Words"]);
    const sides = await farmSides(book, { sources: [calved, ...sources.slice(1)] }, AS_OF_DAY);
    expect(unexplained(sides.differences)).toEqual([]);
    expect(sides.laidOut.get("dry-period")!.refusals.join()).toMatch(
      /Tests stands in 2 lists \(the sheet Milk2025, the sheet Milk2026\), and this formula can ask only one/,
    );
  });
});

describe("words with spaces around them", () => {
  test("what a formula would read otherwise than the pane is refused with the word", async () => {
    const words = [["Word", "Code"], ["Mortellaro", "DD"], ["Sole sore", "SU"], ["none", "none"], ["Weisse-Linie", "WL"]]; // oxfmt-ignore
    const feet2025 = [...sheets["Feet2025"]!, [46_210, 2, "hinten links", "weisse linie"]];
    const book = bookOf({ ...sheets, Words: words, Feet2025: feet2025 }, ["Feet2026", "Words"]);
    const sides = await farmSides(book, { sources }, AS_OF_DAY);
    expect(unexplained(sides.differences)).toEqual([]);
    expect(sides.laidOut.get("new-and-repeat")!.refusals.join("\n")).toMatch(
      /Findings, Lesion: write "weisse linie" of the sheet Feet2025 under Words as it is written there/,
    );
  });
});
