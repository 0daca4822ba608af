import type { PlainCell } from "../../workbook/port";
import type { ColumnInfo, TableContent } from "../../workbook/table-port";
import type { LesionWords } from "../codes/words";
import type { Block } from "../mapping/block";
import type { MappedSource } from "../mapping/mapping";
import { readMapped } from "../mapping/read-mapped";
import type { ResolvedSource } from "../mapping/resolve";
import { mappedColumns, tableNamed } from "../mapping/targets";
import { foldHeading } from "../read-rows";
import { backConverter, type ConvertBack } from "./convert-back";

/** A column of a farm's list as the table of ours shows it. */
export interface ListColumn {
  /** Heading of ours, or the farm's own where the column stands for none of ours. */
  readonly heading: string;
  /** A formula of the farm fills it. */
  readonly calculated: boolean;
  /** Where it stands in the farm's row; undefined for the landmark that is the same for all toes. */
  readonly place: number | undefined;
  back(): ConvertBack;
}

/** A table or plain range of the farm, as it stands in the workbook and in our terms. */
export interface FarmList {
  /** Where it stands now. */
  readonly source: MappedSource;
  /** Name of the farm's table; undefined for a plain range. */
  readonly table: string | undefined;
  /** The farm's columns in its order. */
  readonly farmColumns: readonly ColumnInfo[];
  /** The farm's rows as they stand. */
  readonly farmRows: readonly (readonly PlainCell[])[];
  readonly columns: readonly ListColumn[];
  /** The same rows in our terms, in the order of `columns`. */
  readonly rows: readonly (readonly PlainCell[])[];
  /** Where the list lies on its sheet; only for a plain range. */
  readonly block: Block | undefined;
}

/** A plain range of the farm, as it was resolved. */
export function rangeList(resolved: ResolvedSource, words: LesionWords): FarmList {
  const { block } = resolved;
  const rows: PlainCell[][] = [];
  for (let row = block.firstRow; row <= block.lastRow; row++) {
    rows.push(block.columns.map(({ column }) => block.sheet.rows[row]?.[column] ?? null));
  }
  return listOf(resolved, words, rows, undefined);
}

/** A table of the farm with the rows that the table port reads, under the headings that were resolved. */
export function tableList(source: MappedSource, content: TableContent, words: LesionWords): FarmList {
  const columns = content.columns.map(({ heading, calculated }, column) => ({ heading, calculated, column }));
  const places = new Map(content.columns.map(({ heading }, place) => [heading, place]));
  const rows = [content.columns.map(({ heading }) => heading), ...content.rows];
  const sheet = { name: content.sheet, rows, tables: [], days: [], formulas: [], merges: [] };
  const block: Block = { sheet, table: content.name, headingRow: 0, columns, firstRow: 1, lastRow: content.rows.length, remarks: [] }; // oxfmt-ignore
  const own = source.columns.map((column) => ({ ...column, column: places.get(column.heading) ?? -1 }));
  return listOf({ source: { ...source, columns: own }, block }, words, content.rows, content.name);
}

function listOf(
  resolved: ResolvedSource,
  words: LesionWords,
  farmRows: readonly (readonly PlainCell[])[],
  table: string | undefined,
): FarmList {
  const { source, block } = resolved;
  const mapped = readMapped(resolved, words);
  const definitions = mappedColumns(source.table);
  const placeOf = (column: number): number => block.columns.findIndex((known) => known.column === column);
  const own = mapped.content.columns.map(({ heading, calculated }): ListColumn => {
    const definition = definitions.find((known) => known.heading === heading);
    const column = source.columns.find(({ key }) => key === definition?.key);
    if (definition === undefined || column === undefined)
      return { heading, calculated, place: undefined, back: () => same };
    const place = placeOf(column.column);
    const cells = (): PlainCell[] => farmRows.map((row) => row[place] ?? null);
    return { heading, calculated: block.columns[place]?.calculated === true, place, back: once(() => backConverter(column, definition, words, cells())) }; // oxfmt-ignore
  });
  const taken = new Set(source.columns.map(({ column }) => column));
  const others = otherColumns(block, taken, source);
  return {
    source,
    table,
    farmColumns: block.columns.map(({ heading, calculated }) => ({ heading, calculated })),
    farmRows,
    columns: [...own, ...others],
    rows: mapped.content.rows.map((cells, index) => [...cells, ...others.map(({ place }) => farmRows[index]?.[place!] ?? null)]), // oxfmt-ignore
    block: table === undefined ? block : undefined,
  };
}

/** The farm's columns that stand for none of ours, under their own headings; one that is named like ours is not shown. */
function otherColumns({ columns }: Block, taken: ReadonlySet<number>, { table }: MappedSource): readonly ListColumn[] {
  const seen = new Set(
    [...tableNamed(table).columns, ...mappedColumns(table)].map(({ heading }) => foldHeading(heading)),
  );
  return columns.flatMap(({ heading, column, calculated }, place): ListColumn[] => {
    const folded = foldHeading(heading);
    if (taken.has(column) || folded === "" || seen.has(folded)) return [];
    seen.add(folded);
    return [{ heading, calculated, place, back: () => same }];
  });
}

const same: ConvertBack = (value) => value;

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}
