import { FIRST_DAY, LAST_DAY } from "../core/shared/days";
import { atOnce, type InSteps, ROWS_A_STEP } from "../core/shared/steps";
import type { PlainCell } from "../workbook/port";
import type { ColumnDefinition, ColumnKind, TableDefinition } from "../workbook/table-definition";
import type { TableContent } from "../workbook/table-port";

type ValueOf<C> = C extends { holds: "cow" | "choice" | "lesion" | "text" } ? string : number;

/** A row as the herd reads it, by key: null where the cell is blank or holds no value of its kind. */
export type HerdRow<T extends TableDefinition> = {
  readonly [C in T["columns"][number] as C["key"]]: ValueOf<C> | null;
};

/** A cell that holds something else than its column should. It is read as null. */
export interface DoubtfulCell {
  /** Row counted from 0 below the headings. */
  readonly index: number;
  readonly heading: string;
  readonly cell: PlainCell;
  /** What the column should hold: "a date", "a whole number from 1 to 20". */
  readonly expected: string;
}

export interface HerdTable<T extends TableDefinition> {
  readonly rows: readonly HerdRow<T>[];
  readonly doubtful: readonly DoubtfulCell[];
  /** Headings of the definition that the table does not have; their values are null. */
  readonly missing: readonly string[];
}

/**
 * A table of the workbook as typed rows, in its own order, blank rows included so that a row keeps its place.
 * Columns are found by heading, whatever their order, case and spacing. Nothing is guessed and nothing is thrown:
 * a cell that does not fit is null and listed.
 */
export function readHerdTable<T extends TableDefinition>(definition: T, content: TableContent): HerdTable<T> {
  return atOnce(readHerdTableInSteps(definition, content));
}

/** The same with pauses. */
export function* readHerdTableInSteps<T extends TableDefinition>(
  definition: T,
  content: TableContent,
): InSteps<HerdTable<T>> {
  const places = new Map(content.columns.map(({ heading }, place) => [foldHeading(heading), place]));
  const columns = definition.columns.map((column) => ({ column, place: places.get(foldHeading(column.heading)) }));
  const doubtful: DoubtfulCell[] = [];
  const rows: HerdRow<T>[] = [];
  for (const [index, cells] of content.rows.entries()) {
    if (index % ROWS_A_STEP === ROWS_A_STEP - 1) yield;
    const row: Record<string, string | number | null> = {};
    for (const { column, place } of columns) {
      const cell = place === undefined ? null : (cells[place] ?? null);
      const value = isBlank(cell) ? null : valueOf(column, cell);
      row[column.key] = value ?? null;
      if (value === undefined) {
        doubtful.push({ index, heading: column.heading, cell, expected: describeColumn(column) });
      }
    }
    rows.push(row as HerdRow<T>);
  }
  const missing = columns.filter(({ place }) => place === undefined).map(({ column }) => column.heading);
  return { rows, doubtful, missing };
}

/** Headings are the same whatever their case, spaces and hyphens. */
export function foldHeading(heading: string): string {
  return heading.toLowerCase().replace(/[\s\u00a0_-]+/g, "");
}

function isBlank(cell: PlainCell): boolean {
  return cell === null || (typeof cell === "string" && cell.trim() === "");
}

/** undefined where the cell holds no value of the column's kind; null where a word that it may hold stands for none. */
function valueOf(
  { holds, choices, limits, words }: ColumnDefinition,
  cell: PlainCell,
): string | number | null | undefined {
  if (typeof cell === "boolean" || cell === null) return undefined;
  if (TEXT_KINDS.has(holds)) {
    const text = String(cell).trim();
    if (holds !== "choice") return text;
    return choices?.find((choice) => foldHeading(choice) === foldHeading(text));
  }
  if (typeof cell === "string" && words?.some((word) => foldHeading(word) === foldHeading(cell)) === true) return null;
  if (typeof cell !== "number" || !Number.isFinite(cell)) return undefined;
  if (holds === "day") return cell >= FIRST_DAY && cell <= LAST_DAY ? Math.floor(cell) : undefined;
  if (holds === "whole number" && !Number.isInteger(cell)) return undefined;
  return limits === undefined || (cell >= limits[0] && cell <= limits[1]) ? cell : undefined;
}

const TEXT_KINDS: ReadonlySet<ColumnKind> = new Set<ColumnKind>(["cow", "choice", "lesion", "text"]);

/** What a column holds, for a message. */
export function describeColumn({ holds, choices, limits, unit, words = [] }: ColumnDefinition): string {
  if (holds === "choice") return (choices ?? []).join(", ").replace(/, ([^,]*)$/, " or $1");
  if (holds === "day") return "a date";
  if (holds === "cow") return "a cow's number or name";
  if (holds === "lesion") return "a lesion code";
  if (holds === "text") return "text";
  const range = limits === undefined ? "" : ` from ${limits[0]} to ${limits[1]}`;
  const figure = `a ${holds}${range}${unit === undefined ? "" : ` ${unit}`}`;
  return [figure, ...words].join(", or ");
}
