import { cellAddress } from "../../workbook/cell-address";
import type { PlainCell } from "../../workbook/port";
import type { ColumnDefinition, TableDefinition } from "../../workbook/table-definition";
import type { TableContent } from "../../workbook/table-port";
import type { LesionWords } from "../codes/words";
import { foldHeading } from "../read-rows";
import { scoresTableOn } from "../scores-table";
import { cellAt } from "../../workbook/plain-book";
import { converter } from "./convert";
import type { MappedColumn } from "./mapping";
import type { ResolvedSource } from "./resolve";
import { mappedColumns, tableNamed } from "./targets";

/** A farm's list in our terms. */
export interface MappedTable {
  /** Our table; its limits are those of the farm's scale of mobility scores. */
  readonly definition: TableDefinition;
  /** Rows under our headings, in our units and codes: `readHerdTable(definition, content)` types them. */
  readonly content: TableContent;
  readonly resolved: ResolvedSource;
  /** The farm's column for a key of ours. */
  column(key: string): MappedColumn | undefined;
  /** The farm's cell, as it stands, for a key of ours and a row counted from 0. */
  cell(key: string, index: number): PlainCell;
  /** The rows in which that cell holds a text, and those in which it is blank. */
  texts(key: string): readonly number[];
  blanks(key: string): readonly number[];
  /** Address of that cell: "D5". */
  address(key: string, index: number): string;
}

/**
 * A farm's list as a table of ours: the same rows in the same order, its words, units and dates in our terms. What is
 * not understood stays as the farm wrote it. One of our own tables stays as it is.
 */
export function readMapped(resolved: ResolvedSource, words: LesionWords, own = false): MappedTable {
  const { source, block } = resolved;
  const definition = scaledDefinition(tableNamed(source.table), source.columns);
  const ours = mappedColumns(source.table);
  const byKey = new Map(source.columns.map((column) => [column.key, column]));
  const columns = ours.filter(({ key }) => byKey.has(key));
  const places = columns.map(({ key }) => byKey.get(key)!.column);
  const converts = columns.map((column) => (own ? keep : converter(byKey.get(column.key)!, column, words)));
  const computed = calculatedColumns(resolved, definition);
  const toe = columns.findIndex(({ key }) => key === "toeMm");
  const landmark = byKey.has("measuredFrom") ? undefined : source.landmark;
  const rows: PlainCell[][] = [];
  const [texts, blanks] = [places.map((): number[] => []), places.map((): number[] => [])];
  for (let row = block.firstRow; row <= block.lastRow; row++) {
    const cells = places.map((place, index) => {
      const cell = cellAt(block.sheet, row, place);
      if (typeof cell === "string") texts[index]!.push(row - block.firstRow);
      else if (cell === null) blanks[index]!.push(row - block.firstRow);
      return converts[index]!(cell);
    });
    for (const { place } of computed) cells.push(cellAt(block.sheet, row, place));
    if (landmark !== undefined) cells.push(toe >= 0 && cells[toe] !== null ? landmark : null);
    rows.push(cells);
  }
  const headings = [
    ...columns.map(({ heading }) => ({ heading, calculated: false })),
    ...computed.map(({ heading }) => ({ heading, calculated: true })),
    ...(landmark === undefined ? [] : [{ heading: headingOf(ours, "measuredFrom"), calculated: false }]),
  ];
  const { table, sheet } = source;
  const placeOf = (key: string): number => columns.findIndex((column) => column.key === key);
  return {
    definition,
    content: { name: table, sheet, columns: headings, rowCount: rows.length, rows },
    resolved,
    column: (key) => byKey.get(key),
    texts: (key) => texts[placeOf(key)] ?? [],
    blanks: (key) => blanks[placeOf(key)] ?? [],
    cell: (key, index) => cellAt(block.sheet, block.firstRow + index, byKey.get(key)?.column ?? -1),
    address: (key, index) => cellAddress({ row: block.firstRow + index, column: byKey.get(key)?.column ?? block.columns[0]?.column ?? 0 }), // oxfmt-ignore
  };
}

const keep = (cell: PlainCell): PlainCell => cell;

/** Our calculated columns, where the list is one of our own tables and has them. */
function calculatedColumns(
  { block }: ResolvedSource,
  definition: TableDefinition,
): readonly { readonly heading: string; readonly place: number }[] {
  const calculated = definition.columns.filter(({ formula }) => formula !== undefined);
  return calculated.flatMap(({ heading }) => {
    const column = block.columns.find((one) => one.calculated && foldHeading(one.heading) === foldHeading(heading));
    return column === undefined ? [] : [{ heading, place: column.column }];
  });
}

function headingOf(columns: readonly ColumnDefinition[], key: string): string {
  return columns.find((column) => column.key === key)!.heading;
}

/** Scores 1-5 stay scores 1-5: the two scales are never converted into each other. */
function scaledDefinition(definition: TableDefinition, columns: readonly MappedColumn[]): TableDefinition {
  if (!columns.some(({ key, unit }) => key === "score" && unit === "1-5")) return definition;
  return scoresTableOn("1-5");
}
