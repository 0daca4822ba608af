import { readFileSync } from "node:fs";
import { Workbook } from "@cj-tech-master/excelts";
import { calculateFormulas } from "@cj-tech-master/excelts/formula";
import { initSync, Model } from "@ironcalc/wasm";
import { parseCell } from "../../src/xlsx/address";
import { formulaForms } from "../../src/xlsx/stored-formula";
import { CASES, type Case, DATA, type Referee } from "./corpus";
import { type Answers, answers } from "./support";

jest.setTimeout(120_000);

type Value = number | string | boolean | null;

/** Each formula stands alone in a row of its own, where its result may fill cells to the right and below. */
const SPACING = 10;
const COLUMN = "J";
const rowOf = (index: number): number => 20 + index * SPACING;

/** Rows of values that the formula shows. */
function shown({ expected }: Case): readonly (readonly Value[])[] {
  return Array.isArray(expected) ? (expected as Value[][]) : [[expected as Value]];
}

type Ask = (row: number, column: number) => Value;

function check(test: Case, index: number, ask: Ask): void {
  const first = parseCell(`${COLUMN}${rowOf(index)}`)!;
  const got = shown(test).map((row, down) => row.map((_, across) => ask(first.row + down, first.column + across)));
  const wanted = shown(test).map((row) => row.map(rounded));
  expect(got.map((row) => row.map(rounded))).toEqual(wanted);
}

/** One of the referees shows nine digits. */
function rounded(value: Value): Value {
  return typeof value === "number" ? Number(value.toPrecision(9)) : value;
}

describe("ordinary formulas", () => {
  let result: Answers;
  beforeAll(async () => {
    const formulas = CASES.map(({ formula }, index) => [`${COLUMN}${rowOf(index)}`, `=${formula}`] as const);
    result = await answers({ Data: { ...DATA, ...Object.fromEntries(formulas) } });
  });

  test.each(CASES.map((one, index) => [one.formula, one, index] as const))("%s", (_, one, index) => {
    const cells = new Map(result.computed.sheets[0]!.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]));
    check(one, index, (row, column) => {
      const value = cells.get(`${row},${column}`) ?? null;
      return typeof value === "object" && value !== null ? value.error : value;
    });
  });
});

const judgedBy = (referee: Referee): (readonly [string, Case, number])[] =>
  CASES.map((one, index) => [one.formula, one, index] as const).filter(([, { not = [] }]) => !not.includes(referee));

/** IronCalc, an engine in Rust (MIT or Apache-2.0), in WebAssembly. */
describe("the expected values as IronCalc computes them", () => {
  let model: Model;
  beforeAll(() => {
    initSync({ module: readFileSync(require.resolve("@ironcalc/wasm/wasm_bg.wasm")) });
    model = new Model("corpus", "en", "UTC", "en");
    const enter = (address: string, content: number | string | boolean): void => {
      const { row, column } = parseCell(address)!;
      model.setUserInput(
        0,
        row + 1,
        column + 1,
        typeof content === "boolean" ? String(content).toUpperCase() : String(content),
      );
    };
    for (const [address, content] of Object.entries(DATA)) enter(address, content);
    CASES.forEach(({ formula, expected }, index) => {
      // Days are shown as dates unless something is added to them.
      enter(`${COLUMN}${rowOf(index)}`, typeof expected === "number" ? `=(${formula})+0` : `=${formula}`);
    });
    model.evaluate();
  });

  test.each(judgedBy("ironcalc"))("%s", (_, one, index) => {
    check(one, index, (row, column) => {
      const text = model.getFormattedCellValue(0, row + 1, column + 1);
      if (text === "TRUE" || text === "FALSE") return text === "TRUE";
      const isNumber =
        shown(one)
          .flat()
          .some((value) => typeof value === "number") &&
        text !== "" &&
        !Number.isNaN(Number(text));
      return isNumber ? Number(text) : text;
    });
  });
});

/** The workbook library's own engine (MIT). */
describe("the expected values as the workbook library computes them", () => {
  const book = new Workbook();
  const sheet = book.addWorksheet("Data");
  beforeAll(() => {
    const forms = formulaForms([]);
    for (const [address, content] of Object.entries(DATA)) sheet.getCell(address).value = content;
    CASES.forEach((one, index) => {
      const [rows, columns] = [shown(one).length, shown(one)[0]!.length];
      const { row, column } = parseCell(`${COLUMN}${rowOf(index)}`)!;
      const formula = forms.stored(one.formula);
      const last = sheet.getCell(row + rows, column + columns).address;
      sheet.getCell(row + 1, column + 1).value =
        rows * columns === 1
          ? { formula }
          : { formula, shareType: "array", ref: `${COLUMN}${rowOf(index)}:${last}`, isDynamicArray: true };
    });
    calculateFormulas(book as never);
  });

  test.each(judgedBy("excelts"))("%s", (_, one, index) => {
    check(one, index, (row, column) => {
      const { formula, result, value: constant } = sheet.getCell(row + 1, column + 1);
      const value: unknown = formula ? result : constant;
      if (value instanceof Date) return Math.round(value.getTime() / 86_400_000 + 25_569);
      if (typeof value === "object" && value !== null && "error" in value) return String(value.error);
      return (value ?? null) as Value;
    });
  });
});
