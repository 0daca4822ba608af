import { cellPosition } from "../../../../src/workbook/cell-address";
import { OfficeBookHost } from "../../../../src/workbook/office/book/host";
import { areaText } from "../../../../src/workbook/plain-book";
import { openBook } from "../../../../src/workbook/saving/open-book";
import { FakeDocument, type FakePlace, shiftRows, USUAL_HABITS } from "../../../fakes/office/document";
import type { FakeCell } from "../../../fakes/office/entry";
import { fakeRun } from "../../../fakes/office/workbook";
import { bookPortContract } from "./contract";
import type { StartSheet, TestSheets } from "./test-sheets";

const ids = (): Promise<readonly string[]> => Promise.resolve(["CELL.SCORE"]);

const documents: FakeDocument[] = [];
afterEach(() => {
  for (const document of documents.splice(0)) expect(document.misuses).toEqual([]);
});

function placeOf(text: string): FakePlace {
  const [first = "", last = first] = text.split(":");
  const [start, end] = [cellPosition(first), cellPosition(last)];
  return { ...start, rows: end.row - start.row + 1, columns: end.column - start.column + 1 };
}

function startDocument(sheets: readonly StartSheet[]): FakeDocument {
  const document = new FakeDocument(USUAL_HABITS);
  document.hasFunctions = false;
  for (const { name, hidden = false, cells, merges = [], tables = [] } of sheets) {
    const sheet = document.addSheet(name);
    sheet.hidden = hidden;
    sheet.merges.push(...merges.map(placeOf));
    for (const [address, { value, formula, numberFormat = "General", spills }] of Object.entries(cells)) {
      if (spills !== undefined) sheet.spills.push(placeOf(spills));
      const { row, column } = cellPosition(address);
      const own = formula === undefined ? {} : { formula: `=${formula}` };
      sheet.put(row, column, { value: value ?? "", numberFormat, ...own });
    }
    for (const table of tables) document.addTable({ sheet, ...placeOf(table.area) }).name = table.name;
  }
  return document;
}

async function open(sheets: readonly StartSheet[]): Promise<TestSheets> {
  const document = startDocument(sheets);
  documents.push(document);
  const find = (name: string) => document.sheets.find((sheet) => sheet.name === name)!;
  return {
    user: (log) => openBook(new OfficeBookHost(ids, fakeRun(document, {})), log),
    type: async (name, address, value) => {
      const { row, column } = cellPosition(address);
      const { numberFormat } = find(name).cell(row, column);
      find(name).put(row, column, { value: value ?? "", numberFormat });
    },
    protectSheet: async (name) => {
      find(name).protected = true;
    },
    deleteSheet: async (name) => document.removeSheet(find(name)),
    cell: async (name, address) => {
      const { row, column } = cellPosition(address);
      const { value, formula, numberFormat } = find(name).cell(row, column);
      return { value: value === "" ? null : value, hasFormula: formula !== undefined, numberFormat };
    },
    shown: () => document.selected,
    steps: document.faults.taken,
    failSteps: document.faults.fail,
    close: async () => {
      document.open = false;
    },
  };
}

bookPortContract({ name: "Excel", shows: true, computes: true, open });

describe("what only Excel does", () => {
  test("cells that a formula fills from elsewhere are known and left alone", async () => {
    const document = startDocument([
      {
        name: "Herd",
        cells: { A1: { value: 1, formula: "HERD.X(1)" }, A2: { value: 2 }, B1: { value: 3 }, B2: { value: 4 } },
      },
    ]);
    documents.push(document);
    document.sheets[0]!.spills.push(placeOf("A1:B2"));
    const port = openBook(new OfficeBookHost(ids, fakeRun(document, {})));
    const { formulas } = await port.readSheet("Herd");
    expect(formulas).toContainEqual({ firstRow: 0, firstColumn: 0, lastRow: 1, lastColumn: 1 });
    const cells = [{ sheet: "Herd", address: "B2", was: 4, set: 5 }];
    await expect(port.changeCells({ id: "1", title: "", cells })).rejects.toMatchObject({ kind: "calculated" });
  });

  test("a formula as the file stores it is entered as it is typed, and works once the functions are there", async () => {
    const stored = { value: "#NAME?", formula: "_xldudf_HERD_CELL_SCORE(200)" };
    const document = startDocument([{ name: "Herd", cells: { B2: stored } }]);
    documents.push(document);
    const port = openBook(new OfficeBookHost(ids, fakeRun(document, {})));
    const broken = [{ sheet: "Herd", address: "B2", formula: "=HERD.CELL.SCORE(200)" }];
    expect(await port.functionsLoaded()).toBe("no");
    expect(await port.reenter(broken)).toEqual(broken);
    document.hasFunctions = true;
    expect(await port.reenter(broken)).toEqual([]);
    expect(document.sheets[0]!.cell(1, 1)).toMatchObject({ formula: "=HERD.CELL.SCORE(200)", value: 1 });
    expect(await port.functionsLoaded()).toBe("yes");
  });

  test("someone who changes a cell while it is written keeps it, and nothing else is written", async () => {
    const cells = { A1: { value: "a" }, A2: { value: "b" } };
    const document = startDocument([{ name: "Herd", cells }]);
    documents.push(document);
    const sheet = document.sheets[0]!;
    const port = openBook(new OfficeBookHost(ids, fakeRun(document, {})));
    let turns = 0;
    const changes = {
      id: "1",
      title: "",
      cells: [
        { sheet: "Herd", address: "A1", was: "a", set: "A" },
        { sheet: "Herd", address: "A2", was: "b", set: "B" },
      ],
    };
    for (let at = 1; at <= 6; at++) {
      turns = 0;
      document.turn = async () => {
        turns += 1;
        if (turns === at) sheet.put(1, 0, { value: `other ${at}`, numberFormat: "General" });
      };
      const outcome = await port.changeCells({ ...changes, id: String(at) }).then(
        () => "done",
        (error: unknown) => (error as { kind: string }).kind,
      );
      if (turns < at) continue;
      expect(outcome).toBe("changed");
      expect([sheet.cell(0, 0).value, sheet.cell(1, 0).value]).toEqual(["a", `other ${at}`]);
      sheet.put(1, 0, { value: "b", numberFormat: "General" });
    }
  });

  test("cells in more than one batch are all changed or none, and neighbours are written together", async () => {
    const count = 2500;
    const document = startDocument([{ name: "Herd", cells: {} }]);
    documents.push(document);
    const sheet = document.sheets[0]!;
    const port = openBook(new OfficeBookHost(ids, fakeRun(document, {})));
    const cells = Array.from({ length: count }, (_, at) => ({
      sheet: "Herd",
      address: `B${count - at}`,
      was: null,
      set: at,
    }));
    let most = 0;
    let before = document.faults.taken();
    document.turn = async () => {
      most = Math.max(most, document.faults.taken() - before);
      before = document.faults.taken();
    };
    await port.changeCells({ id: "1", title: "", cells });
    expect(sheet.cell(0, 1).value).toBe(count - 1);
    // A proxy, a reading and a few others for each of a thousand cells that are asked at once.
    expect(most).toBeLessThan(8000);
    await port.takeBack("1");
    for (let at = 1; ; at++) {
      let turns = 0;
      document.turn = async () => {
        turns += 1;
        if (turns === at) sheet.put(count - 1, 1, { value: "other", numberFormat: "General" });
      };
      const outcome = await port.changeCells({ id: `x${at}`, title: "", cells }).then(
        () => "done",
        (error: unknown) => (error as { kind: string }).kind,
      );
      if (turns < at) break;
      const left = Array.from({ length: count }, (_, row) => sheet.cell(row, 1).value).filter((value) => value !== "");
      if (outcome === "changed") expect([at, left]).toEqual([at, ["other"]]);
      else expect([at, outcome, left.length, left.at(-1)]).toEqual([at, "done", count, "other"]);
      sheet.cells.clear();
    }
  });

  test("blank cells that a formula fills from elsewhere are known too", async () => {
    const cells = { A1: { value: 1, formula: "HERD.X(1)" }, D1: { value: 5, formula: "1+4" }, D2: { value: 6 } };
    const document = startDocument([{ name: "Herd", cells }]);
    documents.push(document);
    document.sheets[0]!.spills.push(placeOf("A1:B3"));
    const port = openBook(new OfficeBookHost(ids, fakeRun(document, {})));
    const area = { firstRow: 0, firstColumn: 0, lastRow: 2, lastColumn: 1 };
    expect((await port.readSheet("Herd")).spills).toEqual([area]);
    expect(await port.isFree("Herd", { ...area, firstRow: 2 })).toBe(false);
    expect(await port.isFree("Herd", { ...area, firstRow: 3, lastRow: 3 })).toBe(true);
  });

  test("a sheet with more merged cells than Excel tells at once is read, and the others with it", async () => {
    const document = startDocument([
      { name: "Herd", cells: { A1: { value: "a" } } },
      { name: "Other", cells: { A1: { value: "b" } }, merges: ["C1:D1"] },
    ]);
    documents.push(document);
    const merges = Array.from({ length: 1300 }, (_, row) => ({ row: row + 5, column: 1, rows: 1, columns: 2 }));
    document.sheets[0]!.merges.push(...merges, { row: 0, column: 5, rows: 1_000_000, columns: 1 });
    const port = openBook(new OfficeBookHost(ids, fakeRun(document, {})));
    const [herd, other] = (await port.readBook()).sheets;
    expect(new Set(herd!.merges.map(areaText)).size).toBe(1301);
    expect(herd!.merges).toHaveLength(1301);
    expect(other!.merges.map(areaText)).toEqual(["C1:D1"]);
    const change = { sheet: "Herd", address: "C600", was: null, set: 1 };
    await expect(port.changeCells({ id: "1", title: "", cells: [change] })).rejects.toMatchObject({ kind: "merged" });
    await port.changeCells({ id: "2", title: "", cells: [{ ...change, address: "E600" }] });
  });

  test("borders down to the last row are not read as cells", async () => {
    const document = startDocument([
      { name: "Herd", cells: { A1: { value: "#NAME?", formula: "HERD.CELL.SCORE(1)" } } },
    ]);
    documents.push(document);
    document.sheets[0]!.put(1_048_575, 11, { value: "", numberFormat: "0.0" });
    const port = openBook(new OfficeBookHost(ids, fakeRun(document, {})));
    expect((await port.readSheet("Herd")).rows).toHaveLength(1);
    expect(await port.brokenFormulas()).toHaveLength(1);
  });

  test("a sheet in which rows are put in while it is read in parts is read again", async () => {
    const rows = 120_000;
    const document = startDocument([{ name: "Herd", cells: {} }]);
    documents.push(document);
    const sheet = document.sheets[0]!;
    for (let row = 0; row < rows; row++) sheet.put(row, 0, { value: row, numberFormat: "General" });
    const port = openBook(new OfficeBookHost(ids, fakeRun(document, {})));
    let turns = 0;
    document.turn = async () => {
      turns += 1;
      if (turns !== 7) return;
      shiftRows(sheet, 10, 0, 1, 1);
      sheet.put(10, 0, { value: "new", numberFormat: "General" });
    };
    const read = (await port.readSheet("Herd")).rows.map(([cell]) => cell);
    expect(turns).toBeGreaterThan(7);
    expect(read).toHaveLength(rows + 1);
    expect(new Set(read).size).toBe(rows + 1);
  });

  test.each([
    ["another formula", { value: 3, formula: "=1+2", numberFormat: "General" }],
    ["text", { value: "12", numberFormat: "General" }],
    ["nothing", { value: "", numberFormat: "General" }],
  ])("%s that someone puts in the place of a broken formula stays", async (_, cell) => {
    const cells = {
      A1: { value: "#NAME?", formula: "HERD.CELL.SCORE(200)" },
      A2: { value: "#NAME?", formula: "HERD.CELL.SCORE(400)" },
    };
    const broken = [1, 2].map((row) => ({ sheet: "Herd", address: `A${row}`, formula: "" }));
    for (let at = 1; ; at++) {
      const document = startDocument([{ name: "Herd", cells }]);
      documents.push(document);
      document.hasFunctions = true;
      const sheet = document.sheets[0]!;
      const port = openBook(new OfficeBookHost(ids, fakeRun(document, {})));
      let turns = 0;
      document.turn = async () => {
        turns += 1;
        if (turns === at) sheet.put(0, 0, { ...cell });
      };
      expect(await port.reenter(broken)).toEqual([]);
      if (turns < at) break;
      const { value, formula } = sheet.cell(0, 0);
      const wanted: FakeCell = cell;
      expect([at, wanted.formula ?? value, formula]).toEqual([at, wanted.formula ?? wanted.value, wanted.formula]);
      expect(sheet.cell(1, 0)).toMatchObject({ value: 1 });
    }
  });
});
