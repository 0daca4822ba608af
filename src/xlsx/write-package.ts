import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from "fflate";
import type { NewWorkbook } from "./write-model";

/** The day that every part of a written file carries: the first one that a zip file can hold. */
const ZIP_DAY = new Date(1980, 0, 1);
const COMPRESSION = 9;

/** What the library cannot say is put into the parts; then they are packed again, without the time of day. */
export function finishPackage(bytes: Uint8Array, book: NewWorkbook): Uint8Array {
  const packed: Zippable = {};
  for (const [path, content] of Object.entries(unzipSync(bytes))) {
    const finish = finisherOf(path);
    const data = finish === undefined ? content : strToU8(finish(strFromU8(content), book, path));
    packed[path] = [data, { mtime: ZIP_DAY, level: COMPRESSION }];
  }
  return zipSync(packed);
}

type Finisher = (xml: string, book: NewWorkbook, path: string) => string;

function finisherOf(path: string): Finisher | undefined {
  if (path === "xl/workbook.xml") return currentCalculation;
  if (path === "docProps/app.xml") return ownApplication;
  if (/^xl\/theme\/theme\d+\.xml$/.test(path)) return ownAccents;
  if (/^xl\/tables\/table\d+\.xml$/.test(path)) return arrayColumns;
  if (/^xl\/charts\/chart\d+\.xml$/.test(path)) return categoriesAsWritten;
  if (/^xl\/drawings\/drawing\d+\.xml$/.test(path)) return describedCharts;
  return undefined;
}

/** A file calculated by an older version is calculated anew when opened, which would need the add-in at once. */
const CALCULATION_VERSION = "191029";

function currentCalculation(xml: string): string {
  return xml.replace(/calcId="\d+"/, `calcId="${CALCULATION_VERSION}"`);
}

function ownApplication(xml: string, { author }: NewWorkbook): string {
  return xml
    .replace(/<Application>[^<]*<\/Application>/, () => `<Application>${escaped(author)}</Application>`)
    .replace(/<AppVersion>[^<]*<\/AppVersion>/, "");
}

function ownAccents(xml: string, { accents }: NewWorkbook): string {
  return accents.reduce(
    (text, accent, index) =>
      text.replace(
        new RegExp(`(<a:accent${index + 1}>\\s*<a:srgbClr val=")[0-9A-Fa-f]{6}`),
        (_, before: string) => before + accent.slice(1).toUpperCase(),
      ),
    xml,
  );
}

/** A column filled by an add-in function is marked as an array formula, as its cells are. */
function arrayColumns(xml: string): string {
  return xml
    .replace(/<calculatedColumnFormula>(?=[^<]*_xldudf_)/g, '<calculatedColumnFormula array="1">')
    .replace(/ totalsRowLabel="Total"/g, "");
}

/** Days along an axis stand one beside the other, as the sheet lists them, not spaced by the calendar. */
function categoriesAsWritten(xml: string): string {
  return xml.replace(/<c:auto val="1"\/>/g, '<c:auto val="0"/>');
}

/** Drawings are numbered in the order of the sheets that have charts, and hold them in the order of the sheet. */
function describedCharts(xml: string, { sheets }: NewWorkbook, path: string): string {
  const number = Number(/\d+/.exec(path)?.[0]);
  const charts = sheets.map((sheet) => sheet.charts).filter(({ length }) => length > 0)[number - 1] ?? [];
  let next = 0;
  return xml.replace(/(<xdr:cNvPr id="\d+" name=")[^"]*"/g, (whole, before: string) => {
    const chart = charts[next++];
    return chart === undefined ? whole : `${before}${escaped(chart.title)}" descr="${escaped(chart.description)}"`;
  });
}

function escaped(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/"/g, "&quot;");
}
