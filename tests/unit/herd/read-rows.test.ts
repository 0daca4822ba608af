import { day } from "../../../src/core/shared/days";
import { readHerdTable } from "../../../src/herd/read-rows";
import type { PlainCell } from "../../../src/workbook/port";
import type { TableDefinition } from "../../../src/workbook/table-definition";
import type { TableContent } from "../../../src/workbook/table-port";

const definition = {
  name: "Findings",
  about: "For this test.",
  columns: [
    { key: "date", heading: "Date", holds: "day", about: "" },
    { key: "cow", heading: "Cow", holds: "cow", about: "" },
    { key: "foot", heading: "Foot", holds: "choice", choices: ["LF", "LH"], about: "" },
    { key: "toeMm", heading: "Toe mm", holds: "number", unit: "mm", limits: [30, 200], about: "" },
    { key: "lactation", heading: "Lactation", holds: "whole number", limits: [1, 20], about: "" },
  ],
} as const satisfies TableDefinition;

function content(headings: readonly string[], ...rows: PlainCell[][]): TableContent {
  const columns = headings.map((heading) => ({ heading, calculated: false }));
  return { name: "Findings", sheet: "Findings", columns, rowCount: rows.length, rows };
}

test("reads typed rows whatever the order, case and spacing of the headings", () => {
  const table = content(
    ["TOE-MM", "note", "cow", "date", "foot", "lactation"],
    [75.5, "x", 114, day("2024-02-29") + 0.5, " lh ", 2],
  );
  expect(readHerdTable(definition, table)).toEqual({
    rows: [{ date: day("2024-02-29"), cow: "114", foot: "LH", toeMm: 75.5, lactation: 2 }],
    doubtful: [],
    missing: [],
  });
});

test("blanks are null, and blank rows keep their place", () => {
  const table = content(
    ["Date", "Cow", "Foot", "Toe mm", "Lactation"],
    [null, "", "  ", null, null],
    [null, "B7", null, null, 1],
  );
  const { rows, doubtful } = readHerdTable(definition, table);
  expect(rows.map(({ cow }) => cow)).toEqual([null, "B7"]);
  expect(doubtful).toEqual([]);
});

test.each<[string, PlainCell, string]>([
  ["Date", "20/02/2024", "a date"],
  ["Date", 12, "a date"],
  ["Foot", "XX", "LF or LH"],
  ["Toe mm", "75", "a number from 30 to 200 mm"],
  ["Toe mm", 7.5, "a number from 30 to 200 mm"],
  ["Lactation", 1.5, "a whole number from 1 to 20"],
  ["Lactation", true, "a whole number from 1 to 20"],
])("%s with %j is null and listed as doubtful", (heading, cell, expected) => {
  const { rows, doubtful } = readHerdTable(definition, content([heading], [cell]));
  expect(Object.values(rows[0]!)).toEqual([null, null, null, null, null]);
  expect(doubtful).toEqual([{ index: 0, heading, cell, expected }]);
});

test("columns that the table does not have are named", () => {
  expect(readHerdTable(definition, content(["Cow", "Date"], ["1", 45_000])).missing).toEqual([
    "Foot",
    "Toe mm",
    "Lactation",
  ]);
});
