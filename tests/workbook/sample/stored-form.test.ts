import { registry } from "../../../src/functions/registry";
import { type FileCell, sheets, tables } from "./sample-file";

const formulas = sheets.flatMap(({ name, cells }) =>
  [...cells.values()].filter(({ formula }) => formula !== undefined).map((cell) => ({ name, cell })),
);
const calls = /_xldudf_([A-Z_]+)\(/g;

/** Functions used here that came after the first file format, and how a file spells them. Source: [MS-XLSX] 2.2.3. */
const PREFIXED = ["XLOOKUP", "IFNA", "LET", "MAXIFS", "UNIQUE", "TAKE", "HSTACK", "CHOOSECOLS"];
const SHEET_PREFIXED = ["FILTER", "SORT"];

describe("formulas of the sample workbook as the file stores them", () => {
  test("there are thousands, on summary sheets and in calculated columns", () => {
    expect(formulas.length).toBeGreaterThan(5000);
  });

  test("calls of worksheet functions carry the prefix of an add-in and name a function that there is", () => {
    const known = new Set(registry.map(({ id }) => `HERD_${id.replaceAll(".", "_")}`));
    let count = 0;
    for (const { name, cell } of formulas) {
      expect([name, cell.address, /HERD\./.test(cell.formula!)]).toEqual([name, cell.address, false]);
      for (const [, called] of cell.formula!.matchAll(calls)) {
        count++;
        if (!known.has(called!)) throw new Error(`${name}!${cell.address} calls ${called!}`);
      }
    }
    expect(count).toBeGreaterThan(5000);
  });

  test("most functions of the first slice are shown at work", () => {
    const used = new Set(
      formulas.flatMap(({ cell }) => [...cell.formula!.matchAll(calls)].map(([, called]) => called)),
    );
    expect(used.size).toBeGreaterThanOrEqual(30);
  });

  test("newer functions carry their prefix", () => {
    for (const { name, cell } of formulas) {
      const text = cell.formula!.replace(/"[^"]*"/g, '""');
      for (const [, prefix, called] of text.matchAll(/((?:_xl\w+\.)*)\b([A-Z][A-Z0-9.]*)\(/g)) {
        const wanted = PREFIXED.includes(called!) ? "_xlfn." : SHEET_PREFIXED.includes(called!) ? "_xlfn._xlws." : "";
        expect([name, cell.address, called, prefix]).toEqual([name, cell.address, called, wanted]);
      }
    }
  });

  test("a formula that calls a worksheet function is saved as a dynamic array with the cells that it fills", () => {
    for (const { name, cell } of formulas) {
      if (!cell.formula!.includes("_xldudf_")) continue;
      expect([name, cell.address, cell.dynamic, cell.fills?.split(":")[0]]).toEqual([
        name,
        cell.address,
        true,
        cell.address,
      ]);
    }
  });

  test("every formula has its value saved with it, and none is an error", () => {
    for (const { name, cell } of formulas) {
      expect([name, cell.address, cell.value === undefined, cell.type === "e"]).toEqual([
        name,
        cell.address,
        false,
        false,
      ]);
    }
  });

  test("calculated columns hold one formula, the same in the table and in each of its rows", () => {
    for (const { name, area, columns } of tables) {
      const owner = sheets.find(
        ({ cells }) => cells.get(area.split(":")[0]!)?.value === columns[0]!.name && hasTable(cells, area, columns),
      );
      columns.forEach(({ formula, isArray }, index) => {
        if (formula === undefined) return;
        expect([name, isArray]).toEqual([name, formula.includes("_xldudf_")]);
        expect(formula).not.toMatch(/\[@/);
        const inRows = columnCells(owner!.cells, area, index).map((cell) => cell?.formula);
        expect(new Set(inRows)).toEqual(new Set([formula]));
      });
    }
  });

  test("highlights and lists do without worksheet functions, which they cannot call", () => {
    for (const { xml } of sheets) {
      for (const [text] of xml.matchAll(/<(?:cfRule|dataValidation) .*?<\/(?:cfRule|dataValidation)>/gs)) {
        expect(text).not.toMatch(/_xldudf_|HERD/);
      }
    }
  });
});

function corners(area: string): { readonly column: number; readonly first: number; readonly last: number } {
  const [, letters, first, , last] = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(area)!;
  return {
    column: [...letters!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0),
    first: Number(first),
    last: Number(last),
  };
}

function columnCells(cells: ReadonlyMap<string, FileCell>, area: string, index: number): (FileCell | undefined)[] {
  const { column, first, last } = corners(area);
  const byPlace = new Map([...cells.values()].map((cell) => [cell.row * 1000 + cell.column, cell]));
  return Array.from({ length: last - first }, (_, row) => byPlace.get((first + 1 + row) * 1000 + column + index));
}

function hasTable(
  cells: ReadonlyMap<string, FileCell>,
  area: string,
  columns: readonly { readonly name: string }[],
): boolean {
  const { column, first } = corners(area);
  const headings = [...cells.values()].filter((cell) => cell.row === first && cell.column >= column);
  return columns.every(({ name }, index) =>
    headings.some((cell) => cell.column === column + index && cell.value === name),
  );
}
