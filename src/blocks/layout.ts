import { type CellPosition, cellAddress } from "../workbook/cell-address";
import type { PlainCell } from "../workbook/port";
import { columnWidths } from "./column-widths";
import type { Block, Chart, Figure, Part, Series, Table } from "./block";
import { area, type BlockArea, type LaidOutBlock, type LaidOutCell, type LaidOutChart } from "./laid-out";
import { columnsOf, formatOf } from "./result-columns";
import type { ComputedPart, InputValues } from "./compute";
import type { Expression } from "./expression/expression";
import { MissingData } from "./expression/fault";
import type { Names, References } from "./expression/names";
import { cellOfSeries, columnOfSeries } from "./expression/places";
import type { SpecOf } from "./expression/run";
import { dayAbove, figuresOfDay } from "./series";
import { sourceNotes } from "./sources";

export interface LayoutOptions {
  readonly references: References;
  readonly specOf: SpecOf;
  /** First cell of the block on its sheet, counted from 0. */
  readonly at: CellPosition;
  /** What was put into inputs; the others get their usual formula. */
  readonly given?: InputValues;
  /** Formulas for inputs that follow a cell elsewhere: "Herd!$B$4". */
  readonly linked?: Readonly<Record<string, string>>;
  /** The parts as computed: their rows tell how far the pictures reach. */
  readonly computed?: readonly ComputedPart[];
}

/** Columns and rows that a picture covers. */
const CHART = { columns: 7, rows: 17 } as const;

/** Lays a block out as formulas with headings, number formats, pictures and sources. */
export function layOutBlock(block: Block, options: LayoutOptions): LaidOutBlock {
  return new Layout(block, options).laidOut();
}

class Layout {
  readonly #cells: (LaidOutCell | null)[][] = [];
  readonly #places: Record<string, CellPosition> = {};
  readonly #inputPlaces: Record<string, CellPosition> = {};
  readonly #ranges = new Map<string, BlockArea>();
  readonly #refusals: string[] = [];
  readonly #charts: LaidOutChart[] = [];
  #row = 0;

  constructor(
    private readonly block: Block,
    private readonly options: LayoutOptions,
  ) {}

  laidOut(): LaidOutBlock {
    const { id, title, about, inputs, parts, notes } = this.block;
    this.#put(this.#row++, 0, { value: title, look: "title" });
    this.#put(this.#row++, 0, { value: about, look: "note" });
    for (const { name, label, usual, format } of inputs) this.#addInput(name, label, usual, format);
    for (const part of parts) this.#addPart(part);
    this.#row++;
    for (const note of [...notes, ...sourceNotes(this.block, this.options.specOf), ...this.options.references.notes]) {
      this.#put(this.#row++, 0, { value: note, look: "note" });
    }
    const width = Math.max(2, ...this.#cells.map((row) => row.length));
    for (const chart of this.block.charts) this.#addChart(chart, width + 1);
    const covered = this.#charts.map(({ over }) => over);
    return {
      id,
      title,
      cells: this.#cells,
      room: {
        rows: Math.max(this.#row, ...covered.map(({ lastRow }) => lastRow + 1)),
        columns: Math.max(width, ...covered.map(({ lastColumn }) => lastColumn + 1)),
      },
      columnWidths: columnWidths(this.block, this.#cells, this.options.computed, this.options.specOf),
      charts: this.#charts,
      places: this.#places,
      inputPlaces: this.#inputPlaces,
      refusals: this.#refusals,
    };
  }

  #put(row: number, column: number, cell: LaidOutCell): void {
    while (this.#cells.length <= row) this.#cells.push([]);
    const cells = this.#cells[row]!;
    while (cells.length <= column) cells.push(null);
    cells[column] = cell;
  }

  #addInput(name: string, label: string, usual: Expression, format: string | undefined): void {
    const { given = {}, linked = {} } = this.options;
    const row = this.#row++;
    const look = { look: "input", ...(format === undefined ? {} : { numberFormat: format }) } as const;
    this.#put(row, 0, { value: label, look: "label" });
    this.#inputPlaces[name] = { row, column: 1 };
    const link = linked[name];
    if (link !== undefined) this.#put(row, 1, { formula: link, ...look });
    else if (name in given) this.#put(row, 1, { value: given[name] ?? null, ...look });
    else {
      try {
        this.#put(row, 1, { ...this.#content(usual), ...look });
      } catch (error) {
        if (!(error instanceof MissingData)) throw error;
        this.#put(row, 1, { value: null, ...look });
        this.#put(row, 2, { value: error.sentence, look: "warning" });
      }
    }
  }

  /** A constant stands as itself, anything else as a formula. */
  #content(expression: Expression): { formula: string } | { value: PlainCell } {
    const names = this.#names();
    const { constant } = expression;
    return constant === undefined ? { formula: expression.text(names) } : { value: constant };
  }

  #addPart(part: Part): void {
    const start = this.#row;
    try {
      if (part.kind === "figure") this.#addFigure(part);
      else if (part.kind === "table") this.#addTable(part);
      else this.#addSeries(part);
    } catch (error) {
      if (!(error instanceof MissingData)) throw error;
      // What was begun of the part makes way for the sentence.
      this.#cells.length = Math.min(this.#cells.length, start);
      this.#row = start;
      this.#forget(part);
      const label = part.kind === "figure" ? part.label : part.title;
      this.#refusals.push(`${label}: ${error.sentence}`);
      this.#put(this.#row, 0, { value: label, look: "label" });
      this.#put(this.#row++, 1, { value: error.sentence, look: "warning" });
    }
  }

  /** Parts below must not point at the cells that a refused one would have had. */
  #forget(part: Part): void {
    Reflect.deleteProperty(this.#places, part.id);
    if (part.kind !== "series") return;
    for (let row = 0; row < part.length; row++) Reflect.deleteProperty(this.#places, cellOfSeries(part.id, row, 0));
    part.columns.forEach((_, column) => this.#ranges.delete(columnOfSeries(part.id, column)));
  }

  #addFigure({ id, label, value, format, unit, note }: Figure): void {
    const row = this.#row++;
    const formula = value.text(this.#names());
    this.#places[id] = { row, column: 1 };
    this.#put(row, 0, { value: label, look: "label" });
    this.#put(row, 1, { formula, look: "figure", ...(format === undefined ? {} : { numberFormat: format }) });
    const beside = [unit, note].filter((text) => text !== undefined).join(". ");
    if (beside !== "") this.#put(row, 2, { value: beside, look: "note" });
  }

  #addSection(title: string): void {
    this.#row++;
    this.#put(this.#row++, 0, { value: title, look: "section" });
  }

  #addTable(part: Table): void {
    const { id, title, value, of } = part;
    const formula = value.text(this.#names());
    const columns = columnsOf(of, this.options.specOf);
    this.#addSection(title);
    const top = this.#row;
    this.#places[id] = { row: top, column: 0 };
    const computed = this.#rowsOf(id);
    const length = Math.max(part.rows, (computed?.length ?? 1) - 1);
    columns.forEach((column, place) => {
      const aligned = column.type === "number" ? ({ alignRight: true } as const) : {};
      this.#put(top, place, { ...(place === 0 ? { formula, fills: true } : {}), look: "heading", ...aligned });
      for (let row = 1; row <= length; row++) {
        const own =
          computed?.[row] === undefined ? undefined : part.formats?.(computed[row]![0] ?? null, computed[row]!);
        const format = (column.type === "number" ? own : undefined) ?? formatOf(column);
        this.#put(top + row, place, {
          look: "computed",
          ...aligned,
          ...(format === undefined ? {} : { numberFormat: format }),
        });
      }
    });
    const filled = Math.max(1, computed === undefined ? part.rows : computed.length - 1);
    columns.forEach((_, place) => this.#setRange(id, place, top, filled));
    this.#row = top + length + 1;
  }

  #rowsOf(id: string): readonly (readonly PlainCell[])[] | undefined {
    const part = this.options.computed?.find((known) => known.part.id === id);
    return part?.kind === "rows" ? part.rows : undefined;
  }

  #setRange(id: string, column: number, headings: number, rows: number): void {
    this.#ranges.set(columnOfSeries(id, column), area(headings + 1, column, headings + rows, column));
  }

  #addSeries(part: Series): void {
    const { id, title, length, columns, last } = part;
    this.#addSection(title);
    const top = this.#row;
    this.#places[id] = { row: top, column: 0 };
    columns.forEach(({ heading }, column) => {
      this.#put(top, column, { value: heading, look: "heading", ...(column > 0 ? { alignRight: true } : {}) });
      this.#setRange(id, column, top, length);
    });
    for (let row = 0; row < length; row++) this.#places[cellOfSeries(id, row, 0)] = { row: top + 1 + row, column: 0 };
    const names = this.#names();
    for (let row = 0; row < length; row++) {
      // Without its days there is no series: only its figures may be missing.
      const day = (row === length - 1 ? last : dayAbove(part, row + 1)).text(names);
      const figures = figuresOfDay(part, row).map((figure) => this.#textOr(figure, names, part, row));
      [day, ...figures].forEach((formula, column) => {
        const { format } = columns[column]!;
        this.#put(top + 1 + row, column, {
          formula,
          look: "computed",
          ...(column > 0 ? { alignRight: true } : {}),
          ...(format === undefined ? {} : { numberFormat: format }),
        });
      });
    }
    this.#row = top + length + 1;
  }

  /** A figure of a series for which the workbook has no data shows that it is not there; the others stand. */
  #textOr(expression: Expression, names: Names, { id, title }: Series, row: number): string {
    try {
      return expression.text(names);
    } catch (error) {
      if (!(error instanceof MissingData)) throw error;
      const refusal = `${title}: ${error.sentence}`;
      if (!this.#refusals.includes(refusal)) this.#refusals.push(refusal);
      return `IF(${names.part(cellOfSeries(id, row, 0))}="","",NA())`;
    }
  }

  #addChart(chart: Chart, column: number): void {
    const place = this.#places[chart.part];
    const categories = this.#ranges.get(columnOfSeries(chart.part, chart.categories));
    if (place === undefined || categories === undefined) return;
    const above = this.#charts.at(-1)?.over.lastRow ?? -1;
    const top = Math.max(place.row, above + 2);
    const all = this.#rowsOf(chart.part)?.slice(1) ?? [];
    const computed = all.slice(0, chart.shown?.(all));
    // A picture of no row at all cannot be: it then shows the first.
    const hidden = all.length - Math.max(1, computed.length);
    const shown = (range: BlockArea): BlockArea => ({ ...range, lastRow: range.lastRow - Math.max(0, hidden) });
    this.#charts.push({
      chart,
      categories: shown(categories),
      series: chart.values.map((value) => ({
        name: area(place.row, value, place.row, value),
        heading: this.#headingsOf(chart.part)[value] ?? chart.valueTitle,
        values: shown(this.#ranges.get(columnOfSeries(chart.part, value))!),
      })),
      over: area(top, column, top + CHART.rows - 1, column + CHART.columns - 1),
      description: computed.length === 0 ? chart.title : chart.describe(computed),
    });
  }

  #headingsOf(id: string): readonly string[] {
    const part = this.block.parts.find((known) => known.id === id);
    if (part === undefined || part.kind === "figure") return [];
    const columns = part.kind === "series" ? part.columns : columnsOf(part.of, this.options.specOf);
    return columns.map(({ heading }) => heading);
  }

  /** The cells of the block as its formulas name them. */
  #names(): Names {
    const { references } = this.options;
    const { at } = this.options;
    const absolute = ({ row, column }: CellPosition): string =>
      cellAddress({ row: at.row + row, column: at.column + column }).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
    const where = (places: Readonly<Record<string, CellPosition>>, id: string): string => {
      const place = places[id];
      if (place === undefined) throw new MissingData("A figure above that it needs cannot be computed here.");
      return absolute(place);
    };
    return {
      column: (table, key) => references.column(table, key),
      range: (table, key) => references.range(table, key),
      ranges: (table, key) => references.ranges(table, key),
      settings: (table) => references.settings(table),
      asOf: references.asOf,
      scale: references.scale,
      input: (name) => where(this.#inputPlaces, name),
      part: (id) => {
        const range = this.#ranges.get(id);
        if (range === undefined) return where(this.#places, id);
        const first = absolute({ row: range.firstRow, column: range.firstColumn });
        return `${first}:${absolute({ row: range.lastRow, column: range.lastColumn })}`;
      },
    };
  }
}
