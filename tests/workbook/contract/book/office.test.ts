import { cellPosition } from "../../../../src/workbook/cell-address";
import { OfficeBookHost } from "../../../../src/workbook/office/book/host";
import { openBook } from "../../../../src/workbook/saving/open-book";
import { FakeDocument, type FakePlace, USUAL_HABITS } from "../../../fakes/office/document";
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
    for (const [address, { value, formula, numberFormat = "General" }] of Object.entries(cells)) {
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
});
