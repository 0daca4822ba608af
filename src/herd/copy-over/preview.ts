import type { MobilityScale } from "../../core/claws/mobility";
import type { DaySerial } from "../../core/shared/days";
import type { PlainBook } from "../../workbook/plain-book";
import type { NewRow, Save, TableContent } from "../../workbook/table-port";
import { checkTables } from "../check/check-book";
import type { LesionWords } from "../codes/words";
import type { Mapping } from "../mapping/mapping";
import { type MappedTable, readMapped } from "../mapping/read-mapped";
import { resolveMapping } from "../mapping/resolve";
import { type HerdTableName, herdTables } from "../mapping/targets";
import { DoubleRows } from "./double-rows";
import { OldRows } from "./old-rows";

/** A client's old book, how its columns are read, and the day on which it is looked at. */
export interface OldBook {
  readonly book: PlainBook;
  readonly mapping: Mapping;
  readonly words: LesionWords;
  readonly asOf: DaySerial;
}

/** The workbook into which is copied: those of our tables that it has, and its scale of mobility scores. */
export interface CopyTarget {
  readonly tables: readonly TableContent[];
  readonly scale: MobilityScale;
}

/** A row of the old book that does not come over. */
export interface LeftRow {
  readonly table: HerdTableName;
  readonly sheet: string;
  /** The cell that is to blame, or that names the cow: "B7". */
  readonly address: string;
  /** Whether the same row stands in the workbook, or came over, already. */
  readonly double: boolean;
  /** Why it stays behind, in one sentence or more. */
  readonly why: string;
}

/** How many rows of a table come over. rows = over + double + doubtful. */
export interface CopyCount {
  readonly table: HerdTableName;
  /** Rows of the old book that hold anything. */
  readonly rows: number;
  readonly over: number;
  readonly double: number;
  /** Kept out because something about them is doubtful, or because there is no place for them. */
  readonly doubtful: number;
}

export interface CopyPreview {
  /** The tables of which the old book has rows. */
  readonly counts: readonly CopyCount[];
  /** What would be written, under the headings of the tables as they stand. */
  readonly rows: readonly { readonly table: string; readonly rows: readonly NewRow[] }[];
  readonly left: readonly LeftRow[];
  /** Columns of the old book that are read as none of ours, or have no place here: "Butterfat on Milk recording". */
  readonly notRead: readonly string[];
  /** What of the mapping is not there, in plain sentences. */
  readonly problems: readonly string[];
}

/**
 * What copying an old book would bring over, and row by row what not and why. Rows about which the check has a doubt
 * are kept out, as are those that stand in the workbook already. Nothing is written.
 */
export function previewCopy({ book, mapping, words, asOf }: OldBook, target: CopyTarget): CopyPreview {
  const { sources, broken } = resolveMapping(mapping, book);
  const old = sources.map((source) => readMapped(source, words));
  const doubts = checkTables(old, asOf, words).filter(({ level }) => level !== "note");
  const counts: CopyCount[] = [];
  const rows: { table: string; rows: NewRow[] }[] = [];
  const left: LeftRow[] = [];
  const notRead = old.flatMap(columnsNotRead);
  for (const { name } of herdTables) {
    const lists = old.filter(({ resolved }) => resolved.source.table === name);
    if (lists.length === 0) continue;
    const content = target.tables.find((table) => table.name === name);
    const doubles = new DoubleRows(name, lists, content);
    const over: NewRow[] = [];
    const stay: LeftRow[] = [];
    let filled = 0;
    for (const list of lists) {
      const oldRows = new OldRows(list, words, doubts, content, target.scale);
      notRead.push(...oldRows.leftOut().map((heading) => `${heading} on ${list.resolved.source.sheet}`));
      for (let index = 0; index < list.content.rows.length; index++) {
        if (oldRows.isBlank(index)) continue;
        filled++;
        const refused = oldRows.refusal(index);
        const double = refused === undefined ? doubles.seen(oldRows.values(index)) : false;
        const why = refused ?? (double ? { address: list.address("cow", index), why: `It stands in ${name} already.` } : undefined); // oxfmt-ignore
        if (why === undefined) over.push(oldRows.newRow(index));
        else stay.push({ table: name, sheet: list.resolved.source.sheet, double, ...why });
      }
    }
    const double = stay.filter((row) => row.double).length;
    counts.push({ table: name, rows: filled, over: over.length, double, doubtful: stay.length - double });
    if (over.length > 0) rows.push({ table: name, rows: over });
    left.push(...stay);
  }
  return { counts, rows, left, notRead, problems: broken };
}

/** The one save that copies what the preview shows; undefined where nothing comes over. */
export function copySave({ rows }: CopyPreview, id: string, title: string): Save | undefined {
  if (rows.length === 0) return undefined;
  return { id, title, changes: rows.map((table) => ({ append: table.table, rows: table.rows })) };
}

function columnsNotRead({ resolved: { source, block } }: MappedTable): string[] {
  const read = new Set(source.columns.map(({ column }) => column));
  return block.columns
    .filter(({ column, heading }) => !read.has(column) && heading !== "")
    .map(({ heading }) => `${heading} on ${source.sheet}`);
}
