import type { AppliedEdit, Edit, RowCounts } from "../table-host";
import type { CellBlock } from "../table-port";
import { type Log, logInMemory, withEntry } from "./log";
import type { BegunBlock, WrittenBlock } from "./written-block";

/** What is remembered of a save, so that it is written once and can be taken back. Plain data. */
export type LoggedSave =
  /** Writing has started; whether it ended is not known. */
  | {
      readonly state: "begun";
      readonly id: string;
      readonly title: string;
      readonly edits: readonly Edit[];
      readonly rowCounts: RowCounts;
    }
  | { readonly state: "done"; readonly id: string; readonly title: string; readonly applied: readonly AppliedEdit[] }
  /** A block is being written; whether it stands is not known. */
  | {
      readonly state: "block-begun";
      readonly id: string;
      readonly title: string;
      readonly block: CellBlock;
      /** What writing it changes besides; absent where an earlier version noted it. */
      readonly begun?: BegunBlock;
    }
  | { readonly state: "block"; readonly id: string; readonly title: string; readonly block: WrittenBlock };

/** Where the last saves of a workbook are remembered, oldest first. */
export type SaveLog = Log<LoggedSave>;

/** A log that lasts as long as the page. */
export function memoryLog(): SaveLog {
  return logInMemory();
}

/** A log as some storage gave it back. What is no save is left out: storage may be damaged, or from another version. */
export function keptSaves(kept: unknown): readonly LoggedSave[] {
  return Array.isArray(kept) ? kept.filter(isSave) : [];
}

function isSave(kept: unknown): kept is LoggedSave {
  if (typeof kept !== "object" || kept === null) return false;
  const { id, title, state, edits, rowCounts, applied, block } = kept as Partial<Record<string, unknown>>;
  if (typeof id !== "string" || typeof title !== "string") return false;
  if (state === "done") return isListOf(applied, isApplied);
  if (state === "block" || state === "block-begun") return isListOf([block], isBlock);
  return state === "begun" && isListOf(edits, isEdit) && typeof rowCounts === "object" && rowCounts !== null;
}

function isListOf(list: unknown, isItem: (item: Partial<Record<string, unknown>>) => boolean): boolean {
  return Array.isArray(list) && list.every((item) => typeof item === "object" && item !== null && isItem(item));
}

function isApplied({ kind, rows, before, after, headings, row }: Partial<Record<string, unknown>>): boolean {
  if (kind === "append") return isListOf(rows, isRow);
  if (kind === "remove") return isListOf([row], isRow);
  return kind === "set" && isListOf([before, after], isRow) && Array.isArray(headings);
}

function isEdit({ kind, table, rows, row, cells }: Partial<Record<string, unknown>>): boolean {
  if (kind === "append") return typeof table === "string" && isListOf(rows, () => true);
  return kind === "remove"
    ? isListOf([row], isRow)
    : kind === "set" && isListOf([row], isRow) && isListOf([cells], () => true);
}

function isBlock({ sheet, address, cells }: Partial<Record<string, unknown>>): boolean {
  return typeof sheet === "string" && typeof address === "string" && Array.isArray(cells);
}

function isRow({ table, index, cells }: Partial<Record<string, unknown>>): boolean {
  return typeof table === "string" && typeof index === "number" && typeof cells === "object" && cells !== null;
}

/** The log with one save put in, in place of what it says of the same id. */
export function logged(saves: readonly LoggedSave[], save: LoggedSave): readonly LoggedSave[] {
  return withEntry(saves, save, save.state === "done" || save.state === "block");
}
