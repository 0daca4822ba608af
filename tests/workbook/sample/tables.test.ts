import { recheckRules } from "../../../src/functions/claws/kinds-of-care";
import { targetsTable } from "../../../src/functions/claws/kinds-of-findings";
import { trimRules } from "../../../src/functions/claws/kinds-of-trimming";
import type { ColumnDefinition } from "../../../src/workbook/table-definition";
import { cowsTable, findingsTable, pricesTable, scoresTable, testsTable } from "../../../src/workbook/tables";
import { columnNumber, parts, sheet, tableRows, tables, unescaped } from "./sample-file";

const definitions = [cowsTable, findingsTable, scoresTable, testsTable, pricesTable];

interface Validation {
  readonly column: number;
  readonly firstRow: number;
  readonly lastRow: number;
  readonly type: string;
  readonly source: string;
}

function validationsOf(name: string): Validation[] {
  return [...sheet(name).xml.matchAll(/<dataValidation ([^>]*)>(.*?)<\/dataValidation>/gs)].map(([, tag, inner]) => {
    const [, letters, firstRow, lastRow] = /sqref="([A-Z]+)(\d+):[A-Z]+(\d+)"/.exec(tag!)!;
    return {
      column: columnNumber(letters!),
      firstRow: Number(firstRow),
      lastRow: Number(lastRow),
      type: /type="(\w+)"/.exec(tag!)![1]!,
      source: unescaped(/<formula1>(.*?)<\/formula1>/s.exec(inner!)![1]!),
    };
  });
}

describe("tables of the sample workbook", () => {
  test.each(definitions.map((definition) => [definition.name, definition] as const))(
    "%s has the headings of its definition and covers its rows",
    (name, definition) => {
      const table = tables.find((one) => one.name === name)!;
      expect(table.columns.map((column) => column.name)).toEqual(definition.columns.map(({ heading }) => heading));
      const [, lastLetters, lastRow] = /^A4:([A-Z]+)(\d+)$/.exec(table.area)!;
      expect(columnNumber(lastLetters!)).toBe(definition.columns.length);
      const rows = tableRows(name);
      expect(rows.every((row) => Object.values(row).some((value) => value !== undefined))).toBe(true);
      const below = [...sheet(name).cells.values()].filter(
        ({ row, value }) => row > Number(lastRow) && value !== undefined,
      );
      expect(below).toEqual([]);
    },
  );

  test.each(definitions.map((definition) => [definition.name, definition] as const))(
    "%s offers a list for each column of words, in its rows and below them",
    (name, definition) => {
      const found = validationsOf(name);
      const lastRow = Number(/\d+$/.exec(tables.find((one) => one.name === name)!.area)![0]);
      definition.columns.forEach((column: ColumnDefinition, index) => {
        if (column.choices === undefined && column.holds !== "lesion") return;
        const validation = found.find((one) => one.column === index + 1)!;
        expect([column.heading, validation.type, validation.firstRow]).toEqual([column.heading, "list", 5]);
        expect(validation.lastRow).toBeGreaterThan(lastRow + 100);
        if (column.holds === "choice") expect(validation.source).toBe(`"${column.choices!.join(",")}"`);
      });
    },
  );

  test("every list that is named stands where the name points", () => {
    const names = new Map(
      [...parts["xl/workbook.xml"]!.matchAll(/<definedName name="(\w+)"[^>]*>([^<]*)</g)].map(([, name, cells]) => [
        name,
        unescaped(cells!),
      ]),
    );
    const lesions = tables.find(({ name }) => name === "Lesions")!;
    expect(names.get("LesionCodes")).toBe(`Lists!$A$5:$A$${/\d+$/.exec(lesions.area)![0]}`);
    const treatments = tables.find(({ name }) => name === "Treatments")!;
    expect(names.get("TreatmentList")).toBe(`Lists!$F$5:$F$${/\d+$/.exec(treatments.area)![0]}`);
    expect(names.get("AsOf")).toBe("Start!$B$5");
  });

  test("settings tables carry headings that the worksheet functions find", () => {
    const headings = (name: string) => tables.find((one) => one.name === name)!.columns.map((column) => column.name);
    expect(headings("Rules")).toEqual(expect.arrayContaining([...recheckRules.headings!]));
    expect(headings("TrimRules")).toEqual(expect.arrayContaining([...trimRules.headings!]));
    expect(headings("Targets")).toEqual(expect.arrayContaining([...targetsTable.headings!]));
  });

  test("the as-of day stands in one cell, and no formula reads the clock", () => {
    expect(sheet("Start").cells.get("B5")?.value).toBe(46266);
    for (const [path, xml] of Object.entries(parts)) {
      if (!path.startsWith("xl/worksheets/")) continue;
      for (const [, formula] of xml.matchAll(/<f[^>]*>(.*?)<\/f>/gs))
        expect(formula).not.toMatch(/\b(TODAY|NOW|RAND)\b/);
    }
  });
});
