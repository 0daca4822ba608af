import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { cellAddress } from "../../../src/workbook/cell-address";
import { bodyArea, type FakeArea, type FakePlace, inArea, meet } from "./document";
import { HostError } from "./entry";
import { FakeFormat } from "./format";
import { type FakeContext, Proxy } from "./strict";

const ROWS = 1_048_576;
/** Merged cells of which Excel tells at once. Source: Office JavaScript API, Range.getMergedAreasOrNullObject. */
const MOST_MERGES = 512;
/** Width of a column in points as long as nobody changes it: 64 pixels of which 96 make an inch. */
const USUAL_WIDTH = 48;
/** Excel on the web answers at most 5 MB at once. Source: Microsoft, "Resource limits for Office Add-ins". */
const LARGEST_ANSWER = 5 * 1024 * 1024;

/** Each cell of a block, row by row. */
function grid<T>({ row, column, rows, columns }: FakeArea, of: (row: number, column: number) => T): T[][] {
  const block: T[][] = [];
  for (let down = 0; down < rows; down++) {
    const cells: T[] = [];
    for (let right = 0; right < columns; right++) cells.push(of(row + down, column + right));
    block.push(cells);
  }
  return block;
}

/** A cell holds 32,767 characters at most (source: Excel's specifications), which may take two each in an answer. */
const FEW_CELLS = LARGEST_ANSWER / 2 / 32_767;

function sized(values: unknown[][]): unknown[][] {
  if (values.length * (values[0]?.length ?? 0) <= FEW_CELLS) return values;
  if (JSON.stringify(values).length > LARGEST_ANSWER) throw new HostError("ResponsePayloadSizeLimitExceeded");
  return values;
}

/** What may be loaded of a range. */
const RANGE_READERS: Readonly<Record<string, (area: FakeArea) => unknown>> = {
  rowIndex: ({ row }) => row,
  columnIndex: ({ column }) => column,
  rowCount: ({ rows }) => rows,
  columnCount: ({ columns }) => columns,
  values: (area) => sized(grid(area, (row, column) => area.sheet.cell(row, column).value)),
  formulas: (area) =>
    sized(
      grid(area, (row, column) => {
        const { formula, value } = area.sheet.cell(row, column);
        return formula ?? value;
      }),
    ),
  formulasR1C1: (area) =>
    sized(
      grid(area, (row, column) => {
        const { formula, value } = area.sheet.cell(row, column);
        if (formula === undefined) return value;
        return `=${translateFormulaToR1C1(formula.slice(1), cellAddress({ row, column }))}`;
      }),
    ),
  hasSpill: (area) => {
    const filled = grid(area, (row, column) =>
      area.sheet.spills.some((spill) => inArea({ sheet: area.sheet, ...spill }, area.sheet, row, column)),
    ).flat();
    if (filled.every((isFilled) => isFilled)) return true;
    return filled.some((isFilled) => isFilled) ? null : false;
  },
  numberFormat: (area) => grid(area, (row, column) => area.sheet.cell(row, column).numberFormat),
  "format/columnWidth": ({ sheet, column }) => sheet.widths.get(column) ?? USUAL_WIDTH,
};

export class FakeRange extends Proxy<FakeArea> {
  protected readonly readers = RANGE_READERS;

  private from(change: (area: FakeArea) => FakeArea): FakeRange {
    return new FakeRange(this.context, () => {
      const area = change(this.host);
      if (area.row < 0 || area.column < 0 || area.rows < 1 || area.columns < 1 || area.row + area.rows > ROWS) {
        throw new HostError("InvalidArgument", "the range lies outside the sheet");
      }
      return area;
    });
  }

  /** The range that a formula in this one cell fills. */
  getSpillingToRangeOrNullObject(): FakeRange {
    return this.spill(({ row, column }, spill) => spill.row === row && spill.column === column);
  }

  /** The cell whose formula fills this one. */
  getSpillParentOrNullObject(): FakeRange {
    return this.spill((area, spill) => meet(area, { sheet: area.sheet, ...spill }));
  }

  private spill(isMeant: (area: FakeArea, spill: FakePlace) => boolean): FakeRange {
    const find = (): FakeArea | undefined => {
      const area = this.host;
      if (area.rows !== 1 || area.columns !== 1) throw new HostError("InvalidArgument", "not a single cell");
      const spill = area.sheet.spills.find((known) => isMeant(area, known));
      return spill && { sheet: area.sheet, ...spill };
    };
    return new FakeRange(this.context, find, "orNull");
  }

  getMergedAreasOrNullObject(): FakeRangeAreas {
    return new FakeRangeAreas(
      this.context,
      () => {
        const area = this.host;
        const merges = area.sheet.merges.filter((merge) => meet(area, { sheet: area.sheet, ...merge }));
        if (merges.length > MOST_MERGES) throw new HostError("GeneralException", "too many merged cells");
        return merges.length === 0 ? undefined : merges;
      },
      "orNull",
    );
  }

  select(): void {
    this.do(({ sheet, row, column, rows, columns }) => {
      if (sheet.hidden) throw new HostError("InvalidOperation", "the sheet is hidden");
      const first = cellAddress({ row, column });
      const last = cellAddress({ row: row + rows - 1, column: column + columns - 1 });
      this.context.document.selected = `${sheet.name}!${first === last ? first : `${first}:${last}`}`;
    });
  }

  getRow(row: number): FakeRange {
    return this.from((area) => ({ ...area, row: area.row + row, rows: 1 }));
  }

  getLastRow(): FakeRange {
    return this.from((area) => ({ ...area, row: area.row + area.rows - 1, rows: 1 }));
  }

  getOffsetRange(rows: number, columns: number): FakeRange {
    return this.from((area) => ({ ...area, row: area.row + rows, column: area.column + columns }));
  }

  getRowsBelow(count = 1): FakeRange {
    return this.from((area) => ({ ...area, row: area.row + area.rows, rows: count }));
  }

  getResizedRange(rows: number, columns: number): FakeRange {
    return this.from((area) => ({ ...area, rows: area.rows + rows, columns: area.columns + columns }));
  }

  get rowIndex(): unknown {
    return this.read("rowIndex");
  }
  get columnIndex(): unknown {
    return this.read("columnIndex");
  }
  get rowCount(): unknown {
    return this.read("rowCount");
  }
  get columnCount(): unknown {
    return this.read("columnCount");
  }

  get values(): unknown {
    return this.read("values");
  }
  set values(rows: unknown) {
    this.put("values", rows, (input) => input);
  }

  get formulas(): unknown {
    return this.read("formulas");
  }
  set formulas(rows: unknown) {
    this.put("formulas", rows, (input) => input);
  }

  get formulasR1C1(): unknown {
    return this.read("formulasR1C1");
  }
  set formulasR1C1(rows: unknown) {
    this.put("formulasR1C1", rows, (input, row, column) =>
      typeof input === "string" && input.startsWith("=")
        ? `=${translateFormulaToA1(input.slice(1), cellAddress({ row, column }))}`
        : input,
    );
  }

  get hasSpill(): unknown {
    return this.read("hasSpill");
  }

  get numberFormat(): unknown {
    return this.read("numberFormat");
  }
  set numberFormat(formats: unknown) {
    this.do((area) => {
      this.context.document.refuseProtected(area.sheet);
      const rows = this.matrix("numberFormat", area, formats);
      rows.forEach((row, down) =>
        row.forEach((format, right) => {
          if (format === null) return;
          const [at, column] = [area.row + down, area.column + right];
          area.sheet.put(at, column, { ...area.sheet.cell(at, column), numberFormat: String(format) });
        }),
      );
    });
  }

  get format(): FakeFormat {
    return new FakeFormat(
      (name, value) => this.setFormat(name, value),
      () => this.read("format/columnWidth"),
    );
  }

  private setFormat(name: string, value: unknown): void {
    this.do((area) => {
      this.context.document.refuseProtected(area.sheet);
      const { sheet } = area;
      grid(area, (row, column) => {
        if (name === "columnWidth") sheet.widths.set(column, value as number);
        else sheet.looks.set(`${row},${column}`, { ...sheet.looks.get(`${row},${column}`), [name]: value });
      });
    });
  }

  clear(what: "All" | "Formats" | "Contents" = "All"): void {
    this.do((area) => {
      const { sheet } = area;
      this.context.document.refuseProtected(sheet);
      grid(area, (row, column) => {
        const { numberFormat } = sheet.cell(row, column);
        if (what === "Contents") {
          sheet.put(row, column, { value: "", numberFormat });
          return;
        }
        sheet.looks.delete(`${row},${column}`);
        if (what === "All") sheet.cells.get(row)?.delete(column);
        else sheet.put(row, column, { ...sheet.cell(row, column), numberFormat: "General" });
      });
    });
  }

  private put(name: string, rows: unknown, spelled: (input: unknown, row: number, column: number) => unknown): void {
    this.do((area) => {
      const { document } = this.context;
      const inputs = this.matrix(name, area, rows);
      document.enter(
        area,
        inputs.map((row, down) => row.map((input, right) => spelled(input, area.row + down, area.column + right))),
      );
      for (const table of document.tables) {
        const body = bodyArea(table);
        const touched = inputs.some((_, down) => inArea(body, area.sheet, area.row + down, area.column));
        if (touched) this.context.noteEvent({ type: "changed", table });
      }
    });
  }

  private matrix(name: string, { rows, columns }: FakeArea, given: unknown): unknown[][] {
    const matrix = given as unknown[][];
    const fits = Array.isArray(given) && matrix.length === rows && matrix.every((row) => row.length === columns);
    if (!fits) throw new HostError("InvalidArgument", `${name} must have ${rows} rows and ${columns} columns`);
    return matrix;
  }
}

export function rangeAt(context: FakeContext, find: () => FakeArea): FakeRange {
  return new FakeRange(context, find);
}

/** Several ranges at once. */
class FakeRangeAreas extends Proxy<readonly FakePlace[]> {
  protected readonly readers = {
    "areas/items/rowIndex": (places: readonly FakePlace[]) => places.map(({ row }) => row),
    "areas/items/columnIndex": (places: readonly FakePlace[]) => places.map(({ column }) => column),
    "areas/items/rowCount": (places: readonly FakePlace[]) => places.map(({ rows }) => rows),
    "areas/items/columnCount": (places: readonly FakePlace[]) => places.map(({ columns }) => columns),
  };

  get areas(): { readonly items: readonly Readonly<Record<string, number>>[] } {
    const names = ["rowIndex", "columnIndex", "rowCount", "columnCount"];
    const lists = names.map((name) => this.read(`areas/items/${name}`) as number[]);
    const items = lists[0]!.map((_, at) => Object.fromEntries(names.map((name, index) => [name, lists[index]![at]!])));
    return { items };
  }
}
