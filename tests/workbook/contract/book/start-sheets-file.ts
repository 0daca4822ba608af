import { Workbook } from "@cj-tech-master/excelts";
import type { StartSheet } from "./test-sheets";

/** The bytes of a workbook with these sheets, written by a library, not by what is under test. */
export async function startSheetsFile(sheets: readonly StartSheet[]): Promise<Uint8Array> {
  const workbook = new Workbook();
  for (const { name, hidden = false, cells, merges = [], tables = [] } of sheets) {
    const sheet = workbook.addWorksheet(name, { state: hidden ? "hidden" : "visible" });
    for (const [address, { value, formula, numberFormat, spills }] of Object.entries(cells)) {
      const cell = sheet.getCell(address);
      cell.value = (formula === undefined ? value : { formula, result: resultOf(value), ...arrayOf(spills) }) as never;
      if (numberFormat !== undefined) cell.numFmt = numberFormat;
    }
    for (const area of merges) sheet.mergeCells(area);
    for (const { name: table, area } of tables) {
      const [first = "", last = ""] = area.split(":");
      const rows = rowsOf(cells, first, last);
      const [headings = [], ...body] = rows;
      sheet.addTable({
        name: table,
        ref: first,
        headerRow: true,
        columns: headings.map((heading) => ({ name: String(heading), filterButton: true })),
        rows: body,
      } as never);
    }
  }
  return new Uint8Array((await workbook.xlsx.writeBuffer()) as unknown as ArrayBuffer);
}

function arrayOf(spills: string | undefined): object {
  return spills === undefined ? {} : { shareType: "array", ref: spills };
}

function resultOf(value: unknown): unknown {
  return typeof value === "string" && value.startsWith("#") ? { error: value } : value;
}

/** Columns up to Z. */
function rowsOf(cells: StartSheet["cells"], first: string, last: string): unknown[][] {
  const [c1, r1, c2, r2] = [first[0]!, Number(first.slice(1)), last[0]!, Number(last.slice(1))];
  const columns = Array.from({ length: c2.charCodeAt(0) - c1.charCodeAt(0) + 1 }, (_, at) =>
    String.fromCharCode(c1.charCodeAt(0) + at),
  );
  return Array.from({ length: r2 - r1 + 1 }, (_, down) =>
    columns.map((column) => cells[`${column}${r1 + down}`]?.value ?? null),
  );
}
