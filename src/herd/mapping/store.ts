import { cellPosition } from "../../workbook/cell-address";
import { mappingTable } from "../../workbook/mapping-table";
import type { RowOf } from "../../workbook/table-definition";
import type { TableContent } from "../../workbook/table-port";
import { LANDMARKS } from "../../workbook/tables";
import { foldHeading, readHerdTable } from "../read-rows";
import { DAY_ORDERS, type MappedColumn, type MappedSource, type Mapping, type Unit, unitsOf } from "./mapping";
import { columnLetters } from "../../workbook/plain-book";
import { type HerdTableName, herdTables, isHerdTable, mappedColumns } from "./targets";

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

/** A mapping as read from the workbook, and the rows that could not be used. */
export interface StoredMapping {
  readonly mapping: Mapping;
  /** Plain sentences that name the row. */
  readonly problems: readonly string[];
}

/** Reads the Mapping table. Rows that are not understood are left out and named. */
export function readMapping(content: TableContent): StoredMapping {
  const sources = new Map<string, { source: MappedSource; columns: MappedColumn[] }>();
  const problems: string[] = [];
  readHerdTable(mappingTable, content).rows.forEach((row, index) => {
    const { table, value, sheet, heading, column, unit } = row;
    if (table === null && value === null && sheet === null) return;
    const refuse = (what: string): void => void problems.push(`Mapping, row ${index + 1}: ${what}`);
    const name = herdTables.find((known) => foldHeading(known.name) === foldHeading(table ?? ""))?.name;
    if (name === undefined || !isHerdTable(name)) return refuse(`Table must be ${herdTables.map((known) => known.name).join(", ")}; got "${table ?? ""}"`); // prettier-ignore
    const ours = mappedColumns(name).find((known) => foldHeading(known.heading) === foldHeading(value ?? ""));
    if (ours === undefined) return refuse(`Value must be a heading of ${name}; got "${value ?? ""}"`);
    if (sheet === null) return refuse("Sheet is blank");
    const place = column === null ? undefined : columnOfLetters(column);
    const entry = sourceOf(sources, { table: name, sheet, source: row.source ?? undefined, headingRow: (row.headingRow ?? 1) - 1 }); // prettier-ignore
    if (ours.key === MEASURED_FROM && heading === null && place === undefined) {
      const landmark = LANDMARKS.find((known) => known === unit);
      if (landmark === undefined) return refuse(`Unit must be ${LANDMARKS.join(" or ")} where all toes are measured from one place; got "${unit ?? ""}"`); // prettier-ignore
      entry.source = { ...entry.source, landmark };
      return;
    }
    if (heading === null && place === undefined) return refuse("Heading and Column are blank");
    const known = unit === null ? undefined : knownUnit(ours.key, ours.holds === "day", unit);
    if (unit !== null && known === undefined) return refuse(`Unit must be ${allowedUnits(ours.key, ours.holds === "day").join(", ") || "blank"}; got "${unit}"`); // prettier-ignore
    if (entry.columns.some(({ key }) => key === ours.key)) return refuse(`${name} has ${ours.heading} in an earlier row`); // prettier-ignore
    entry.columns.push({ key: ours.key, heading: heading ?? "", column: place ?? NOWHERE, ...(known === undefined ? {} : { unit: known }) }); // prettier-ignore
  });
  return {
    mapping: { sources: [...sources.values()].map(({ source, columns }) => ({ ...source, columns })) },
    problems,
  };
}

/** The place of a column whose letter was taken out: it can be found by its heading only. */
const NOWHERE = -1;

function sourceOf(
  sources: Map<string, { source: MappedSource; columns: MappedColumn[] }>,
  place: Omit<MappedSource, "columns">,
): { source: MappedSource; columns: MappedColumn[] } {
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
