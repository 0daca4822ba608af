import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gallery } from "../../../src/blocks/gallery";
import { recalculate } from "../../../src/engine/headless";
import { registry } from "../../../src/functions/registry";
import { adviserTemplate } from "../../../src/samples/adviser-template";
import { cellAddress } from "../../../src/workbook/cell-address";
import { FileHost } from "../../../src/workbook/file/table-host";
import { openTables } from "../../../src/workbook/saving/open-tables";
import type { NewRow } from "../../../src/workbook/table-port";
import { type ColumnDefinition, inputColumns } from "../../../src/workbook/table-definition";
import { cowsTable, findingsTable, scoresTable, testsTable } from "../../../src/workbook/tables";
import type { SheetModel, WorkbookModel } from "../../../src/xlsx/model";
import { readWorkbook } from "../../../src/xlsx/read";
import { MemoryStore } from "../../fakes/file/memory-store";
import { tableRows, valueAt } from "./sample-file";

const ids = registry.map(({ id }) => id);

function bytesOf(name: string): Uint8Array {
  return new Uint8Array(readFileSync(join(__dirname, "../../../sample-workbooks", name)));
}

/** What a cell of a recomputed file shows. */
function computed(bytes: Uint8Array): Promise<(sheet: string, address: string) => unknown> {
  return shownBy(readWorkbook(bytes, ids));
}

async function shownBy(model: WorkbookModel): Promise<(sheet: string, address: string) => unknown> {
  const { sheets } = await recalculate(model);
  const values = new Map(
    sheets.flatMap(({ name, cells }) =>
      cells.map(({ row, column, value }) => [`${name}!${cellAddress({ row, column })}`, value] as const),
    ),
  );
  return (sheet, address) => values.get(`${sheet}!${address}`);
}

/** Rows of the sample's table as they would be typed. */
function typedRows(name: string, columns: readonly ColumnDefinition[]): NewRow[] {
  return tableRows(name).map((row) =>
    Object.fromEntries(
      columns.map(({ heading, holds }) => {
        const value = row[heading] ?? null;
        return [heading, holds === "day" && typeof value === "number" ? { day: value } : value];
      }),
    ),
  );
}

describe("the adviser's template", () => {
  const bytes = bytesOf("adviser-template.xlsx");
  const book = readWorkbook(bytes, ids);

  test("has every block on a sheet of its own, all tables, and no rows", () => {
    const titles = book.sheets.map(({ cells }) => cells.find(({ row, column }) => row + column === 0)?.value);
    for (const block of gallery) expect(titles).toContain(block.title);
    const lists = ["Cows", "Findings", "Scores", "Tests"].map((name) => book.sheets.find((sheet) => sheet.name === name)!); // oxfmt-ignore
    for (const { cells, tables } of lists) {
      const { area } = tables[0]!;
      expect(area.lastRow - area.firstRow).toBe(1);
      expect(cells.filter(({ row, value, formula }) => row > area.firstRow && value !== null && formula === undefined)).toEqual([]); // oxfmt-ignore
    }
  });

  test("once the rows of a herd stand in it, computes what the herd's own workbook computes", async () => {
    const store = new MemoryStore(bytes);
    const port = openTables(new FileHost(store, { ids }));
    await port.save({
      id: "fill",
      title: "the herd",
      changes: [cowsTable, findingsTable, scoresTable, testsTable].map((table) => ({
        append: table.name,
        rows: typedRows(table.name, inputColumns(table)),
      })),
    });
    const figure = await computed(store.bytes!);
    const herd = await computed(bytesOf("herd-workbook.xlsx"));
    // The litres and the money of the year: the same test, the same price, the same 365 days.
    expect(figure("Milk and money", "B6")).toBeCloseTo(Number(herd("Cells", "B8")), 6);
    expect(figure("Milk and money", "B7")).toBeCloseTo(Number(herd("Cells", "B9")), 6);
  }, 60_000);
});

test("the sheet of the months shows whole months; the other sheets follow the period of the first one", () => {
  const { sheets } = adviserTemplate();
  const inputsOf = (name: string): unknown[] => {
    const { cells } = sheets.find((sheet) => sheet.name === name)!;
    return ["B3", "B4", "B5"].map((at) => cells.find((cell) => cell.at === at)?.holds);
  };
  // Fourteen months up to the last whole one.
  expect(inputsOf("New cases by month")).toEqual([
    { formula: "EDATE(DATE(YEAR(AsOf),MONTH(AsOf),1),-14)" },
    { formula: "DATE(YEAR(AsOf),MONTH(AsOf),1)-1" },
    { formula: "Start!$B$8" },
  ]);
  expect(inputsOf("Lesions and rates")).toEqual([
    { formula: "Start!$B$6" },
    { formula: "Start!$B$7" },
    { formula: "Start!$B$8" },
  ]);
});

describe("the farmer's bill", () => {
  test("shows on one sheet what the herd's own workbook shows for the same test", async () => {
    const book = readWorkbook(bytesOf("cell-cost.xlsx"), ids);
    expect(book.sheets.map(({ name }) => name)).toEqual(["Bill"]);
    const bill = await computed(bytesOf("cell-cost.xlsx"));
    expect(bill("Bill", "B9")).toBeCloseTo(Number(valueAt("Cells", "B8")), 6);
    expect(bill("Bill", "B10")).toBeCloseTo(Number(valueAt("Cells", "B9")), 6);
  }, 60_000);

  test("follows its milk price", async () => {
    const book = readWorkbook(bytesOf("cell-cost.xlsx"), ids);
    const [sheet] = book.sheets;
    const cells = sheet!.cells.map((cell) => (cellAddress(cell) === "B8" ? { ...cell, value: PRICE } : cell));
    const bill = await shownBy({ ...book, sheets: [{ ...sheet!, cells }] });
    expect(bill("Bill", "B8")).toBe(PRICE);
    expect(bill("Bill", "B10")).toBeCloseTo(litresOfAYear(sheet!) * PRICE, 6);
    // The cows that are listed: what each loses a day, 30 days.
    const listed = Array.from({ length: 10 }, (_, row) => Number(bill("Bill", `H${14 + row}`)));
    expect(bill("Bill", "G7")).toBeCloseTo(listed.reduce((sum, litres) => sum + litres, 0) * 30 * PRICE, 6);
  }, 60_000);
});

/** Another price than the one in the file. */
const PRICE = 0.6;

/** 0.75 lb a doubling above 50 thousand in first lactation, 1.5 lb later; 0.45359237 kg a lb, 1.03 kg a litre. */
function litresOfAYear({ cells, tables }: SheetModel): number {
  const [{ area, columns }] = tables as [SheetModel["tables"][number]];
  const place = (heading: string): number => area.firstColumn + columns.findIndex(({ name }) => name === heading);
  const at = new Map(cells.map(({ row, column, value }) => [`${row} ${column}`, value]));
  let pounds = 0;
  for (let row = area.firstRow + 1; row <= area.lastRow; row++) {
    const [count, lactation] = ["Count", "Lactation"].map((heading) => at.get(`${row} ${place(heading)}`));
    if (typeof count === "number") pounds += Math.max(0, Math.log2(count / 50)) * (lactation === 1 ? 0.75 : 1.5);
  }
  return ((pounds * 0.45359237) / 1.03) * 365;
}
