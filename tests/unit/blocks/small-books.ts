import { isError } from "../../../src/blocks/expression/fault";
import type { PlainCell } from "../../../src/workbook/port";
import { inputColumns, type TableDefinition } from "../../../src/workbook/table-definition";
import { cowsTable, findingsTable, pricesTable, scoresTable, testsTable } from "../../../src/workbook/tables";
import { cellAddress } from "../../../src/xlsx/address";
import type { CellModel, SheetModel, WorkbookModel } from "../../../src/xlsx/model";
import { type Cells, workbook } from "../../engine/support";

type Row = Readonly<Record<string, PlainCell>>;

/** Rows of the tables by key; a table that is not named stands with headings and no row. */
export interface SmallBook {
  readonly cows?: readonly Row[];
  readonly findings?: readonly Row[];
  readonly scores?: readonly Row[];
  readonly tests?: readonly Row[];
  /** Settings tables with their headings; those that are not named are not in the workbook. */
  readonly settings?: Readonly<Record<string, readonly (readonly PlainCell[])[]>>;
  /** Columns that the workbook does not have: "Tests lactation". */
  readonly without?: readonly string[];
}

export const DAY_ZERO = 46_000;
export const AS_OF_DAY = DAY_ZERO + 400;

/** A workbook of a few rows; AsOf is DAY_ZERO + 400. */
export function smallBook({ cows, findings, scores, tests, settings = {}, without = [] }: SmallBook): WorkbookModel {
  const sheets: Record<string, Cells> = { Start: { B5: AS_OF_DAY } };
  const tables: { sheet: string; name: string; area: string }[] = [];
  const add = (name: string, rows: readonly (readonly PlainCell[])[]): void => {
    const cells: Record<string, number | string | boolean> = {};
    rows.forEach((row, index) =>
      row.forEach((value, column) => {
        if (value !== null) cells[cellAddress(index, column)] = value;
      }),
    );
    sheets[name] = cells;
    const last = cellAddress(Math.max(1, rows.length - 1), rows[0]!.length - 1);
    tables.push({ sheet: name, name, area: `A1:${last}` });
  };
  const addOurs = (table: TableDefinition, rows: readonly Row[] = []): void => {
    const columns = inputColumns(table).filter(({ key }) => !without.includes(`${table.name} ${key}`));
    add(table.name, [
      columns.map(({ heading }) => heading),
      ...rows.map((row) => columns.map(({ key }) => row[key] ?? null)),
    ]);
  };
  addOurs(cowsTable, cows);
  addOurs(findingsTable, findings);
  addOurs(scoresTable, scores);
  addOurs(testsTable, tests);
  for (const [name, rows] of Object.entries(settings)) {
    if (name === "Prices")
      addOurs(
        pricesTable,
        rows.map(([item = null, price = null]) => ({ item, price })),
      );
    else add(name, rows);
  }
  return withErrors(workbook(sheets, { tables, names: { AsOf: "Start!$B$5" } }));
}

/** Texts that are written like an error become one. */
function withErrors(model: WorkbookModel): WorkbookModel {
  const cells = (sheet: SheetModel): readonly CellModel[] =>
    sheet.cells.map((cell) => (isError(cell.value) ? { ...cell, value: { error: cell.value } } : cell));
  return { ...model, sheets: model.sheets.map((sheet) => ({ ...sheet, cells: cells(sheet) })) };
}

/** Costs, targets and a price, as a farm would have them. */
export const SETTINGS = {
  Prices: [["Milk", 0.5]],
  Costs: [
    ["Lesion", "Cost per case"],
    ["DD", 64],
    ["U", 178],
  ],
  Targets: [
    ["Lesion", "Target per 100 cow-years"],
    ["DD", 10],
  ],
} as const;

const every = (count: number, make: (index: number) => Row): Row[] => Array.from({ length: count }, (_, i) => make(i));

/** Twelve cows, a sound year: what the hostile books are made from. */
export const soundCows = every(12, (i) => ({
  cow: 100 + i,
  lactation: 1 + (i % 4),
  entered: DAY_ZERO - 500 + 30 * i,
  calved: DAY_ZERO + 40 + 25 * i,
  left: i === 11 ? DAY_ZERO + 300 : null,
}));

export const soundFindings = every(40, (i) => ({
  date: DAY_ZERO + 30 + 9 * i,
  cow: 100 + (i % 12),
  lactation: 1 + (i % 4),
  daysInMilk: (i * 11) % 300,
  foot: ["LH", "RH", "LF", null][i % 4]!,
  zone: i % 11,
  lesion: ["DD", "none", "SU", "none", "WL", "ID"][i % 6]!,
}));

export const soundScores = every(72, (i) => ({
  date: DAY_ZERO + 300 + 14 * Math.floor(i / 12),
  cow: 100 + (i % 12),
  score: [0, 1, 2, 3, 0, "-"][(i + Math.floor(i / 12)) % 6]!,
}));

export const soundTests = every(120, (i) => ({
  date: DAY_ZERO + 60 + 33 * Math.floor(i / 12),
  cow: 100 + (i % 12),
  lactation: 1 + (i % 4),
  milkKg: 20 + (i % 7),
  count: [45, 120, 260, 900, 30, null, "no sample"][i % 7]!,
}));
