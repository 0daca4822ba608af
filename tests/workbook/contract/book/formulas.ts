import type { BookPort } from "../../../../src/workbook/book-port";
import { refusedAs } from "../start";
import { figures, startSheets } from "./start";
import type { SheetsHost, TestSheets } from "./test-sheets";

export function formulaContract(host: SheetsHost): void {
  let book: TestSheets;
  let port: BookPort;
  beforeEach(async () => {
    book = await host.open(startSheets);
    port = book.user();
  });
  const ours = [
    { sheet: figures.name, address: "A1", formula: "=HERD.CELL.SCORE(200)" },
    { sheet: figures.name, address: "A2", formula: '=IF(TRUE,HERD.CELL.SCORE(400),"HERD.NOT(")' },
  ];

  test("formulas of ours that show #NAME? are found, and no others", async () => {
    expect(await port.brokenFormulas()).toEqual(ours);
  });

  test("they are entered again as they were; what they then show is told", async () => {
    const left = await port.reenter(ours);
    expect(left).toEqual(host.computes ? ours : []);
    for (const { address } of ours) expect((await book.cell(figures.name, address)).hasFormula).toBe(true);
    expect(await port.reenter([])).toEqual([]);
  });

  test("cells that are no broken formulas are left alone", async () => {
    const cell = await book.cell(figures.name, "A4");
    expect(
      await port.reenter([
        { sheet: figures.name, address: "A4" },
        { sheet: "Gone", address: "A1" },
      ]),
    ).toEqual([]);
    expect(await book.cell(figures.name, "A4")).toEqual(cell);
  });

  test("a protected sheet", async () => {
    await book.protectSheet(figures.name);
    expect(await refusedAs(port.reenter(ours), "protected")).toMatch(/Figures/);
    expect(await port.brokenFormulas()).toEqual(ours);
  });
}
