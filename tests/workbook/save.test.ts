import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { recalculate } from "../../src/engine/headless";
import type { ComputedWorkbook } from "../../src/engine/results";
import { registry } from "../../src/functions/registry";
import { cellAddress } from "../../src/xlsx/address";
import type { CellModel, WorkbookModel } from "../../src/xlsx/model";
import { readWorkbook } from "../../src/xlsx/read";
import { saveValues } from "../../src/xlsx/save";
import { handMade, type HandMade } from "./hand-made";
import { schemaErrors, testWithValidator } from "./validator";

jest.setTimeout(120_000);

const ids = registry.map(({ id }) => id);
const SAMPLE = join(__dirname, "../../sample-workbooks/herd-workbook.xlsx");

async function saved(bytes: Uint8Array): Promise<Uint8Array> {
  return saveValues(bytes, (await recalculate(readWorkbook(bytes, ids))).sheets);
}

async function savedSheet(book: HandMade, path = "xl/worksheets/sheet1.xml"): Promise<string> {
  const xml = strFromU8(unzipSync(await saved(handMade(book)))[path]!);
  return /<(?:x:)?sheetData>(.*)<\/(?:x:)?sheetData>/s.exec(xml)?.[1] ?? "";
}

/** Parts whose bytes differ, and parts that only one of the files has. */
function changedParts(before: Uint8Array, after: Uint8Array): string[] {
  const [old, now] = [unzipSync(before), unzipSync(after)];
  const paths = new Set([...Object.keys(old), ...Object.keys(now)]);
  return [...paths].filter(
    (path) => !Buffer.from(old[path] ?? []).equals(Buffer.from(now[path] ?? [])) || !old[path] || !now[path],
  );
}

function cellsOf(bytes: Uint8Array): ReadonlyMap<string, CellModel> {
  return cellsByAddress(readWorkbook(bytes, ids), 0);
}

function cellsByAddress({ sheets }: WorkbookModel, sheet: number): ReadonlyMap<string, CellModel> {
  return new Map(sheets[sheet]!.cells.map((cell) => [cellAddress(cell.row, cell.column), cell]));
}

/** What of a cell is not computed. */
function kept({ formula, style, value }: CellModel): string {
  return JSON.stringify([formula, style, formula === undefined ? value : ""]);
}

const STALE = {
  sheets: {
    Data:
      '<row r="1" spans="1:3" ht="20" customHeight="1"><c r="A1"><v>2</v></c><c r="B1" s="2"><f>A1*2</f><v>99</v></c>' +
      '<c r="C1" t="str"><f>"a &amp; "&amp;"b"</f><v>old</v></c></row>' +
      '<row r="2"><c r="A2"><v>3</v></c><c r="B2"><f t="shared" ref="B2:B3" si="0">A2*10</f><v>0</v></c><c r="C2"><f>A2&gt;1</f></c></row>' +
      '<row r="3"><c r="A3"><v>4</v></c><c r="B3"><f t="shared" si="0"/><v>0</v></c><c r="C3" t="str"><f>A3/0</f><v>fine</v></c></row>',
    Other: '<row r="1"><c r="A1" t="inlineStr"><is><t>note</t></is></c><c r="B1"><f>Data!B1+1</f><v>5</v></c></row>',
    Quiet: '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>',
  },
  chain: '<c r="B1" i="1"/><c r="C1"/>',
  parts: {
    "customXml/item1.xml": "<farm xmlns='urn:example'>  kept \r\n as it is</farm>",
    "xl/webextensions/webextension1.xml": "<we:webextension xmlns:we='urn:x'/>",
    "xl/charts/chart1.xml": "<c:chart xmlns:c='urn:c'><c:v>99</c:v></c:chart>",
    "xl/media/image1.png": Uint8Array.from({ length: 999 }, (_, index) => (index * 7) % 256),
  },
} satisfies HandMade;

describe("saving fresh values", () => {
  test("writes values of every kind and leaves formulas, formats and constants alone", async () => {
    expect(await savedSheet(STALE)).toBe(
      '<row r="1" spans="1:3" ht="20" customHeight="1"><c r="A1"><v>2</v></c><c r="B1" s="2"><f>A1*2</f><v>4</v></c>' +
        '<c r="C1" t="str"><f>"a &amp; "&amp;"b"</f><v>a &amp; b</v></c></row>' +
        '<row r="2"><c r="A2"><v>3</v></c><c r="B2"><f t="shared" ref="B2:B3" si="0">A2*10</f><v>30</v></c><c r="C2" t="b"><f>A2&gt;1</f><v>1</v></c></row>' +
        '<row r="3"><c r="A3"><v>4</v></c><c r="B3"><f t="shared" si="0"/><v>40</v></c><c r="C3" t="e"><f>A3/0</f><v>#DIV/0!</v></c></row>',
    );
    expect(await savedSheet(STALE, "xl/worksheets/sheet2.xml")).toContain("<f>Data!B1+1</f><v>5</v>");
  });

  test("keeps every other part byte for byte, and its place in the file", async () => {
    const before = handMade(STALE);
    const after = await saved(before);
    expect(changedParts(before, after)).toEqual(["xl/worksheets/sheet1.xml"]);
    expect(Object.keys(unzipSync(after))).toEqual(Object.keys(unzipSync(before)));
  });

  test("a second saving changes nothing", async () => {
    const once = await saved(handMade(STALE));
    expect(changedParts(once, await saved(once))).toEqual([]);
  });

  test("a result that fills more cells than before", async () => {
    const sheet = await savedSheet({
      metadata: true,
      sheets: {
        Data:
          '<row r="1" spans="1:2"><c r="A1" s="1" cm="1"><f t="array" ref="A1:A2">_xlfn.SEQUENCE(4)</f><v>9</v></c><c r="C1"><v>7</v></c></row>' +
          '<row r="2" spans="1:1"><c r="A2" s="1"><v>9</v></c></row>' +
          '<row r="3" spans="3:3"><c r="C3" t="str"><f>SUM(A1:A9)&amp;""</f><v/></c></row>' +
          '<row r="5"><c r="A5"><v>5</v></c></row>',
      },
    });
    expect(sheet).toBe(
      '<row r="1" spans="1:2"><c r="A1" s="1" cm="1"><f t="array" ref="A1:A4">_xlfn.SEQUENCE(4)</f><v>1</v></c><c r="C1"><v>7</v></c></row>' +
        '<row r="2" spans="1:1"><c r="A2" s="1"><v>2</v></c></row>' +
        // New cells look as the last one did; a row's hint of its columns no longer holds.
        '<row r="3"><c r="A3" s="1"><v>3</v></c><c r="C3" t="str"><f>SUM(A1:A9)&amp;""</f><v>15</v></c></row>' +
        '<row r="4"><c r="A4" s="1"><v>4</v></c></row>' +
        '<row r="5"><c r="A5"><v>5</v></c></row>',
    );
  });

  test("a result that fills fewer cells than before empties the others and keeps their format", async () => {
    const sheet = await savedSheet({
      metadata: true,
      sheets: {
        Data:
          '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:B3">_xlfn.SEQUENCE(2)</f><v>9</v></c><c r="B1" t="str"><v>old</v></c></row>' +
          '<row r="2"><c r="A2"><v>9</v></c><c r="B2" s="2"><v>9</v></c></row><row r="3"><c r="A3"><v>9</v></c></row>',
      },
    });
    expect(sheet).toBe(
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">_xlfn.SEQUENCE(2)</f><v>1</v></c><c r="B1"/></row>' +
        '<row r="2"><c r="A2"><v>2</v></c><c r="B2" s="2"/></row><row r="3"><c r="A3"/></row>',
    );
  });

  test("a formula stored as an ordinary one that fills cells becomes a dynamic array, in a file without any", async () => {
    const book = {
      ...STALE,
      sheets: {
        Data: '<row r="1"><c r="A1"><f>HERD.CELL.CHANGE(J1:J2,K1:K2)</f></c><c r="J1"><v>100</v></c><c r="K1"><v>300</v></c></row><row r="2"><c r="J2"><v>400</v></c><c r="K2"><v>90</v></c></row>',
      },
    };
    const before = handMade(book);
    const after = await saved(before);
    expect(changedParts(before, after).sort()).toEqual([
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
      "xl/calcChain.xml",
      "xl/metadata.xml",
      "xl/worksheets/sheet1.xml",
    ]);
    const cell = cellsOf(after).get("A1");
    expect(cell?.array?.kind).toBe("dynamic");
    expect(cell?.formula).toBe("HERD.CELL.CHANGE(J1:J2,K1:K2)");
    expect(cellsOf(after).get("A2")?.spilled).toBe(true);
    expect(changedParts(after, await saved(after))).toEqual([]);
  });

  test("elements with a namespace prefix keep it", async () => {
    const sheet = await savedSheet({
      prefix: "x:",
      sheets: {
        Data: '<x:row r="1"><x:c r="A1"><x:v>2</x:v></x:c><x:c r="B1" t="str"><x:f>A1+1</x:f><x:v>?</x:v></x:c></x:row>',
      },
    });
    expect(sheet).toContain('<x:c r="B1"><x:f>A1+1</x:f><x:v>3</x:v></x:c>');
  });

  test("cells without addresses, comments and texts that look like tags are read right", async () => {
    const sheet = await savedSheet({
      sheets: {
        Data:
          '<row><c><v>2</v></c><!-- <c r="Z9"><v>1</v></c> --><c t="str"><f>"&lt;/c&gt;"&amp;A1</f><v>x</v></c></row>' +
          '<row><c t="n"><f>A1*3</f></c></row>',
      },
    });
    expect(sheet).toContain('<f>"&lt;/c&gt;"&amp;A1</f><v>&lt;/c&gt;2</v>');
    expect(sheet).toContain("<f>A1*3</f><v>6</v>");
  });

  test("text that could not stand in XML is written as the format asks", async () => {
    const sheet = await savedSheet({
      sheets: { Data: '<row r="1"><c r="A1"><f>"_x000A_"&amp;CHAR(7)&amp;"&lt;"</f></c></row>' },
    });
    expect(sheet).toContain("<v>_x005F_x000A__x0007_&lt;</v>");
  });

  describe("the sample workbook", () => {
    const before = readFileSync(SAMPLE);
    let computed: ComputedWorkbook;
    let after: Uint8Array;
    beforeAll(async () => {
      computed = await recalculate(readWorkbook(before, ids));
      after = saveValues(before, computed.sheets);
    });

    test("loses no part", () => {
      expect(changedParts(before, after).filter((path) => !path.startsWith("xl/worksheets/sheet"))).toEqual([]);
    });

    test("holds what was computed, and all else as it was", () => {
      const wrong: string[] = [];
      const [oldModel, newModel] = [readWorkbook(before, ids), readWorkbook(after, ids)];
      computed.sheets.forEach((sheet, index) => {
        const [old, now] = [cellsByAddress(oldModel, index), cellsByAddress(newModel, index)];
        for (const { row, column, value } of sheet.cells) {
          const address = cellAddress(row, column);
          if (JSON.stringify(now.get(address)?.value) !== JSON.stringify(value)) wrong.push(`${sheet.name}!${address}`);
        }
        for (const [address, cell] of old) {
          if (!cell.spilled && kept(cell) !== kept(now.get(address)!)) wrong.push(`${sheet.name}!${address}`);
        }
      });
      expect(wrong).toEqual([]);
    });

    test("is not changed by a second saving", () => {
      expect(changedParts(after, saveValues(after, computed.sheets))).toEqual([]);
    });

    testWithValidator("is valid by the Open XML SDK", () => {
      expect(schemaErrors(after)).toEqual([]);
    });
  });

  test("an error that the format cannot hold is kept as #VALUE!", async () => {
    const sheet = await savedSheet({
      metadata: true,
      sheets: {
        Data:
          '<row r="1"><c r="A1" cm="1" vm="3"><f t="array" ref="A1">_xlfn.SEQUENCE(3)</f><v>1</v></c></row>' +
          '<row r="2"><c r="A2"><v>8</v></c></row>',
      },
    });
    expect(sheet).toContain('<c r="A1" cm="1" t="e"><f t="array" ref="A1">_xlfn.SEQUENCE(3)</f><v>#VALUE!</v></c>');
    expect(sheet).toContain('<c r="A2"><v>8</v></c>');
  });

  testWithValidator("saved files are valid by the Open XML SDK", async () => {
    const grown = handMade({
      metadata: true,
      sheets: {
        Data: '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1">_xlfn.SEQUENCE(3,2)</f><v>1</v></c></row><row r="2"><c r="D2" t="str"><f>"x"&amp;1/0</f><v/></c></row>',
      },
    });
    expect(schemaErrors(grown)).toEqual([]);
    expect(schemaErrors(await saved(grown))).toEqual([]);
    const typed = handMade({
      sheets: { Data: '<row r="1"><c r="A1"><f>_xlfn.SEQUENCE(3)</f></c></row>' },
      chain: '<c r="A1" i="1"/>',
    });
    expect(schemaErrors(await saved(typed))).toEqual([]);
  });
});
