import { farmReferences } from "../../../../src/taskpane/parts/put-in-sheet/farm-references";
import { MemoryPort } from "../../../../src/workbook/memory/port";
import { mappingTable } from "../../../../src/workbook/mapping-table";
import type { PlainSheet } from "../../../../src/workbook/plain-book";
import type { PlainCell } from "../../../../src/workbook/port";
import { memoryBook, portsOn } from "../set-up/memory-book";

const headings = mappingTable.columns.map(({ heading }) => heading);
const herd = [["Ear tag", "Came"], ...[1, 2, 3, 4].map((cow) => [cow, 45_000 + cow])];

/** Table, value, sheet, source, heading, column, heading row. */
type MappingRow = readonly PlainCell[];
const cow: MappingRow = ["Cows", "Cow", "Herd", null, "Ear tag", "A", 1];
const entered: MappingRow = ["Cows", "Entered", "Herd", null, "Came", "B", 1];

function sheet(name: string, rows: readonly MappingRow[], tables: PlainSheet["tables"] = []): PlainSheet {
  return { name, rows, tables, days: [], formulas: [], merges: [] };
}

function referencesFor(...mapping: readonly MappingRow[]) {
  const area = { firstRow: 0, firstColumn: 0, lastRow: mapping.length, lastColumn: headings.length - 1 };
  const stored = sheet("Mapping", [headings, ...mapping], [{ name: "Mapping", area, calculated: [] }]);
  const ports = portsOn(memoryBook({ sheets: [sheet("Herd", herd), stored] }));
  const workbook = { ...ports, port: new MemoryPort(), today: () => 46_000 };
  return ports.tables.listTables().then((tables) => farmReferences(workbook, tables, true));
}

test("the farm's own cells are named where the mapping holds", async () => {
  const references = await referencesFor(cow, entered);
  expect(references.column("Cows", "entered")).toBe("'Herd'!$B$2:$B$5");
});

test("a heading that is gone is told, not left out", async () => {
  const gone: MappingRow = ["Cows", "Left", "Herd", null, "Went", "F", 1];
  await expect(referencesFor(cow, entered, gone)).rejects.toThrow(/no heading of the sheet Herd is "Went" any more/);
});

test("a row of the mapping that is not understood is told", async () => {
  const strange: MappingRow = ["Pens", "Pen", "Herd", null, "Came", "B", 1];
  await expect(referencesFor(cow, entered, strange)).rejects.toThrow(/Table must be Cows.*got "Pens"/);
});
