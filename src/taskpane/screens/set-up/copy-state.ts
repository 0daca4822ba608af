import type { CopyPreview } from "../../../herd/copy-over/preview";
import type { PlainBook } from "../../../workbook/plain-book";
import type { FoundList } from "./found-lists";
import type { KnownWord, OpenWord } from "./found-words";
import type { ListEdit } from "./list-edits";

/** An old book as it was opened, and what the user has said of it. */
export interface OldBook {
  readonly name: string;
  readonly book: PlainBook;
  readonly lists: readonly FoundList[];
  /** What stands in the way of reading it, in plain sentences. */
  readonly problems: readonly string[];
  /** What its own Words sheet says. */
  readonly known: readonly KnownWord[];
  /** Its words for lesions that neither book explains. */
  readonly unknown: readonly OpenWord[];
  /** Codes chosen for them, by word. */
  readonly codes: Readonly<Record<string, string>>;
}

export type PreviewState =
  | { readonly kind: "not yet" }
  /** `turn` tells one preview from the next. */
  | { readonly kind: "looking"; readonly turn: number }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "shown"; readonly preview: CopyPreview };

/** Where copying from an old book stands. */
export type CopyState =
  | { readonly kind: "none" }
  | { readonly kind: "opening"; readonly name: string; readonly turn: number }
  | { readonly kind: "failed"; readonly name: string; readonly message: string }
  | { readonly kind: "opened"; readonly old: OldBook; readonly preview: PreviewState; readonly shownReasons: number };

export type CopyEvent =
  | { readonly type: "old book chosen"; readonly name: string; readonly turn: number }
  | { readonly type: "old book read"; readonly turn: number; readonly old: OldBook }
  | { readonly type: "old book refused"; readonly turn: number; readonly message: string }
  | { readonly type: "old book put away" }
  | { readonly type: "old list changed"; readonly edit: ListEdit }
  | { readonly type: "old code chosen"; readonly word: string; readonly code: string }
  | { readonly type: "preview pressed"; readonly turn: number }
  | { readonly type: "preview drawn up"; readonly turn: number; readonly preview: CopyPreview }
  | { readonly type: "preview failed"; readonly turn: number; readonly message: string }
  | { readonly type: "more reasons asked" }
  | { readonly type: "copy pressed"; readonly id: string };

/** So many reasons why rows stay behind are drawn at once; so many more each time they are asked for. */
export const REASONS_AT_ONCE = 40;

export const noCopy: CopyState = { kind: "none" };

/** What was previewed holds no longer: something was written or taken back, here or by someone else. */
export function withoutPreview(copy: CopyState): CopyState {
  return copy.kind === "opened" ? { ...copy, preview: { kind: "not yet" } } : copy;
}
