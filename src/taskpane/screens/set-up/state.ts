import type { DaySerial } from "../../../core/shared/days";
import type { Doubt } from "../../../herd/check/doubt";
import type { BrokenFormula, FunctionsAnswer } from "../../../workbook/book-port";
import type { PlainBook } from "../../../workbook/plain-book";
import type { TableContent } from "../../../workbook/table-port";
import type { TableErrorKind } from "../../../workbook/table-error";
import type { DoubtGroup } from "./doubts";
import type { FoundList } from "./found-lists";
import { type FoundWords, noWords } from "./found-words";
import { type CopyEvent, type CopyState, noCopy } from "./copy-state";
import type { ListEdit } from "./list-edits";
import type { Task, WrittenBefore } from "./task";

/** The parts of the screen, in the order in which a new user goes through them. */
export const SECTIONS = ["lists", "words", "check", "formulas", "copy", "blocks"] as const;
export type SectionId = (typeof SECTIONS)[number];

/** The workbook as it was last read. */
export interface BookRead {
  /** The reading that gave it. */
  readonly wanted: number;
  readonly book: PlainBook;
  readonly lists: readonly FoundList[];
  /** What stands in the way, in plain sentences. */
  readonly problems: readonly string[];
  /** Rows of the Mapping sheet that are not understood. */
  readonly refused: readonly string[];
  readonly notes: readonly string[];
  readonly broken: readonly string[];
  /** Whether the workbook holds a mapping. */
  readonly hasMapping: boolean;
  /** The Words sheet, where there is one. */
  readonly words: TableContent | undefined;
  /** What can be taken back, the latest first. */
  readonly past: readonly WrittenBefore[];
}

export type Reading =
  | { readonly kind: "reading" }
  | { readonly kind: "failed"; readonly message: string }
  | ({ readonly kind: "read" } & BookRead);

/** What a check of the workbook found. */
export interface Checked {
  readonly groups: readonly DoubtGroup[];
  readonly remarks: readonly string[];
  /** Lists that were checked: "Findings on Feet 2026". */
  readonly tables: readonly string[];
  readonly rows: number;
}

export type CheckState =
  | { readonly kind: "not yet" }
  /** Waits for a reading, then runs on it. */
  | { readonly kind: "checking"; readonly wanted: number; readonly before: Checked | undefined }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "checked"; readonly checked: Checked };

export type FormulasState =
  | { readonly kind: "not yet" }
  | { readonly kind: "looking" }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "looked"; readonly broken: readonly BrokenFormula[]; readonly loaded: FunctionsAnswer };

export interface Notice {
  readonly kind: "done" | "error";
  readonly text: string;
  /** Id of what was just written and can be taken back. */
  readonly back?: string;
}

/** Something on its way into the workbook. */
export interface Work {
  readonly task: Task;
  /** Counts up with each try, so that a second one is a new thing to do. */
  readonly attempt: number;
  /** The workbook broke off: part of it may be written. Trying again under the same id completes it. */
  readonly brokenOff: boolean;
}

export interface SetUpState {
  readonly today: DaySerial;
  readonly open: SectionId | undefined;
  /** Counts the readings asked for; an answer to an earlier one is dropped. */
  readonly wanted: number;
  readonly reading: Reading;
  /** The workbook changed since it was read. */
  readonly stale: boolean;
  /** The lists as the user has changed them; those of `touched` differ from what was found. */
  readonly lists: readonly FoundList[];
  readonly touched: readonly string[];
  readonly words: FoundWords;
  /** Codes chosen for words, by word; "" where the user took a proposal away. */
  readonly chosenCodes: Readonly<Record<string, string>>;
  readonly check: CheckState;
  /** The kind of doubts that is opened, how many of them are shown, and whether all repairs were asked for. */
  readonly openGroup: string | undefined;
  readonly shownDoubts: number;
  readonly askingAll: boolean;
  readonly formulas: FormulasState;
  readonly copy: CopyState;
  readonly work: Work | undefined;
  readonly takingBack: WrittenBefore | undefined;
  readonly notice: Notice | undefined;
}

export type SetUpEvent =
  | { readonly type: "workbook changed" }
  | { readonly type: "reading asked" }
  | { readonly type: "read"; readonly read: BookRead }
  | { readonly type: "read failed"; readonly wanted: number; readonly message: string }
  | { readonly type: "section pressed"; readonly section: SectionId }
  | ListEdit
  | { readonly type: "keep lists pressed"; readonly id: string }
  | { readonly type: "make table pressed"; readonly list: string; readonly id: string }
  | { readonly type: "code chosen"; readonly word: string; readonly code: string }
  | { readonly type: "keep words pressed"; readonly id: string }
  | { readonly type: "check pressed" }
  | { readonly type: "checked"; readonly wanted: number; readonly checked: Checked }
  | { readonly type: "check failed"; readonly wanted: number; readonly message: string }
  | { readonly type: "group pressed"; readonly check: string }
  | { readonly type: "more doubts asked" }
  | { readonly type: "repair pressed"; readonly doubt: Doubt; readonly id: string }
  | { readonly type: "all repairs asked" }
  | { readonly type: "all repairs left" }
  | { readonly type: "all repairs pressed"; readonly id: string }
  | { readonly type: "formulas asked" }
  | { readonly type: "formulas looked at"; readonly broken: readonly BrokenFormula[]; readonly loaded: FunctionsAnswer }
  | { readonly type: "formulas failed"; readonly message: string }
  | { readonly type: "reenter pressed"; readonly id: string }
  | { readonly type: "show refused"; readonly message: string }
  | { readonly type: "written"; readonly id: string; readonly told: string }
  | { readonly type: "write refused"; readonly id: string; readonly kind: TableErrorKind; readonly message: string }
  | { readonly type: "write tried again" }
  | { readonly type: "write given up" }
  | { readonly type: "take back pressed"; readonly id: string }
  | { readonly type: "taken back"; readonly id: string }
  | { readonly type: "take back refused"; readonly id: string; readonly message: string }
  | { readonly type: "notice read" }
  | CopyEvent;

/** So many doubts are drawn at once; so many more each time they are asked for. */
export const DOUBTS_AT_ONCE = 40;

export function initialState(today: DaySerial): SetUpState {
  return {
    today,
    open: "lists",
    wanted: 1,
    reading: { kind: "reading" },
    stale: false,
    lists: [],
    touched: [],
    words: noWords,
    chosenCodes: {},
    check: { kind: "not yet" },
    openGroup: undefined,
    shownDoubts: DOUBTS_AT_ONCE,
    askingAll: false,
    formulas: { kind: "not yet" },
    copy: noCopy,
    work: undefined,
    takingBack: undefined,
    notice: undefined,
  };
}
