import { strToU8, Zip, ZipDeflate } from "fflate";
import { closeSync, openSync, writeSync } from "node:fs";
import type { Cell } from "./herd-data";
import { type BenchSheet, letter } from "./sheet";

/** Rows handed to the compressor at once. */
const ROWS_AT_ONCE = 10_000;
const NAMESPACE = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** Writes the sheet as an .xlsx file without values of its formulas, row by row, so that a million rows fit in memory. */
export function writeXlsx(path: string, sheet: BenchSheet): void {
  const file = openSync(path, "w");
  try {
    const zip = new Zip((error, chunk) => {
      if (error) throw error;
      writeSync(file, chunk);
    });
    const words = new Map<string, number>();
    add(zip, "xl/worksheets/sheet1.xml", sheetParts(sheet, words));
    add(zip, "xl/sharedStrings.xml", [
      `<sst xmlns="${NAMESPACE}">`,
      ...[...words.keys()].map((word) => `<si><t>${word}</t></si>`),
      "</sst>",
    ]);
    for (const [name, text] of Object.entries(FRAME)) add(zip, name, [text]);
    zip.end();
  } finally {
    closeSync(file);
  }
}

function add(zip: Zip, name: string, texts: Iterable<string>): void {
  const part = new ZipDeflate(name, { level: 1 });
  zip.add(part);
  for (const text of texts) part.push(strToU8(text));
  part.push(new Uint8Array(0), true);
}

function* sheetParts(sheet: BenchSheet, words: Map<string, number>): Iterable<string> {
  const { headings, columns, formulas, formulaColumn } = sheet;
  const rowCount = Math.max(columns[0]!.length + 1, formulas.length);
  yield `<worksheet xmlns="${NAMESPACE}"><sheetData>`;
  for (let start = 0; start < rowCount; start += ROWS_AT_ONCE) {
    let text = "";
    for (let row = start; row < Math.min(start + ROWS_AT_ONCE, rowCount); row++) {
      text += `<row r="${row + 1}">`;
      columns.forEach((column, index) => {
        const value = row === 0 ? headings[index]! : (column[row - 1] ?? null);
        text += cellXml(`${letter(index)}${row + 1}`, value, words);
      });
      if (row < formulas.length) {
        text += `<c r="${letter(formulaColumn)}${row + 1}"><f>${escaped(formulas[row]!)}</f></c>`;
      }
      text += "</row>";
    }
    yield text;
  }
  yield "</sheetData></worksheet>";
}

function cellXml(address: string, value: Cell, words: Map<string, number>): string {
  if (value === null) return "";
  if (typeof value === "number") return `<c r="${address}"><v>${value}</v></c>`;
  let place = words.get(value);
  if (place === undefined) words.set(value, (place = words.size));
  return `<c r="${address}" t="s"><v>${place}</v></c>`;
}

function escaped(formula: string): string {
  return formula.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
}

const relationship = (id: number, type: string, target: string): string =>
  `<Relationship Id="rId${id}" Type="${RELATIONSHIPS}/${type}" Target="${target}"/>`;

/** The parts that are the same in every file. Source: ECMA-376 Part 2 (packages) and Part 1, 18 (workbooks). */
const FRAME: Readonly<Record<string, string>> = {
  "[Content_Types].xml":
    `<Types xmlns="${PACKAGE}/content-types">` +
    `<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
    `<Override PartName="/xl/workbook.xml" ContentType="${SPREADSHEET}.sheet.main+xml"/>` +
    `<Override PartName="/xl/worksheets/sheet1.xml" ContentType="${SPREADSHEET}.worksheet+xml"/>` +
    `<Override PartName="/xl/sharedStrings.xml" ContentType="${SPREADSHEET}.sharedStrings+xml"/></Types>`,
  "_rels/.rels": `<Relationships xmlns="${PACKAGE}/relationships">${relationship(1, "officeDocument", "xl/workbook.xml")}</Relationships>`,
  "xl/workbook.xml": `<workbook xmlns="${NAMESPACE}" xmlns:r="${RELATIONSHIPS}"><sheets><sheet name="Bench" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  "xl/_rels/workbook.xml.rels":
    `<Relationships xmlns="${PACKAGE}/relationships">${relationship(1, "worksheet", "worksheets/sheet1.xml")}` +
    `${relationship(2, "sharedStrings", "sharedStrings.xml")}</Relationships>`,
};
