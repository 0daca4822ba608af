import type { FunctionSpec, ResultColumn } from "../functions/define";
import { cellAddress, parseCell } from "../xlsx/address";
import type { CellStyle } from "../xlsx/model";
import type {
  NewCell,
  NewChart,
  NewContent,
  NewHighlight,
  NewPrint,
  NewSheet,
  NewTable,
  NewValidation,
} from "../xlsx/write-model";
import { STYLES, withFormat } from "./look";

/** A sheet that is being laid out. Every method writes at the address it is given. */
export class Page {
  private readonly cells = new Map<string, NewCell>();
  private readonly merges: string[] = [];
  private readonly tables: NewTable[] = [];
  private readonly validations: NewValidation[] = [];
  private readonly highlights: NewHighlight[] = [];
  private readonly charts: NewChart[] = [];
  private readonly heights: Record<number, number> = {};

  constructor(
    private readonly name: string,
    title: string,
    note: string,
  ) {
    this.put("A1", title, STYLES.title);
    this.put("A2", note, STYLES.note);
    this.height(1, TITLE_HEIGHT);
  }

  /** The later of two writes counts; one that holds nothing only gives the cell another style. */
  put(at: string, holds: NewContent, style?: CellStyle): this {
    const content = holds ?? this.cells.get(at)?.holds ?? null;
    this.cells.set(at, style === undefined ? { at, holds: content } : { at, holds: content, style });
    return this;
  }

  section(at: string, text: string, columns: number): this {
    this.put(at, text, STYLES.section);
    for (let column = 1; column < columns; column++) this.put(right(at, column), null, STYLES.section);
    return this;
  }

  /** Text that runs over several columns and is wrapped. */
  paragraph(at: string, columns: number, lines: number, holds: string, style: CellStyle = STYLES.text): this {
    const { row } = parseCell(at)!;
    this.put(at, holds, style);
    this.merges.push(`${at}:${right(at, columns - 1)}`);
    return this.height(row + 1, lines * LINE_HEIGHT);
  }

  /** A label and, beside it, a cell to be changed. */
  input(at: string, label: string, holds: NewContent, numberFormat?: string): this {
    return this.put(at, label, STYLES.label).put(right(at, 1), holds, withFormat(STYLES.input, numberFormat));
  }

  /** A label and, beside it, a figure that a formula computes. */
  figure(at: string, label: string, formula: string, numberFormat?: string): this {
    return this.put(at, label, STYLES.label).formula(right(at, 1), formula, withFormat(STYLES.figure, numberFormat));
  }

  formula(at: string, formula: string, style?: CellStyle): this {
    return this.put(at, { formula }, style);
  }

  /** A formula whose result fills cells; `columns` are the styles of the columns it may fill, `rows` how many rows. */
  fill(at: string, formula: string, columns: readonly CellStyle[], rows: number, firstRow?: CellStyle): this {
    this.put(at, { formula, fills: true }, firstRow ?? columns[0]);
    for (let row = 0; row < rows; row++) {
      columns.forEach((style, column) => {
        if (row + column > 0) this.put(below(right(at, column), row), null, row === 0 ? (firstRow ?? style) : style);
      });
    }
    return this;
  }

  /** A call of a function that spills a table with its own headings, laid out with the formats of its columns. */
  table(at: string, formula: string, spec: FunctionSpec, rows: number): this {
    const columns = resultColumns(spec);
    const styles = columns.map(({ type, format }) => ({
      ...withFormat(STYLES.computed, format),
      ...(type === "number" ? ALIGNED.number : ALIGNED.text),
    }));
    this.fill(at, formula, styles, rows, STYLES.computedHeading);
    columns.forEach(({ type }, column) => {
      const style = {
        ...STYLES.computedHeading,
        ...(type === "number" ? ALIGNED.number : ALIGNED.text),
        vertical: "middle",
      };
      this.put(right(at, column), null, style);
    });
    return this;
  }

  headings(at: string, texts: readonly string[], style: CellStyle = STYLES.computedHeading): this {
    texts.forEach((text, column) => this.put(right(at, column), text, style));
    return this;
  }

  height(row: number, points: number): this {
    this.heights[row] = points;
    return this;
  }

  addTable(table: NewTable): this {
    this.tables.push(table);
    return this;
  }

  validate(validation: NewValidation): this {
    this.validations.push(validation);
    return this;
  }

  highlight(highlight: NewHighlight): this {
    this.highlights.push(highlight);
    return this;
  }

  chart(chart: NewChart): this {
    this.charts.push(chart);
    return this;
  }

  sheet(layout: {
    readonly tabColour: string;
    readonly widths: readonly number[];
    readonly frozenRows?: number;
    readonly frozenColumns?: number;
    readonly print: Omit<NewPrint, "footer">;
  }): NewSheet {
    const { tabColour, widths, frozenRows = 0, frozenColumns = 0, print } = layout;
    return {
      name: this.name,
      tabColour,
      widths,
      heights: this.heights,
      showGridLines: this.tables.length > 0,
      ...(frozenRows + frozenColumns > 0 ? { frozen: { rows: frozenRows, columns: frozenColumns } } : {}),
      cells: [...this.cells.values()],
      merges: this.merges,
      tables: this.tables,
      validations: this.validations,
      highlights: this.highlights,
      charts: this.charts,
      print: { ...print, footer: FOOTER },
    };
  }
}

/** Numbers stand at the right with a little room, so that they do not run into the text beside them. */
export const ALIGNED = {
  number: { horizontal: "right", indent: 1, vertical: "top" },
  text: { horizontal: "left", indent: 1, vertical: "top" },
} as const satisfies Record<string, CellStyle>;

export function resultColumns({ id, result }: FunctionSpec): readonly ResultColumn[] {
  if (result.shape !== "table") throw new Error(`${id} does not spill a table`);
  return result.columns;
}

export const FARM = "No-Such-Place Farm";
const FOOTER = `&L${FARM}: invented data&C&A&RPage &P of &N`;
const TITLE_HEIGHT = 28;
/** Points of a line of text. */
const LINE_HEIGHT = 15.5;

/** The address so many columns further right. */
export function right(at: string, columns: number): string {
  const { row, column } = parseCell(at)!;
  return cellAddress(row, column + columns);
}

/** The address so many rows further down. */
export function below(at: string, rows: number): string {
  const { row, column } = parseCell(at)!;
  return cellAddress(row + rows, column);
}
