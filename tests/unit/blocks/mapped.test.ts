import { LesionWords, proposedRows } from "../../../src/herd/codes/words";
import { guessBook } from "../../../src/herd/mapping/guess-book";
import { DAY_ORDERS, type MappedSource } from "../../../src/herd/mapping/mapping";
import { readMapped } from "../../../src/herd/mapping/read-mapped";
import { resolveMapping } from "../../../src/herd/mapping/resolve";
import { textDate } from "../../../src/herd/text-dates";
import { plainBook } from "../../../src/workbook/file/plain-book";
import type { SheetModel, WorkbookModel } from "../../../src/xlsx/model";
import { workbook } from "../../engine/support";
import type { BothSides } from "./both-sides";
import { unexplained } from "./compare";
import { farmSides } from "./farm-sides";
import { dataOnly } from "./sheet-side";

jest.setTimeout(180_000);

const AS_OF_DAY = 46_266;
const FILE = "sample-workbooks/own-headings.xlsx";
const SHEETS = ["Herd", "Feet 2026", "Milk recording", "Walking"];

/** The farm's book with the words as its people confirm them. */
function withWords(model: WorkbookModel): WorkbookModel {
  const resolved = resolveMapping(guessBook(plainBook(model)), plainBook(model));
  const texts = resolved.sources
    .filter(({ source }) => source.table === "Findings")
    .flatMap((source) => {
      const { content } = readMapped(source, new LesionWords());
      const place = content.columns.findIndex(({ heading }) => heading === "Lesion");
      return content.rows.map((row) => row[place]).filter((cell) => typeof cell === "string");
    });
  const rows = proposedRows(new LesionWords().unknown(texts)).map(({ word, code }) => [word, code] as const);
  const cells = Object.fromEntries([["Word", "Code"] as const, ...rows].flatMap(([word, code], index) => [[`A${index + 1}`, word!], ...(code === null ? [] : [[`B${index + 1}`, code]])])); // oxfmt-ignore
  const extra = workbook(
    { Words: cells as Record<string, string>, Start: { B5: AS_OF_DAY } },
    { tables: [{ sheet: "Words", name: "Words", area: `A1:B${rows.length + 1}` }], names: { AsOf: "Start!$B$5" } },
  );
  return { ...model, sheets: [...model.sheets, ...extra.sheets], names: extra.names };
}

/** The same sheet with days in place of texts that are written like days. */
function withDays(sheet: SheetModel): SheetModel {
  const cells = sheet.cells.map((cell) => {
    const { value } = cell;
    const day =
      typeof value === "string" ? (textDate(value, "day first") ?? textDate(value, "month first")) : undefined;
    return day === undefined ? cell : { ...cell, value: day };
  });
  return { ...sheet, cells };
}

/** A mapping under which a day that is written as text is a mistake. */
function withRealDays(source: MappedSource): MappedSource {
  return { ...source, columns: source.columns.map(({ unit, ...column }) => (DAY_ORDERS.some((order) => order === unit) || unit === undefined ? column : { ...column, unit })) }; // oxfmt-ignore
}

async function sidesOf(book: WorkbookModel, realDays = false): Promise<BothSides> {
  const guess = guessBook(plainBook(book));
  const mapping = realDays ? { sources: guess.sources.map(withRealDays) } : guess;
  return farmSides(withWords(book), mapping, AS_OF_DAY);
}

describe("a farm's own book", () => {
  let sides: BothSides;
  beforeAll(async () => {
    sides = await sidesOf(dataOnly(FILE, SHEETS));
  });

  test("the sheet computes from the farm's own lists what the pane shows", () => {
    expect(unexplained(sides.differences)).toEqual([]);
  });

  test("counts in cells/mL come into the formula as thousands", () => {
    const cells = sides.laidOut.get("tank-and-cows")!.cells.flat();
    const formulas = cells.flatMap((cell) => cell?.formula ?? []);
    expect(formulas.some((formula) => formula.includes("/1000"))).toBe(true);
  });

  test("days written as text are refused in a sentence", () => {
    expect(sides.laidOut.get("lesion-rates")!.refusals.join()).toMatch(/Findings, Date: the days are written as text/);
  });
});

describe("the same book once its days are days", () => {
  let sides: BothSides;
  beforeAll(async () => {
    const model = dataOnly(FILE, SHEETS);
    sides = await sidesOf({ ...model, sheets: model.sheets.map(withDays) }, true);
  });

  test("the sheet computes from the farm's own words what the pane shows", () => {
    expect(unexplained(sides.differences)).toEqual([]);
  });

  test("its lesions can be told but for the one day that does not exist, which is named", () => {
    const { parts } = sides.computed.get("lesion-rates")!;
    expect(parts.flatMap((part) => (part.kind === "refused" ? [part.sentence] : []))).toEqual([
      'dates row 6 must be a date; got the text "31/06/2026": turn the cell into a date',
    ]);
  });

  test("words of lesions are looked up under Words, words of feet stand in the formula", () => {
    const formulas = sides.laidOut
      .get("lesion-rates")!
      .cells.flat()
      .flatMap((cell) => cell?.formula ?? []);
    const [table] = formulas.filter((formula) => formula.startsWith("HERD.LESION.TABLE"));
    expect(table).toMatch(/FILTER\(Words\[Word\]/);
    expect(table).toMatch(/"left back"/);
  });
});
