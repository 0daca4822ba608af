import { cellPosition } from "../../../../src/workbook/cell-address";
import { MemoryBook, type MemoryCell } from "../../../../src/workbook/memory/book";
import { MemoryBookHost } from "../../../../src/workbook/memory/book-host";
import { placeOf, sheetOf } from "../../../../src/workbook/memory/cells";
import type { PlainArea } from "../../../../src/workbook/plain-book";
import { openBook } from "../../../../src/workbook/saving/open-book";
import { faults } from "../../../fakes/faults";
import { WRITES_KEPT } from "../../../../src/workbook/saving/log";
import type { PlainCell } from "../../../../src/workbook/port";
import { refusedAs } from "../start";
import { startSheets } from "./start";
import { bookPortContract } from "./contract";
import type { StartSheet, TestSheets } from "./test-sheets";

function areaOf(text: string): PlainArea {
  const [first, last] = text.split(":").map(cellPosition);
  return { firstRow: first!.row, firstColumn: first!.column, lastRow: last!.row, lastColumn: last!.column };
}

async function open(sheets: readonly StartSheet[]): Promise<TestSheets> {
  const book = new MemoryBook();
  const state = {
    tables: [],
    sheets: sheets.map(({ name, hidden = false, cells, merges = [] }) => ({
      name,
      hidden,
      protected: false,
      merges: merges.map(areaOf),
      spills: Object.values(cells).flatMap(({ spills }) => (spills === undefined ? [] : [areaOf(spills)])),
      cells: cells as Record<string, MemoryCell>,
    })),
  };
  book.replace(state, undefined, []);
  book.functions = "no";
  for (const { name: sheet, tables = [] } of sheets) {
    for (const { name, area } of tables) {
      await new MemoryBookHost(book).makeTable({ sheet, area: areaOf(area), name });
    }
  }
  const steps = faults();
  book.beforeStep = async () => steps.step();
  return {
    user: (log) => openBook(new MemoryBookHost(book), log),
    type: async (sheet, address, value) => {
      const place = placeOf(book.state, sheetOf(book.state, sheet), address);
      book.replace(place.put(value, place.numberFormat), "other", [undefined]);
    },
    protectSheet: async (name) => {
      const { sheets: present } = book.state;
      const changed = present.map((sheet) => (sheet.name === name ? { ...sheet, protected: true } : sheet));
      book.replace({ ...book.state, sheets: changed }, "other", []);
    },
    deleteSheet: async (name) => {
      const left = book.state.sheets.filter((sheet) => sheet.name !== name);
      book.replace({ tables: book.state.tables.filter(({ sheet }) => sheet !== name), sheets: left }, "other", []);
    },
    cell: async (sheet, address) => {
      const { value, hasFormula, numberFormat } = placeOf(book.state, sheetOf(book.state, sheet), address);
      return { value, hasFormula, ...(numberFormat === undefined ? {} : { numberFormat }) };
    },
    shown: () => book.shown && `${book.shown.sheet}!${book.shown.address}`,
    steps: steps.taken,
    failSteps: steps.fail,
    close: async () => book.close(),
  };
}

bookPortContract({ name: "memory", shows: true, computes: true, open });

test("an attempt that is refused costs no change that can be taken back", async () => {
  const port = (await open(startSheets)).user();
  const change = (id: string, address: string, was: PlainCell) =>
    port.changeCells({ id, title: id, cells: [{ sheet: "Empty", address, was, set: 1 }] });
  for (let made = 1; made <= WRITES_KEPT; made++) await change(String(made), `A${made}`, null);
  const before = port.pastChanges();
  expect(before).toHaveLength(WRITES_KEPT);
  await refusedAs(change("refused", "A1", 5), "changed");
  const area = { firstRow: 0, firstColumn: 0, lastRow: 1, lastColumn: 0 };
  await refusedAs(port.makeTable({ id: "table", title: "", sheet: "Empty", area, name: "T" }), "headings");
  expect(port.pastChanges()).toEqual(before);
});
