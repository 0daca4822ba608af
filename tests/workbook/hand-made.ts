import { strToU8, zipSync } from "fflate";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml";

export interface HandMade {
  /** Content of sheetData, sheet by sheet. */
  readonly sheets: Readonly<Record<string, string>>;
  /** Elements of the workbook part after the sheets. */
  readonly workbook?: string;
  /** Elements after sheetData of the first sheet. */
  readonly afterCells?: string;
  /** Further parts, beside those that every workbook here has. */
  readonly parts?: Readonly<Record<string, string | Uint8Array>>;
  /** The metadata that marks dynamic arrays. */
  readonly metadata?: boolean;
  /** The list of the order of calculation. */
  readonly chain?: string;
  /** Prefix of the sheets' elements. */
  readonly prefix?: string;
}

export const METADATA =
  `${HEAD}<metadata xmlns="${MAIN}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">` +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">' +
  '<xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

const STYLES =
  `${HEAD}<styleSheet xmlns="${MAIN}"><numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/></numFmts>` +
  '<fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="14"/><color theme="4" tint="-0.5"/>' +
  '<name val="Cambria"/></font></fonts><fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill ' +
  'patternType="gray125"/></fill><fill><patternFill patternType="solid"><fgColor rgb="FFFFEE00"/></patternFill></fill></fills>' +
  '<borders count="2"><border><left/><right/><top/><bottom/><diagonal/></border><border><left/><right/><top/><bottom ' +
  'style="thin"><color indexed="10"/></bottom><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" ' +
  'fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" ' +
  'borderId="0" xfId="0"/><xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf ' +
  'numFmtId="10" fontId="1" fillId="2" borderId="1" xfId="0"><alignment horizontal="center" vertical="top" wrapText="1"/>' +
  '</xf></cellXfs><dxfs count="1"><dxf><font><color rgb="FF9C0006"/></font><fill><patternFill><bgColor rgb="FFFFC7CE"/>' +
  "</patternFill></fill></dxf></dxfs></styleSheet>";

/** The parts of a workbook written out by hand, in the order in which they are packed. */
export function handMadeParts(book: HandMade): Record<string, Uint8Array> {
  const { sheets, workbook = "", afterCells = "", parts = {}, metadata = false, chain, prefix = "" } = book;
  const names = Object.keys(sheets);
  const numbers = names.map((_, index) => index + 1);
  const override = (path: string, type: string): string =>
    `<Override PartName="/xl/${path}" ContentType="${SPREADSHEET}.${type}+xml"/>`;
  const relation = (id: string, type: string, target: string): string =>
    `<Relationship Id="${id}" Type="${RELATIONS}/${type}" Target="${target}"/>`;
  const texts: Record<string, string | Uint8Array> = {
    "[Content_Types].xml":
      `${HEAD}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
      '<Default Extension="xml" ContentType="application/xml"/><Default Extension="png" ContentType="image/png"/>' +
      override("workbook.xml", "sheet.main") +
      override("styles.xml", "styles") +
      numbers.map((number) => override(`worksheets/sheet${number}.xml`, "worksheet")).join("") +
      (metadata ? override("metadata.xml", "sheetMetadata") : "") +
      (chain === undefined ? "" : override("calcChain.xml", "calcChain")) +
      "</Types>",
    "_rels/.rels": `${HEAD}<Relationships xmlns="${PACKAGE}/relationships">${relation("rId1", "officeDocument", "xl/workbook.xml")}</Relationships>`,
    "xl/workbook.xml":
      `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets>` +
      names.map((name, index) => `<sheet name="${name}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`).join("") +
      `</sheets>${workbook}</workbook>`,
    "xl/_rels/workbook.xml.rels":
      `${HEAD}<Relationships xmlns="${PACKAGE}/relationships">` +
      numbers.map((number) => relation(`rId${number}`, "worksheet", `worksheets/sheet${number}.xml`)).join("") +
      relation("rIdStyles", "styles", "styles.xml") +
      (metadata ? relation("rIdMeta", "sheetMetadata", "metadata.xml") : "") +
      (chain === undefined ? "" : relation("rIdChain", "calcChain", "calcChain.xml")) +
      "</Relationships>",
    "xl/styles.xml": STYLES,
    ...(metadata ? { "xl/metadata.xml": METADATA } : {}),
    ...(chain === undefined ? {} : { "xl/calcChain.xml": `${HEAD}<calcChain xmlns="${MAIN}">${chain}</calcChain>` }),
    ...Object.fromEntries(
      Object.values(sheets).map((cells, index) => [
        `xl/worksheets/sheet${index + 1}.xml`,
        `${HEAD}<${prefix}worksheet xmlns${prefix && `:${prefix.slice(0, -1)}`}="${MAIN}"><${prefix}dimension ref="A1:C3"/>` +
          `<${prefix}sheetData>${cells}</${prefix}sheetData>${index === 0 ? afterCells : ""}</${prefix}worksheet>`,
      ]),
    ),
    ...parts,
  };
  return Object.fromEntries(
    Object.entries(texts).map(([path, text]) => [path, typeof text === "string" ? strToU8(text) : text]),
  );
}

export function handMade(book: HandMade): Uint8Array {
  return zipSync(handMadeParts(book));
}
