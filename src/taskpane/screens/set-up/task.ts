import type { WordRow } from "../../../herd/codes/words";
import type { CopyPreview } from "../../../herd/copy-over/preview";
import type { Mapping } from "../../../herd/mapping/mapping";
import type { CellChanges, RangeToTable } from "../../../workbook/book-port";
import type { CellPlace } from "../../../workbook/port";

/** Something to be written into the workbook, as data. The same id is written once, however often it is tried. */
export type Task =
  | { readonly kind: "mapping"; readonly id: string; readonly title: string; readonly mapping: Mapping }
  | { readonly kind: "words"; readonly id: string; readonly title: string; readonly words: readonly WordRow[] }
  | { readonly kind: "copy"; readonly id: string; readonly title: string; readonly preview: CopyPreview }
  | ({ readonly kind: "cells" } & CellChanges)
  | ({ readonly kind: "table" } & RangeToTable)
  | { readonly kind: "formulas"; readonly id: string; readonly cells: readonly CellPlace[] };

/** Something that was written and can be taken back. */
export interface WrittenBefore {
  readonly id: string;
  readonly title: string;
  /** Which port takes it back. */
  readonly through: "tables" | "book";
}

/** Ids of this screen's saves begin so, to tell them from those of other screens. */
const ID_PREFIX = "set-up ";

/** An id that comes after those given out before: what went through two ports is put in order by it. */
export function newTaskId(at: Date, random: string): string {
  return `${ID_PREFIX}${at.toISOString()} ${random}`;
}

/** What this screen wrote, the latest first. */
export function ownWrites(writes: readonly WrittenBefore[]): readonly WrittenBefore[] {
  const own = writes.filter(({ id }) => id.startsWith(ID_PREFIX));
  return own.sort((a, b) => (a.id < b.id ? 1 : a.id > b.id ? -1 : 0));
}
