import { strFromU8, unzipSync } from "fflate";
import { writeWorkbook } from "../../src/xlsx/write";
import type { ComputedValues, NewSheet, NewWorkbook } from "../../src/xlsx/write-model";

const sheet: NewSheet = {
  name: "One",
  tabColour: "#123456",
  widths: [10, 12],
  showGridLines: true,
  cells: [],
  merges: [],
  tables: [],
  validations: [],
  highlights: [],
  charts: [],
  print: { landscape: false, footer: "&LInvented" },
};

const book: NewWorkbook = {
  title: "A title",
  description: "",
  author: "Evenfoot",
  made: 46266,
  accents: ["#010203", "#040506"],
  names: [],
  sheets: [sheet],
};

const IDS = ["CELL.SCORE", "CELL.TOP"];

async function written(change: Partial<NewSheet>, computed?: ComputedValues): Promise<Record<string, string>> {
  const bytes = await writeWorkbook({ ...book, sheets: [{ ...sheet, ...change }] }, IDS, computed);
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, data]) => [path, strFromU8(data)]));
}

const FIRST = "xl/worksheets/sheet1.xml";

function cell(parts: Record<string, string>, address: string): string {
  return new RegExp(`<c r="${address}"[^>]*?(?:/>|>.*?</c>)`, "s").exec(parts[FIRST]!)![0];
}

describe("writing a workbook", () => {
  test("text that looks like a formula stays text", async () => {
    for (const text of ["=1+1", "+A1", "-3", "@x", '=HYPERLINK("x")']) {
      const parts = await written({ cells: [{ at: "A1", holds: text }] });
      expect(cell(parts, "A1")).toMatch(/<c r="A1" t="s"><v>0<\/v><\/c>/);
      expect(parts[FIRST]).not.toContain("<f");
    }
  });

  test("a call of a worksheet function is saved as a dynamic array of one cell, an ordinary formula is not", async () => {
    const parts = await written({
      cells: [
        { at: "A1", holds: { formula: "HERD.CELL.SCORE(B1)" } },
        { at: "A2", holds: { formula: "XLOOKUP(1,B:B,C:C)" } },
      ],
    });
    expect(cell(parts, "A1")).toContain('cm="1"');
    expect(cell(parts, "A1")).toContain('<f t="array" ref="A1">_xldudf_HERD_CELL_SCORE(B1)</f>');
    expect(cell(parts, "A2")).not.toContain("cm=");
    expect(cell(parts, "A2")).toContain("<f>_xlfn.XLOOKUP(1,B:B,C:C)</f>");
  });

  test("values are saved with their formulas, and with the cells that a formula filled", async () => {
    const values: Record<string, number | string | { error: string }> = {
      A1: "cow",
      B1: "",
      A2: 7,
      B2: 1.5,
      D1: { error: "#N/A" },
      E1: "",
    };
    const computed: ComputedValues = {
      value: (_, address) => values[address],
      filled: (_, address) => (address === "A1" ? "A1:B2" : undefined),
    };
    const parts = await written(
      {
        cells: [
          { at: "A1", holds: { formula: "HERD.CELL.TOP(C1:C9)", fills: true } },
          { at: "D1", holds: { formula: "NA()" } },
          { at: "E1", holds: { formula: 'IF(1=1,"","x")' } },
        ],
      },
      computed,
    );
    expect(cell(parts, "A1")).toContain('ref="A1:B2"');
    expect(cell(parts, "A1")).toContain("<v>cow</v>");
    expect(cell(parts, "A2")).toContain("<v>7</v>");
    expect(cell(parts, "B2")).toContain("<v>1.5</v>");
    expect(cell(parts, "D1")).toMatch(/t="e".*<v>#N\/A<\/v>/);
    expect(cell(parts, "E1")).toMatch(/t="str".*<v><\/v>/);
  });

  test("a calculated column is marked as an array formula where it calls a worksheet function", async () => {
    const style = {};
    const parts = await written({
      tables: [
        {
          name: "Tests",
          at: "A1",
          styleName: "TableStyleLight1",
          columns: [
            { heading: "Count", headingStyle: style, style },
            { heading: "Score", headingStyle: style, style, formula: "HERD.CELL.SCORE([@Count])" },
            { heading: "Twice", headingStyle: style, style, formula: "2*[@Count]" },
          ],
          rows: [[200, null, null]],
        },
      ],
    });
    expect(parts["xl/tables/table1.xml"]).toContain(
      '<calculatedColumnFormula array="1">_xldudf_HERD_CELL_SCORE(Tests[[#This Row],[Count]])</calculatedColumnFormula>',
    );
    expect(parts["xl/tables/table1.xml"]).toContain(
      "<calculatedColumnFormula>2*Tests[[#This Row],[Count]]</calculatedColumnFormula>",
    );
    expect(cell(parts, "B2")).toContain("_xldudf_HERD_CELL_SCORE(Tests[[#This Row],[Count]])");
  });

  test("limits of a day are the serials themselves", async () => {
    const parts = await written({
      validations: [{ area: "A1:A9", rule: { type: "date", from: 61, to: 2_958_465 }, refusal: "A date, please." }],
    });
    expect(parts[FIRST]).toMatch(/<formula1>61<\/formula1><formula2>2958465<\/formula2>/);
  });

  test("a chart carries its description and keeps its categories as they are listed", async () => {
    const parts = await written({
      cells: [
        { at: "A1", holds: 46000 },
        { at: "B1", holds: 3 },
        { at: "C1", holds: "cows" },
      ],
      charts: [
        {
          type: "lines",
          title: "Cows & calves",
          description: 'What "it" shows',
          over: "D1:H9",
          categories: "One!$A$1:$A$1",
          valueTitle: "cows",
          series: [{ name: "One!$C$1", values: "One!$B$1:$B$1", colour: "#1F5673" }],
        },
      ],
    });
    expect(parts["xl/drawings/drawing1.xml"]).toContain('name="Cows &amp; calves" descr="What &quot;it&quot; shows"');
    expect(parts["xl/charts/chart1.xml"]).toContain('<c:auto val="0"/>');
    expect(parts["xl/charts/chart1.xml"]).toContain("1F5673");
  });

  test("the theme has the accents given, and the file its author and day", async () => {
    const parts = await written({});
    expect(parts["xl/theme/theme1.xml"]).toMatch(/<a:accent1>\s*<a:srgbClr val="010203"/);
    expect(parts["xl/theme/theme1.xml"]).toMatch(/<a:accent2>\s*<a:srgbClr val="040506"/);
    expect(parts["docProps/core.xml"]).toContain("<dc:creator>Evenfoot</dc:creator>");
    expect(parts["docProps/core.xml"]).toContain("2026-09-01T00:00:00Z");
    expect(parts["docProps/app.xml"]).toContain("<Application>Evenfoot</Application>");
  });

  test("the same workbook gives the same bytes, whatever the time", async () => {
    const first = await writeWorkbook(book, IDS);
    jest.useFakeTimers({
      now: new Date("2031-05-06T07:08:09Z"),
      doNotFake: ["setImmediate", "setTimeout", "nextTick"],
    });
    try {
      expect(Buffer.from(await writeWorkbook(book, IDS)).equals(Buffer.from(first))).toBe(true);
    } finally {
      jest.useRealTimers();
    }
  });
});
