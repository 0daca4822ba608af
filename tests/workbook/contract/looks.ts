import type { CellBlock, TablePort } from "../../../src/workbook/table-port";
import { MARCH_1, startTables } from "./start";
import type { RawLook, TestBook, TestHost } from "./test-book";

const block: CellBlock = {
  id: "looks",
  title: "Cells of one cow",
  sheet: "Block",
  address: "B2",
  cells: [
    [{ value: "Cells", look: "title" }, null, null],
    [
      { value: "Cow", look: "label" },
      { value: 101, look: "input" },
      { value: "=1+1", look: "note" },
    ],
    [{ value: "Seen", look: "label" }, { value: { day: MARCH_1 }, look: "figure", numberFormat: "d mmm yyyy" }, null],
    [{ value: "All", look: "section" }, null, { value: null, numberFormat: "0.0" }],
    [
      { formula: "SUM(1,2)", look: "heading" },
      { value: null, look: "heading", alignRight: true },
      { value: "Mind this", look: "warning" },
    ],
    [{ value: null, look: "computed", numberFormat: "0.00" }, { value: null, alignRight: true }, 7],
  ],
  columnWidths: [30, 15, 1],
};

/** Colours as print has them: the page of the colours of this project, and no code. */
const DEEP = "#1F5673";
const INK = "#1D2B34";
const LOOKS: Readonly<Record<string, RawLook>> = {
  B2: { size: 18, bold: true, colour: DEEP },
  B3: { colour: INK },
  C3: { colour: INK, fill: "#FFF4D6", lineBelow: "#C9B98A" },
  D3: { italic: true, colour: "#5B6770" },
  C4: { bold: true, colour: INK },
  B5: { size: 13, bold: true, colour: DEEP, lineBelow: "#B8C4C9" },
  B6: { bold: true, colour: DEEP, fill: "#E3ECEF" },
  C6: { bold: true, colour: DEEP, fill: "#E3ECEF", right: true },
  D6: { bold: true, colour: "#8A2B06", fill: "#FBE3D6" },
  B7: { colour: DEEP },
  C7: { right: true },
};
const FORMATS = { C4: "d mmm yyyy", D5: "0.0", B7: "0.00" };

/** How the cells of a block look, and that they are plain again when it is taken back. */
export function lookContract(host: TestHost): void {
  let book: TestBook;
  let port: TablePort;
  beforeEach(async () => {
    book = await host.open(startTables);
    port = book.user();
  });
  const raw = (sheet: string, address: string) => book.sheetCell(sheet, address);
  /** Files of some programs say what is usual, too. */
  const shown = async (sheet: string, address: string): Promise<Partial<RawLook>> => {
    const plain = await raw(sheet, "Z99");
    const { look = {} } = await raw(sheet, address);
    return Object.fromEntries(
      Object.entries(look).filter(([name, value]) => plain.look?.[name as keyof RawLook] !== value),
    );
  };

  test("each cell looks as its part in the block, those that a formula fills too", async () => {
    await port.writeBlock(block);
    for (const [address, look] of Object.entries(LOOKS)) {
      expect([address, await shown("Block", address)]).toEqual([address, look]);
    }
    for (const [address, format] of Object.entries(FORMATS)) {
      expect([address, (await raw("Block", address)).numberFormat]).toEqual([address, format]);
    }
    expect((await raw("Block", "C4")).value).toBe(MARCH_1);
    expect(await raw("Block", "D3")).toMatchObject({ value: "=1+1", hasFormula: false });
    expect((await raw("Block", "C6")).value).toBeNull();
    expect(await shown("Block", "E7")).toEqual({});
  });

  test("columns are made wider and never narrower", async () => {
    await port.writeBlock(block);
    const [a, b, c, d] = await Promise.all(["A1", "B1", "C1", "D1"].map(async (at) => (await raw("Block", at)).width!));
    expect(b! / c!).toBeCloseTo(30 / 15, 1);
    expect(c).toBeGreaterThan(a!);
    expect(d).toBeCloseTo(a!);
  });

  test("taken back, cells are plain again and columns as wide as they were", async () => {
    const beside = { ...block, sheet: "Plan", address: "H22" };
    const cells = ["H22", "I23", "I24", "H26", "I26", "H27", "I27"];
    const before = await Promise.all(cells.map((at) => raw("Plan", at)));
    await port.writeBlock(beside);
    expect(await shown("Plan", "H26")).toEqual(LOOKS["B6"]);
    await port.takeBack("looks");
    expect(await Promise.all(cells.map((at) => raw("Plan", at)))).toEqual(before);
  });

  test("a cell that only got a look keeps what someone typed into it since", async () => {
    await port.writeBlock({ ...block, sheet: "Plan", address: "H22" });
    await book.other.typeAt("Plan", "I27", 5);
    await port.takeBack("looks");
    expect((await raw("Plan", "I27")).value).toBe(5);
    expect(await shown("Plan", "I27")).toEqual({});
  });

  test("cells that only have a look are free", async () => {
    await port.writeBlock({ ...block, cells: [[null, { value: null, look: "input" }]] });
    await port.writeBlock({ sheet: "Block", address: "C2", cells: [[8]] });
    expect((await raw("Block", "C2")).value).toBe(8);
  });

  test("number formats that stood there come back", async () => {
    await port.writeBlock({ ...block, id: "first", cells: [[{ value: null, numberFormat: "0.000" }]] });
    await port.writeBlock({ ...block, cells: [[{ value: 1, look: "figure", numberFormat: "0" }]] });
    await port.takeBack("looks");
    expect(await raw("Block", "B2")).toMatchObject({ value: null, numberFormat: "0.000" });
    expect(await shown("Block", "B2")).toEqual({});
  });
}
