import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { cellAddress, cellPosition } from "../../../src/workbook/cell-address";
import { FileHost } from "../../../src/workbook/file/table-host";
import type { PlainCell } from "../../../src/workbook/port";
import { openTables } from "../../../src/workbook/saving/open-tables";
import type { WorkbookModel } from "../../../src/xlsx/model";
import { readWorkbook } from "../../../src/xlsx/read";
import { saveEdits } from "../../../src/xlsx/save-edits";
import { MemoryStore } from "../../fakes/file/memory-store";
import { startFile } from "../../fakes/file/start-file";
import { tablePortContract } from "./contract";
import { enteredInto, rawFileCell, typedInto } from "./raw-file";
import type { OtherUser, StartTable, TestBook } from "./test-book";

interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly headings: readonly string[];
}

function placeOf(bytes: Uint8Array, name: string): Place {
  return placeIn(readWorkbook(bytes, []), name);
}

function placeIn({ sheets }: WorkbookModel, name: string): Place {
  for (const sheet of sheets) {
    const table = sheet.tables.find((known) => known.name === name);
    if (table === undefined) continue;
    const { firstRow, lastRow, firstColumn } = table.area;
    const headings = table.columns.map((column) => column.name);
    return { sheet: sheet.name, row: firstRow, column: firstColumn, rows: lastRow - firstRow, headings };
  }
  throw new Error(`no table ${name}`);
}

function otherUser(store: MemoryStore): OtherUser {
  const rewrite = async (path: RegExp, change: (xml: string) => string): Promise<void> => {
    const parts = unzipSync(store.bytes!);
    for (const [name, content] of Object.entries(parts)) {
      if (path.test(name)) parts[name] = strToU8(change(strFromU8(content)));
    }
    store.put(zipSync(parts, { level: 1 }));
  };
  const rewriteSheet = (name: string, change: (xml: string) => string): Promise<void> => {
    const number = readWorkbook(store.bytes!, []).sheets.findIndex((sheet) => sheet.name === name) + 1;
    return rewrite(new RegExp(`worksheets/sheet${number}\\.xml`), change);
  };
  /** The rows of a table as somebody's program would write them back. */
  const setRows = async (name: string, change: (rows: PlainCell[][]) => PlainCell[][]): Promise<void> => {
    const bytes = store.bytes!;
    const model = readWorkbook(bytes, []);
    const { sheet: sheetName, row, column, rows, headings } = placeIn(model, name);
    const sheet = model.sheets.find((known) => known.name === sheetName)!;
    const inBody = (cell: { row: number; column: number }): boolean =>
      cell.row > row && cell.row <= row + rows && cell.column >= column && cell.column < column + headings.length;
    const body = new Map(sheet.cells.filter(inBody).map((cell) => [cellAddress(cell), cell]));
    const at = (down: number, right: number) => body.get(cellAddress({ row: row + 1 + down, column: column + right }));
    const old = Array.from({ length: rows }, (_, down) =>
      headings.map((__, right) => (at(down, right)?.value ?? null) as PlainCell),
    );
    const formulas = headings.map((_, right) => at(0, right)?.formula);
    const next = change(old);
    const contents = [
      ...sheet.cells.filter((cell) => !inBody(cell) && cell.value !== null),
      ...next.flatMap((cells, down) =>
        headings.map((_, right) => {
          const place = { row: row + 1 + down, column: column + right };
          const formula = formulas[right];
          return formula === undefined ? { ...place, value: cells[right] ?? null } : { ...place, formula, value: null };
        }),
      ),
    ];
    const area = {
      firstRow: row,
      firstColumn: column,
      lastRow: row + next.length,
      lastColumn: column + headings.length - 1,
    };
    store.put(
      saveEdits(
        bytes,
        model,
        [],
        [{ name: sheetName, contents, tables: [{ name, area }], fresh: { name: sheetName, cells: [], spills: [] } }],
      ),
    );
  };
  /** The sheet without the row: all below it stand one higher, and the table is one shorter. */
  const deleteRow = (name: string, at: number): Promise<void> => {
    const model = readWorkbook(store.bytes!, []);
    const place = placeIn(model, name);
    const number = model.sheets.findIndex((sheet) => sheet.name === place.sheet) + 1;
    // The heading is row place.row, counted from 0; addresses count from 1.
    const gone = place.row + at + 2;
    const row = new RegExp(`<row r="${gone}"[^>/]*(?:/>|>.*?</row>)`, "s");
    const higherFrom = (first: number) => (whole: string, start: string, down: string) =>
      Number(down) < first ? whole : `${start}${Number(down) - 1}"`;
    return rewrite(new RegExp(`worksheets/sheet${number}\\.xml|tables/`), (xml) => {
      if (xml.includes("<sheetData"))
        return xml.replace(row, "").replace(/(<row r="|<c r="[A-Z]+)(\d+)"/g, higherFrom(gone + 1));
      return xml.includes(`name="${name}"`) ? xml.replace(/(ref="[A-Z]+\d+:[A-Z]+)(\d+)"/g, higherFrom(gone)) : xml;
    });
  };
  return {
    setCell: (name, row, heading, value) =>
      setRows(name, (rows) => {
        const column = placeOf(store.bytes!, name).headings.indexOf(heading);
        return rows.map((cells, at) => cells.map((cell, right) => (at === row && right === column ? value : cell)));
      }),
    deleteRow,
    insertRow: (name, row, cells) => setRows(name, (rows) => [...rows.slice(0, row), [...cells], ...rows.slice(row)]),
    renameTable: (from, to) => rewrite(/tables\//, (xml) => xml.replaceAll(`ame="${from}"`, `ame="${to}"`)),
    deleteTable: async (name) => {
      const parts = unzipSync(store.bytes!);
      const path = Object.keys(parts).find(
        (known) => /tables\//.test(known) && strFromU8(parts[known]!).includes(`"${name}"`),
      )!;
      const file = path.slice(path.lastIndexOf("/") + 1);
      await rewrite(/worksheets\/_rels/, (xml) => xml.replace(new RegExp(`<Relationship [^>]*${file}"/>`), ""));
    },
    renameColumn: (_, from, to) => rewrite(/tables\/|worksheets\//, (xml) => xml.replaceAll(from, to)),
    protectSheet: (name) =>
      rewriteSheet(name, (xml) => xml.replace("</sheetData>", '</sheetData><sheetProtection sheet="1" objects="1"/>')),
    filter: (name) =>
      rewrite(/tables\//, (xml) =>
        xml.includes(`"${name}"`)
          ? xml.replace(
              /<autoFilter ([^>]*)\/>/,
              '<autoFilter $1><filterColumn colId="1"><filters><filter val="102"/></filters></filterColumn></autoFilter>',
            )
          : xml,
      ),
    typeAt: async (name, address, value) => store.put(typedInto(store.bytes!, name, address, value)),
    enterBlankFormula: async (name, address) =>
      store.put(enteredInto(store.bytes!, name, address, { value: null, formula: 'IF(TRUE,"","")' })),
    merge: (name, area) => {
      const merged = `<mergeCells count="1"><mergeCell ref="${area}"/></mergeCells>`;
      return rewriteSheet(name, (xml) => xml.replace("</sheetData>", `</sheetData>${merged}`));
    },
    renameSheet: (from, to) => rewrite(/workbook\.xml$/, (xml) => xml.replace(`name="${from}"`, `name="${to}"`)),
    deleteSheet: (name) =>
      rewrite(/workbook\.xml$/, (xml) => xml.replace(new RegExp(`<sheet [^>]*name="${name}"[^>]*/>`), "")),
    typeBelow: async (name, down) => {
      const bytes = store.bytes!;
      const model = readWorkbook(bytes, []);
      const { sheet: sheetName, row, column, rows } = placeIn(model, name);
      const sheet = model.sheets.find((known) => known.name === sheetName)!;
      const cell = { row: row + rows + down, column, value: "total" };
      const contents = [...sheet.cells.filter(({ value }) => value !== null), cell];
      const tables = sheet.tables.map((table) => ({ name: table.name, area: table.area }));
      store.put(
        saveEdits(
          bytes,
          model,
          [],
          [{ name: sheetName, contents, tables, fresh: { name: sheetName, cells: [], spills: [] } }],
        ),
      );
    },
  };
}

function openBook(tables: readonly StartTable[]): Promise<TestBook> {
  const store = new MemoryStore(startFile(tables));
  return Promise.resolve({
    user: (log) => openTables(new FileHost(store, { ids: [] }), log),
    other: otherUser(store),
    cell: async (table, row, heading) => {
      const place = placeOf(store.bytes!, table);
      const column = place.column + place.headings.indexOf(heading);
      return rawFileCell(store.bytes!, place.sheet, cellAddress({ row: place.row + 1 + row, column }));
    },
    bodyRows: async (table) => placeOf(store.bytes!, table).rows,
    sheetCell: (sheet, address) => rawFileCell(store.bytes!, sheet, cellAddress(cellPosition(address))),
    sheetNames: async () => readWorkbook(store.bytes!, []).sheets.map(({ name }) => name),
    steps: store.faults.taken,
    failSteps: store.faults.fail,
    setTurn: (turn) => {
      store.turn = turn;
    },
    close: async () => {
      store.bytes = undefined;
    },
  });
}

tablePortContract({ name: "a file", open: openBook }, { runs: 15 });
