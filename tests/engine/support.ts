import { recalculate } from "../../src/engine/headless";
import type { ComputedCell, ComputedWorkbook } from "../../src/engine/results";
import { cellAddress, parseArea, parseCell } from "../../src/xlsx/address";
import type {
  CellContent,
  CellModel,
  DefinedNameModel,
  SheetModel,
  TableModel,
  WorkbookModel,
} from "../../src/xlsx/model";

/** Cells by address: a constant, or a formula with its "=". */
export type Cells = Readonly<Record<string, number | string | boolean>>;

export interface Extras {
  readonly tables?: readonly {
    readonly sheet: string;
    readonly name: string;
    readonly area: string;
    readonly totals?: true;
  }[];
  readonly names?: Readonly<Record<string, string>>;
  /** Rows that nobody sees, from 1 on, by sheet. */
  readonly hiddenRows?: Readonly<Record<string, readonly number[]>>;
}

export function cell(address: string, content: number | string | boolean): CellModel {
  const place = parseCell(address)!;
  return typeof content === "string" && content.startsWith("=")
    ? { ...place, style: 0, value: null, formula: content.slice(1) }
    : { ...place, style: 0, value: content };
}

/** A workbook put together in memory. The headings of a table are the texts in its first row. */
export function workbook(
  sheets: Readonly<Record<string, Cells>>,
  { tables = [], names = {}, hiddenRows = {} }: Extras = {},
): WorkbookModel {
  return {
    sheets: Object.entries(sheets).map(([name, cells]): SheetModel => {
      const models = Object.entries(cells).map(([address, content]) => cell(address, content));
      return {
        name,
        state: "visible",
        cells: models.sort((a, b) => a.row - b.row || a.column - b.column),
        columns: [],
        rows: (hiddenRows[name] ?? []).map((row) => ({ row: row - 1, hidden: true })),
        merges: [],
        tables: tables.filter(({ sheet }) => sheet === name).map((table) => tableModel(table, models)),
        validations: [],
        conditionalFormats: [],
        showGridLines: true,
      };
    }),
    names: Object.entries(names).map(([name, formula]): DefinedNameModel => ({ name, formula, hidden: false })),
    styles: [{}],
    activeSheet: 0,
    from1904: false,
  };
}

function tableModel(
  { name, area: reference, totals = false }: { name: string; area: string; totals?: boolean },
  cells: readonly CellModel[],
): TableModel {
  const area = parseArea(reference)!;
  const headings = cells.filter(
    ({ row, column }) => row === area.firstRow && column >= area.firstColumn && column <= area.lastColumn,
  );
  return {
    name,
    area,
    hasHeadings: true,
    hasTotals: totals,
    columns: headings.map(({ value }) => ({ name: String(value) })),
    stripes: true,
    filter: true,
  };
}

/** A computed workbook to be asked cell by cell. */
export class Answers {
  private readonly sheets: ReadonlyMap<string, ReadonlyMap<string, ComputedCell>>;

  constructor(readonly computed: ComputedWorkbook) {
    this.sheets = new Map(
      computed.sheets.map(({ name, cells }) => [
        name,
        new Map(cells.map((found) => [cellAddress(found.row, found.column), found])),
      ]),
    );
  }

  cell(address: string, sheet = this.computed.sheets[0]!.name): ComputedCell | undefined {
    return this.sheets.get(sheet)?.get(address);
  }

  /** The value, an error as its text, null where the cell shows nothing. */
  value(address: string, sheet?: string): Exclude<CellContent, object> {
    const value = this.cell(address, sheet)?.value ?? null;
    return typeof value === "object" && value !== null ? value.error : value;
  }

  /** Rows of values of a block such as A1:C3. */
  block(reference: string, sheet?: string): Exclude<CellContent, object>[][] {
    const { firstRow, firstColumn, lastRow, lastColumn } = parseArea(reference)!;
    return Array.from({ length: lastRow - firstRow + 1 }, (_, row) =>
      Array.from({ length: lastColumn - firstColumn + 1 }, (_, column) =>
        this.value(cellAddress(firstRow + row, firstColumn + column), sheet),
      ),
    );
  }
}

export async function answers(sheets: Readonly<Record<string, Cells>>, extras?: Extras): Promise<Answers> {
  return new Answers(await recalculate(workbook(sheets, extras)));
}

/** Computes one formula in a workbook that may hold other cells. */
export async function answer(formula: string, cells: Cells = {}): Promise<Exclude<CellContent, object>> {
  return (await answers({ Data: { ...cells, Z1: formula } })).value("Z1");
}
