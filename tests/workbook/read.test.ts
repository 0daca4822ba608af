import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { cellAddress } from "../../src/xlsx/address";
import type { Area, CellModel, SheetModel, WorkbookModel } from "../../src/xlsx/model";
import { readWorkbook } from "../../src/xlsx/read";
import { handMade } from "./hand-made";

const TABLE =
  '<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Old" displayName="Findings" ref="A1:B4" ' +
  'totalsRowCount="1"><autoFilter ref="A1:B3"/><tableColumns count="2"><tableColumn id="1" name="Cow_x000a_number"/>' +
  '<tableColumn id="2" name="Next"><calculatedColumnFormula>_xldudf_HERD_CELL_SCORE(Findings[[#This Row],[Cow&#10;number]])' +
  '</calculatedColumnFormula></tableColumn></tableColumns><tableStyleInfo name="TableStyleLight9" showRowStripes="1"/></table>';

const THEME =
  '<a:theme xmlns:a="urn:a"><a:themeElements><a:clrScheme name="x"><a:dk1><a:sysClr val="windowText" lastClr="000000"/></a:dk1>' +
  '<a:lt1><a:sysClr val="window" lastClr="FFFFFF"/></a:lt1><a:dk2><a:srgbClr val="111111"/></a:dk2><a:lt2><a:srgbClr val="222222"/></a:lt2>' +
  '<a:accent1><a:srgbClr val="4080C0"/></a:accent1></a:clrScheme></a:themeElements></a:theme>';

const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

function example(): WorkbookModel {
  const bytes = handMade({
    metadata: true,
    sheets: {
      "Farm &amp; herd":
        '<row r="1" hidden="1"><c r="A1" t="s"><v>0</v></c><c r="B1" s="2" t="s"><v>1</v></c></row>' +
        '<row r="2" ht="30" customHeight="1"><c r="A2" s="1"><v>45658.5</v></c><c r="B2"><f t="shared" ref="B2:B3" si="0">$A2+A$1+Other!A2</f></c>' +
        '<c r="D2" cm="1"><f t="array" ref="D2:D3">_xlfn.UNIQUE(A2:A3)</f><v>1</v></c></row>' +
        '<row r="3"><c r="A3" t="b"><v>1</v></c><c r="B3"><f t="shared" si="0"/><v>7</v></c><c r="D3"><v>2</v></c>' +
        '<c r="E3"><f t="array" ref="E3:E3">SUM(A2:A3*2)</f><v>4</v></c></row>' +
        '<row r="4"><c r="A4" t="e"><v>#DIV/0!</v></c><c r="B4" t="inlineStr"><is><r><t>in</t></r><rPh><t>no</t></rPh><r><t>line</t></r></is></c></row>',
      Other: "",
    },
    workbook:
      '<bookViews><workbookView activeTab="1"/></bookViews><definedNames><definedName name="Cows" localSheetId="0">Other!$A:$A</definedName>' +
      '<definedName name="Shown" hidden="1">_xlfn.XLOOKUP(1,Other!$A$1:$A$9,Other!$B$1:$B$9)</definedName></definedNames>',
    afterCells:
      '<mergeCells count="1"><mergeCell ref="A6:C7"/></mergeCells>' +
      '<conditionalFormatting sqref="A2:A3 C2"><cfRule type="expression" dxfId="0" priority="2" stopIfTrue="1"><formula>$A2&gt;_xlfn.XLOOKUP(1,B:B,C:C)</formula></cfRule>' +
      '<cfRule type="cellIs" dxfId="0" priority="1" operator="between"><formula>1</formula><formula>2</formula></cfRule></conditionalFormatting>' +
      '<dataValidations count="1"><dataValidation type="list" allowBlank="1" errorStyle="warning" error="Pick one" sqref="B2:B3"><formula1>"DD,SU"</formula1></dataValidation></dataValidations>' +
      '<tableParts count="1"><tablePart r:id="rId1" xmlns:r="urn:r"/></tableParts>' +
      '<extLst><ext xmlns:x14="urn:x14" xmlns:xm="urn:xm"><x14:dataValidations><x14:dataValidation type="list"><x14:formula1><xm:f>Other!$A$1:$A$5</xm:f></x14:formula1><xm:sqref>C2</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>',
    parts: {
      "xl/tables/table1.xml": TABLE,
      "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships><Relationship Id="rId1" Type="${RELATIONSHIPS}/table" Target="../tables/table1.xml"/></Relationships>`,
      "xl/theme/theme1.xml": THEME,
      "xl/sharedStrings.xml":
        "<sst><si><t xml:space='preserve'> a_x000D_b </t></si><si><r><t>rich </t></r><r><t>text</t></r></si></sst>",
      "xl/_rels/workbook.xml.rels":
        "<Relationships>" +
        [
          "worksheet:worksheets/sheet1.xml",
          "worksheet:/xl/worksheets/sheet2.xml",
          "styles:styles.xml",
          "theme:theme/theme1.xml",
          "sharedStrings:sharedStrings.xml",
          "sheetMetadata:metadata.xml",
        ]
          .map(
            (entry, index) =>
              `<Relationship Id="rId${index + 1}" Type="${RELATIONSHIPS}/${entry.split(":")[0]}" Target="${entry.split(":")[1]}"/>`,
          )
          .join("") +
        "</Relationships>",
    },
  });
  return readWorkbook(bytes, ["CELL.SCORE"]);
}

describe("reading a workbook", () => {
  const model = example();
  const sheet = model.sheets[0]!;
  const at = (address: string, on: SheetModel = sheet): CellModel | undefined =>
    on.cells.find(({ row, column }) => cellAddress(row, column) === address);

  test("values of every kind", () => {
    expect(sheet.name).toBe("Farm & herd");
    expect(at("A1")?.value).toBe(" a\rb ");
    expect(at("B1")?.value).toBe("rich text");
    expect(at("A2")?.value).toBe(45_658.5);
    expect(at("A3")?.value).toBe(true);
    expect(at("A4")?.value).toEqual({ error: "#DIV/0!" });
    expect(at("B4")?.value).toBe("inline");
  });

  test("formulas as typed, a shared one in each of its cells", () => {
    expect(at("B2")).toMatchObject({ formula: "$A2+A$1+Other!A2", value: null });
    expect(at("B3")).toMatchObject({ formula: "$A3+A$1+Other!A3", value: 7 });
  });

  test("formulas that fill cells, and the cells that they fill", () => {
    expect(at("D2")).toMatchObject({ formula: "UNIQUE(A2:A3)", array: { kind: "dynamic" } });
    expect(at("D3")).toMatchObject({ value: 2, spilled: true });
    expect(at("E3")).toMatchObject({ formula: "SUM(A2:A3*2)", array: { kind: "fixed" } });
  });

  test.each([
    ["A1:A3*2", "@A1:A3*2"],
    ["Findings[Cow]+1", "@Findings[Cow]+1"],
    ["Findings[[#This Row],[Cow]]+1", "Findings[@Cow]+1"],
    ["-A:A", "-@A:A"],
    ["Block&Cell", "@Block&Cell"],
    ["SUM(A1:A3)*A1", "SUM(A1:A3)*A1"],
    ["(A1:A3)", "(A1:A3)"],
    ["A1:INDEX(A:A,3)", "A1:INDEX(A:A,3)"],
    ["_xlfn.UNIQUE(A1:A3)", "UNIQUE(A1:A3)"],
    ['"A1:A3"', '"A1:A3"'],
    ["A1", "A1"],
  ])("a formula not marked as an array takes one cell of a range: %s", (stored, typed) => {
    const bytes = handMade({
      sheets: { Data: `<row r="1"><c r="D1"><f>${stored.replaceAll("&", "&amp;")}</f></c></row>` },
      workbook:
        '<definedNames><definedName name="Block">Data!$A$1:$A$3</definedName><definedName name="Cell">Data!$A$1</definedName></definedNames>',
    });
    expect(readWorkbook(bytes, []).sheets[0]?.cells[0]?.formula).toBe(typed);
  });

  test("styles: number formats, fonts, fills, borders, colours of the theme", () => {
    expect(model.styles[at("A2")!.style]).toMatchObject({ numberFormat: "yyyy\\-mm\\-dd", font: "Calibri", size: 11 });
    // Accent 1 darkened by half: 40 80 C0 -> 20 40 60.
    expect(model.styles[at("B1")!.style]).toEqual({
      font: "Cambria",
      size: 14,
      bold: true,
      colour: "#204060",
      fill: "#ffee00",
      borders: { bottom: { style: "thin", colour: "#ff0000" } },
      horizontal: "center",
      vertical: "top",
      wrap: true,
      numberFormat: "0.00%",
    });
  });

  test("a table with its columns, its column formula and its totals", () => {
    expect(sheet.tables).toEqual([
      {
        name: "Findings",
        area: { firstRow: 0, lastRow: 3, firstColumn: 0, lastColumn: 1 },
        hasHeadings: true,
        hasTotals: true,
        columns: [{ name: "Cow\nnumber" }, { name: "Next", formula: "HERD.CELL.SCORE(Findings[@[Cow\nnumber]])" }],
        styleName: "TableStyleLight9",
        stripes: true,
        filter: true,
      },
    ]);
  });

  test("names, of the workbook and of a sheet, whole columns too", () => {
    expect(model.names).toEqual([
      { name: "Cows", formula: "Other!$A:$A", sheet: 0, hidden: false },
      { name: "Shown", formula: "XLOOKUP(1,Other!$A$1:$A$9,Other!$B$1:$B$9)", hidden: true },
    ]);
  });

  test("rules for what may be typed, of the old and the later kind", () => {
    expect(sheet.validations).toMatchObject([
      { type: "list", formulas: ['"DD,SU"'], allowBlank: true, errorStyle: "warning", error: "Pick one" },
      { type: "list", formulas: ["Other!$A$1:$A$5"], areas: [{ firstRow: 1, firstColumn: 2 }] },
    ]);
  });

  test("conditional formats with their style", () => {
    expect(sheet.conditionalFormats).toMatchObject([
      {
        priority: 2,
        stopIfTrue: true,
        areas: [{ lastRow: 2 }, { firstColumn: 2 }],
        rule: { type: "formula", formula: "$A2>XLOOKUP(1,B:B,C:C)", style: { fill: "#ffc7ce", colour: "#9c0006" } },
      },
      { priority: 1, rule: { type: "compare", operator: "between", formulas: ["1", "2"] } },
    ]);
  });

  test("rows, merged cells, the open sheet", () => {
    expect(sheet.rows).toEqual([
      { row: 0, hidden: true },
      { row: 1, hidden: false, height: 30 },
    ]);
    expect(sheet.merges).toEqual([{ firstRow: 5, lastRow: 6, firstColumn: 0, lastColumn: 2 }]);
    expect(model.activeSheet).toBe(1);
  });
});

/** Another reader, the workbook library, must find the same in a whole workbook. */
test("the sample workbook reads as the workbook library reads it", async () => {
  const path = join(__dirname, "../../sample-workbooks/herd-workbook.xlsx");
  const model = readWorkbook(readFileSync(path), []);
  installChartSupport();
  const other = new Workbook();
  await other.xlsx.readFile(path);
  expect(model.sheets.map(({ name }) => name)).toEqual(other.worksheets.map(({ name }) => name));
  const differences: string[] = [];
  model.sheets.forEach((sheet, index) => {
    const theirs = other.worksheets[index]!;
    for (const { row, column, value } of sheet.cells) {
      if (sheet.merges.some((area) => isHidden(area, row, column))) continue;
      const theirValue = plain(contentOf(theirs, row, column));
      if (JSON.stringify(value === "" ? null : value) !== JSON.stringify(theirValue))
        differences.push(
          `${sheet.name}!${cellAddress(row, column)}: ${JSON.stringify(value)} and ${JSON.stringify(theirValue)}`,
        );
    }
  });
  expect(differences).toEqual([]);
});

/** Of merged cells only the first holds something; the library repeats it in all of them. */
function isHidden({ firstRow, firstColumn, lastRow, lastColumn }: Area, row: number, column: number): boolean {
  const isInside = row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
  return isInside && (row !== firstRow || column !== firstColumn);
}

function contentOf(sheet: Worksheet, row: number, column: number): unknown {
  const { formula, result, value } = sheet.getCell(row + 1, column + 1);
  return formula === undefined ? value : result;
}

/** The library gives an empty text as nothing, dates as JS dates and texts as objects. */
function plain(raw: unknown): unknown {
  if (raw instanceof Date) return raw.getTime() / 86_400_000 + 25_569;
  if (typeof raw !== "object" || raw === null) return raw || raw === 0 || raw === false ? raw : null;
  if ("error" in raw) return { error: raw.error };
  if ("richText" in raw) return (raw.richText as { text: string }[]).map(({ text }) => text).join("");
  return "text" in raw ? raw.text || null : raw;
}
