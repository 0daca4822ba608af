import { cellAddress, cellPosition, type CellPosition } from "../../workbook/cell-address";
import { mappingTable } from "../../workbook/mapping-table";
import type { RowOf } from "../../workbook/table-definition";
import type { TableContent } from "../../workbook/table-port";
import { LANDMARKS } from "../../workbook/tables";
import { foldHeading, type HerdRow, readHerdTable } from "../read-rows";
import { DAY_ORDERS, type MappedColumn, type MappedSource, type Mapping, type Unit, unitsOf } from "./mapping";
import { columnLetters } from "../../workbook/plain-book";
import { type HerdTableName, herdTables, mappedColumns } from "./targets";

export type MappingRow = RowOf<typeof mappingTable>;

const MEASURED_FROM = "measuredFrom";

/** The rows of the Mapping table for a mapping; `because` is noted beside a column that carries it. */
export function mappingRows({ sources }: Mapping): readonly MappingRow[] {
  return sources.flatMap((source) => {
    const { table, sheet, headingRow, landmark } = source;
    const place = { table, sheet, source: source.source ?? null, headingRow: headingRow + 1 };
    const rows = source.columns.map((column): MappingRow => {
      const because = (column as { readonly because?: unknown }).because;
      return {
        ...place,
        value: headingOf(table, column.key),
        heading: column.heading === "" ? null : column.heading,
        column: columnLetters(column.column),
        unit: column.unit ?? null,
        note: typeof because === "string" ? because : null,
      };
    });
    if (landmark === undefined) return rows;
    const answer = { ...place, value: headingOf(table, MEASURED_FROM), heading: null, column: null, unit: landmark };
    return [...rows, { ...answer, note: "the same for all toes" }];
  });
}

function headingOf(table: HerdTableName, key: string): string {
  return mappedColumns(table).find((column) => column.key === key)?.heading ?? key;
}

/** A row of the Mapping table that cannot be used. */
export interface MappingProblem {
  /** The tables of ours that cannot be read as long as the row stands so; none where it concerns no list. */
  readonly tables: readonly HerdTableName[];
  /** A plain sentence that names the cell. */
  readonly text: string;
}

/** A mapping as read from the workbook, and the rows that could not be used. */
export interface StoredMapping {
  readonly mapping: Mapping;
  readonly problems: readonly MappingProblem[];
}

/** A table that Evenfoot made begins here. */
const FIRST_CELL: CellPosition = { row: 0, column: 0 };

/**
 * Reads the Mapping table. Rows that are not understood are left out and named by their cell; `at` is the cell of the
 * table's first heading. A row with a known table concerns that table, another one the lists of its sheet and source.
 */
export function readMapping(content: TableContent, at: CellPosition = FIRST_CELL): StoredMapping {
  const sources = new Map<string, MutableSource>();
  const refused: { readonly row: MappingCells; readonly table: HerdTableName | undefined; readonly text: string }[] =
    [];
  readHerdTable(mappingTable, content).rows.forEach((row, index) => {
    if (row.table === null && row.value === null && row.sheet === null) return;
    const table = herdTables.find((known) => foldHeading(known.name) === foldHeading(row.table ?? ""))?.name;
    const refusal = table === undefined ? unknownTable(row) : readRow(row, table, sources);
    if (refusal === undefined) return;
    const cell = cellAddress({ row: at.row + 1 + index, column: at.column + placeOfKey(content, refusal.key) });
    refused.push({ row, table, text: `${content.sheet}, ${cell}: ${refusal.why}.` });
  });
  const read = [...sources.values()].map(({ source, columns }): MappedSource => ({ ...source, columns }));
  return {
    mapping: { sources: read },
    problems: refused.map(({ row, table, text }) => ({ text, tables: table === undefined ? tablesOn(row, read) : [table] })), // oxfmt-ignore
  };
}

type MappingCells = HerdRow<typeof mappingTable>;

interface MutableSource {
  source: MappedSource;
  readonly columns: MappedColumn[];
}

/** Why a row cannot be used, and the key of the cell that is to blame. */
interface RowRefusal {
  readonly key: keyof MappingCells;
  readonly why: string;
}

function unknownTable({ table }: MappingCells): RowRefusal {
  return { key: "table", why: `Table must be ${herdTables.map(({ name }) => name).join(", ")}; got "${table ?? ""}"` };
}

/** Adds what a row says to the sources; or tells why it cannot. */
function readRow(row: MappingCells, table: HerdTableName, sources: Map<string, MutableSource>): RowRefusal | undefined {
  const { value, sheet, heading, column, unit } = row;
  const ours = mappedColumns(table).find((known) => foldHeading(known.heading) === foldHeading(value ?? ""));
  if (ours === undefined) return { key: "value", why: `Value must be a heading of ${table}; got "${value ?? ""}"` };
  if (sheet === null) return { key: "sheet", why: "Sheet is blank" };
  const place = column === null ? undefined : columnOfLetters(column);
  const entry = sourceOf(sources, { table, sheet, source: row.source ?? undefined, headingRow: (row.headingRow ?? 1) - 1 }); // oxfmt-ignore
  if (ours.key === MEASURED_FROM && heading === null && place === undefined) {
    const landmark = LANDMARKS.find((known) => known === unit);
    if (landmark === undefined) return { key: "unit", why: `Unit must be ${LANDMARKS.join(" or ")} where all toes are measured from one place; got "${unit ?? ""}"` }; // oxfmt-ignore
    entry.source = { ...entry.source, landmark };
    return undefined;
  }
  if (heading === null && place === undefined) return { key: "heading", why: "Heading and Column are blank" };
  const known = unit === null ? undefined : knownUnit(ours.key, ours.holds === "day", unit);
  if (unit !== null && known === undefined) return { key: "unit", why: `Unit must be ${allowedUnits(ours.key, ours.holds === "day").join(", ") || "blank"}; got "${unit}"` }; // oxfmt-ignore
  if (entry.columns.some(({ key }) => key === ours.key)) return { key: "value", why: `${table} has ${ours.heading} in an earlier row` }; // oxfmt-ignore
  entry.columns.push({ key: ours.key, heading: heading ?? "", column: place ?? NOWHERE, ...(known === undefined ? {} : { unit: known }) }); // oxfmt-ignore
  return undefined;
}

/** The column of the Mapping table that holds a key; its first one where it has none. */
function placeOfKey({ columns }: TableContent, key: keyof MappingCells): number {
  const { heading } = mappingTable.columns.find((column) => column.key === key)!;
  return Math.max(0, columns.findIndex((column) => foldHeading(column.heading) === foldHeading(heading))); // oxfmt-ignore
}

/** The tables that are read from the list which a row names. */
function tablesOn({ sheet, source }: MappingCells, sources: readonly MappedSource[]): readonly HerdTableName[] {
  const same = (one: string | null | undefined, other: string | null): boolean => (one ?? "").toLowerCase() === (other ?? "").toLowerCase(); // oxfmt-ignore
  const here = sources.filter((known) => same(known.sheet, sheet) && same(known.source, source));
  return [...new Set(here.map(({ table }) => table))];
}

/** The place of a column whose letter was taken out: it can be found by its heading only. */
const NOWHERE = -1;

function sourceOf(sources: Map<string, MutableSource>, place: Omit<MappedSource, "columns">): MutableSource {
  const key = [place.table, place.sheet, place.source ?? ""].join("\n").toLowerCase();
  const known = sources.get(key);
  if (known !== undefined) return known;
  const entry = { source: { ...place, columns: [] }, columns: [] };
  sources.set(key, entry);
  return entry;
}

function columnOfLetters(letters: string): number | undefined {
  return /^[A-Za-z]{1,3}$/.test(letters) ? cellPosition(`${letters.toUpperCase()}1`).column : undefined;
}

function allowedUnits(key: string, isDay: boolean): readonly Unit[] {
  return isDay ? DAY_ORDERS : (unitsOf[key] ?? []);
}

function knownUnit(key: string, isDay: boolean, text: string): Unit | undefined {
  return allowedUnits(key, isDay).find((unit) => unit.toLowerCase() === text.trim().toLowerCase());
}
