import type { Workbook } from "@cj-tech-master/excelts";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { FileBookHost } from "../../../../src/workbook/file/book-host";
import { openBook } from "../../../../src/workbook/saving/open-book";
import { readWorkbook } from "../../../../src/xlsx/read";
import { MemoryStore } from "../../../fakes/file/memory-store";
import { bookPortContract } from "./contract";
import { startSheetsFile } from "./start-sheets-file";
import { editedFile, rawFileCell, typedInto } from "../raw-file";
import type { StartSheet, TestSheets } from "./test-sheets";

function protectedFile(bytes: Uint8Array, name: string): Uint8Array {
  const parts = unzipSync(bytes);
  const number = readWorkbook(bytes, []).sheets.findIndex((sheet) => sheet.name === name) + 1;
  const path = `xl/worksheets/sheet${number}.xml`;
  const xml = strFromU8(parts[path]!);
  const guard = '<sheetProtection sheet="1" objects="1"/>';
  parts[path] = strToU8(xml.replace(/<\/sheetData>|<sheetData\/>/, (data) => data + guard));
  return zipSync(parts);
}

async function open(sheets: readonly StartSheet[]): Promise<TestSheets> {
  const store = new MemoryStore(await startSheetsFile(sheets));
  const edit = async (change: (workbook: Workbook) => unknown): Promise<void> => {
    store.put(await editedFile(store.bytes!, change));
  };
  return {
    user: (log) => openBook(new FileBookHost(store, { ids: ["CELL.SCORE"] }), log),
    type: async (sheet, address, value) => store.put(typedInto(store.bytes!, sheet, address, value)),
    protectSheet: async (sheet) => store.put(protectedFile(store.bytes!, sheet)),
    deleteSheet: (sheet) => edit((workbook) => workbook.removeWorksheet(workbook.getWorksheet(sheet)!.id)),
    cell: (sheet, address) => rawFileCell(store.bytes!, sheet, address),
    shown: () => undefined,
    steps: store.faults.taken,
    failSteps: store.faults.fail,
    close: async () => {
      store.bytes = undefined;
    },
  };
}

bookPortContract({ name: "a file", shows: false, computes: false, open });
