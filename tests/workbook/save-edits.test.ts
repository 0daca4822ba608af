import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { recalculate } from "../../src/engine/headless";
import { registry } from "../../src/functions/registry";
import { cellAddress, parseCell } from "../../src/xlsx/address";
import type { CellContent } from "../../src/xlsx/model";
import { readWorkbook } from "../../src/xlsx/read";
import { growRuleRanges } from "../../src/xlsx/edit/rule-ranges";
import { type EditedCell, type EditedSheet, saveEdits } from "../../src/xlsx/save-edits";
import { handMade } from "./hand-made";
import { schemaErrors, testWithValidator } from "./validator";

jest.setTimeout(120_000);

const ids = registry.map(({ id }) => id);
const SAMPLE = join(__dirname, "../../sample-workbooks/herd-workbook.xlsx");

/** What is typed into a cell; null empties it. */
type Typed = Omit<EditedCell, "row" | "column" | "value"> & { readonly value?: CellContent };
type Changes = Readonly<Record<string, Typed | null>>;

/** The sheets of a workbook after something was typed into some of its cells. */
function after(
  bytes: Uint8Array,
  changes: Readonly<Record<string, Changes>>,
  tables: EditedSheet["tables"] = [],
): EditedSheet[] {
  return readWorkbook(bytes, ids).sheets.map((sheet): EditedSheet => {
    const cells = new Map<string, EditedCell>();
    for (const { row, column, value, formula, spilled } of sheet.cells) {
      const holds = formula !== undefined || (value !== null && value !== "");
      if (spilled || !holds) continue;
      cells.set(cellAddress(row, column), { row, column, value, ...(formula === undefined ? {} : { formula }) });
    }
    for (const [address, typed] of Object.entries(changes[sheet.name] ?? {})) {
      if (typed === null) cells.delete(address);
      else cells.set(address, { value: null, ...parseCell(address)!, ...typed });
    }
    const contents = [...cells.values()];
    return { name: sheet.name, contents, tables, fresh: { name: sheet.name, cells: contents, spills: [] } };
  });
}

function saved(bytes: Uint8Array, changes: Readonly<Record<string, Changes>>, tables?: EditedSheet["tables"]) {
  return saveEdits(bytes, readWorkbook(bytes, ids), ids, after(bytes, changes, tables));
}

/** The rows of the first sheet of a workbook written by hand, after changes. */
function savedRows(rows: string, changes: Changes, more: { metadata?: boolean; chain?: string; prefix?: string } = {}) {
  const bytes = saved(handMade({ sheets: { Data: rows }, ...more }), { Data: changes });
  const xml = strFromU8(unzipSync(bytes)["xl/worksheets/sheet1.xml"]!);
  return /sheetData>(.*)<\/(?:x:)?sheetData>/s.exec(xml)?.[1];
}

describe("what was typed is saved", () => {
  const rows = '<row r="2" spans="1:3"><c r="A2" s="2"><v>1</v></c><c r="C2" t="s"><v>0</v></c></row>';

  test("a number, a text and a truth value in place of others keep the format", () => {
    expect(savedRows(rows, { A2: { value: 5 } })).toContain('<c r="A2" s="2"><v>5</v></c>');
    expect(savedRows(rows, { A2: { value: true } })).toContain('<c r="A2" s="2" t="b"><v>1</v></c>');
    expect(savedRows(rows, { A2: { value: "a < b" } })).toContain(
      '<c r="A2" s="2" t="inlineStr"><is><t xml:space="preserve">a &lt; b</t></is></c>',
    );
  });

  test("a text that looks like a formula is saved as a text", () => {
    expect(savedRows(rows, { A2: { value: "=1+1" } })).toContain('<is><t xml:space="preserve">=1+1</t></is>');
  });

  test("new cells and rows come in their order, and the row's hint of its columns goes", () => {
    const text = savedRows(rows, { B2: { value: 2 }, A1: { value: 1 }, D9: { value: 9 } });
    expect(text).toBe(
      '<row r="1"><c r="A1"><v>1</v></c></row>' +
        '<row r="2"><c r="A2" s="2"><v>1</v></c><c r="B2"><v>2</v></c><c r="C2" t="s"><v>0</v></c></row>' +
        '<row r="9"><c r="D9"><v>9</v></c></row>',
    );
  });

  test("an emptied cell keeps its format, and one without a format goes", () => {
    expect(savedRows(rows, { A2: null })).toContain('<c r="A2" s="2"/>');
    expect(savedRows('<row r="1"><c r="A1"><v>1</v></c><c r="B1"><v>2</v></c></row>', { A1: null })).toBe(
      '<row r="1"><c r="B1"><v>2</v></c></row>',
    );
  });

  test("into a sheet without any cell", () => {
    const bytes = saved(
      handMade({
        sheets: { Data: "" },
        parts: {
          "xl/worksheets/sheet1.xml":
            '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData/></worksheet>',
        },
      }),
      { Data: { B3: { value: 7 } } },
    );
    expect(strFromU8(unzipSync(bytes)["xl/worksheets/sheet1.xml"]!)).toContain(
      '<sheetData><row r="3"><c r="B3"><v>7</v></c></row></sheetData>',
    );
  });

  test("in a file that writes its elements with a prefix", () => {
    const text = savedRows(
      '<x:row r="1"><x:c r="A1"><x:v>1</x:v></x:c></x:row>',
      { A1: { value: 2 } },
      { prefix: "x:" },
    );
    expect(text).toBe('<x:row r="1"><x:c r="A1"><x:v>2</x:v></x:c></x:row>');
  });

  test("a new cell takes the style of the file that it is given; a number format of its own is added", () => {
    const bytes = saved(handMade({ sheets: { Data: rows } }), {
      Data: {
        E1: { value: 46_266, style: 1 },
        F1: { value: 46_266, numberFormat: "dd.mm.yyyy" },
        G1: { value: 3, numberFormat: "dd.mm.yyyy" },
      },
    });
    const model = readWorkbook(bytes, ids);
    const styleAt = (address: string) =>
      model.styles[model.sheets[0]!.cells.find((cell) => cellAddress(cell.row, cell.column) === address)!.style]!;
    // Style 1 of the file shows yyyy-mm-dd.
    expect(styleAt("E1").numberFormat).toMatch(/yyyy/);
    expect(styleAt("F1")).toMatchObject({ font: "Calibri", numberFormat: "dd.mm.yyyy" });
    expect(strFromU8(unzipSync(bytes)["xl/styles.xml"]!).match(/formatCode="dd\.mm\.yyyy"/g)).toHaveLength(1);
    expect(strFromU8(unzipSync(bytes)["xl/styles.xml"]!)).toContain('<cellXfs count="4">');
  });
});

describe("formulas", () => {
  test("are stored in the file's spelling; those of the add-in as dynamic arrays of one cell", () => {
    const text = savedRows('<row r="1"><c r="A1"><v>400</v></c></row>', {
      B1: { formula: "SUM(A1:A9)" },
      C1: { formula: "HERD.CELL.SCORE(A1)" },
    });
    expect(text).toContain('<c r="B1"><f>SUM(A1:A9)</f>');
    expect(text).toContain('<c r="C1" cm="1"><f t="array" ref="C1">_xldudf_HERD_CELL_SCORE(A1)</f>');
  });

  test("a value in place of a formula, and the list of the order of calculation goes", () => {
    const book = { sheets: { Data: '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>' }, chain: '<c r="A1" i="1"/>' };
    const parts = unzipSync(saved(handMade(book), { Data: { A1: { value: 7 } } }));
    expect(strFromU8(parts["xl/worksheets/sheet1.xml"]!)).toContain('<c r="A1"><v>7</v></c>');
    expect(parts["xl/calcChain.xml"]).toBeUndefined();
  });

  test("cells that shared a formula with an edited one are given it themselves", () => {
    const rows =
      '<row r="1"><c r="B1"><f t="shared" ref="B1:B3" si="0">A1*10</f><v>0</v></c></row>' +
      '<row r="2"><c r="B2"><f t="shared" si="0"/><v>0</v></c></row><row r="3"><c r="B3"><f t="shared" si="0"/><v>0</v></c></row>';
    const text = savedRows(rows, { B1: { value: 5 } });
    expect(text).toContain('<c r="B1"><v>5</v></c>');
    expect(text).toContain("<f>A2*10</f>");
    expect(text).toContain("<f>A3*10</f>");
    expect(text).not.toContain("shared");
  });

  test("what a removed formula had filled is emptied", () => {
    const rows =
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">_xlfn.SEQUENCE(2)</f><v>1</v></c></row>' +
      '<row r="2"><c r="A2" s="1"><v>2</v></c></row>';
    expect(savedRows(rows, { A1: null }, { metadata: true })).toBe(
      '<row r="1"></row><row r="2"><c r="A2" s="1"/></row>',
    );
  });
});

test("list boxes and conditional formats that end with a table go on with it; others stay", () => {
  const before = { firstRow: 3, lastRow: 9, firstColumn: 0, lastColumn: 4 };
  const grow = (xml: string): string => growRuleRanges(xml, [{ before, now: { ...before, lastRow: 11 } }]);
  expect(grow('<dataValidation type="list" sqref="B5:B10 F5:F10"><formula1/>')).toBe(
    '<dataValidation type="list" sqref="B5:B12 F5:F10"><formula1/>',
  );
  expect(grow('<conditionalFormatting sqref="A5:E10"><cfRule/>')).toContain('sqref="A5:E12"');
  expect(grow("<xm:sqref>C5:C10</xm:sqref>")).toBe("<xm:sqref>C5:C12</xm:sqref>");
  expect(grow('<dataValidation sqref="B5:B100">')).toBe('<dataValidation sqref="B5:B100">');
  expect(grow('<selection sqref="B10"/>')).toBe('<selection sqref="B10"/>');
});

describe("the sample, with a finding more", () => {
  const bytes = readFileSync(SAMPLE);
  const model = readWorkbook(bytes, ids);
  const findings = model.sheets.find(({ name }) => name === "Findings")!;
  const [table] = findings.tables;
  const row = table!.area.lastRow + 1;
  const column = (heading: string): number =>
    table!.area.firstColumn + table!.columns.findIndex(({ name }) => name === heading);
  const at = (heading: string): string => cellAddress(row, column(heading));
  const formulas = Object.fromEntries(
    table!.columns.flatMap(({ name, formula }) => (formula === undefined ? [] : [[at(name), { formula }]])),
  );
  const changes = {
    // 46266 is 1 September 2026.
    Findings: { [at("Date")]: { value: 46_266 }, [at("Lesion")]: { value: "DD" }, ...formulas },
  };
  const grown = { name: "Findings", area: { ...table!.area, lastRow: row } };
  const result = saved(bytes, changes, [grown]);

  test("the table has grown, and the new row computes", async () => {
    const again = readWorkbook(result, ids);
    const sheet = again.sheets.find(({ name }) => name === "Findings")!;
    expect(sheet.tables[0]!.area).toEqual(grown.area);
    const computed = (await recalculate(again)).sheets.find(({ name }) => name === "Findings")!;
    const recheck = computed.cells.find((cell) => cell.row === row && cell.column === column("Recheck"));
    // Seven days later.
    expect(recheck?.value).toBe(46_273);
  });

  test("only the sheets, and the table, have changed", () => {
    const [before, now] = [unzipSync(bytes), unzipSync(result)];
    expect(Object.keys(now).sort()).toEqual(Object.keys(before).sort());
    const changed = Object.keys(now).filter((path) => !Buffer.from(now[path]!).equals(Buffer.from(before[path]!)));
    const tables = changed.filter((path) => path.startsWith("xl/tables/"));
    expect(tables).toHaveLength(1);
    expect(changed.filter((path) => !/^xl\/(tables|worksheets)\//.test(path))).toEqual([]);
  });

  testWithValidator("is valid by the Open XML SDK", () => {
    expect(schemaErrors(result)).toEqual([]);
  });
});
