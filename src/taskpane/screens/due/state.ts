import type { DaySerial } from "../../../core/shared/days";
import type { TableErrorKind } from "../../../workbook/table-error";
import type { Outcome } from "../../../core/claws/next-look";
import { DAYS_AHEAD } from "../../days-ahead";
import type { DueBook } from "./book";
import { type Filter, type GroupBy, noFilter } from "./grouping";
import type { DueLine } from "./line";
import type { Listing } from "./listing";
import type { Caution } from "./outcome-caution";
import type { OutcomeSave } from "./outcomes";

/** Where reading the workbook stands. */
export type Reading =
  | { readonly kind: "reading" }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "read"; readonly book: DueBook; readonly listing: Listing };

/** An outcome on its way into the workbook. */
export interface PendingSave extends OutcomeSave {
  readonly line: DueLine;
  readonly lines: readonly DueLine[];
  /** Counts up with each try, so that a second one is a new thing to do. */
  readonly attempt: number;
  /** The workbook broke off: part of it may be written. Trying again under the same id completes it. */
  readonly brokenOff: boolean;
}

/** An outcome that was written and can be taken back. Its lines stay in their place in the list of the day. */
export interface HandledSave {
  readonly id: string;
  readonly told: string;
  readonly caution: Caution | undefined;
  readonly lines: readonly DueLine[];
}

export interface Notice {
  readonly kind: "done" | "error" | "caution";
  readonly text: string;
}

export interface DueState {
  /** The day it is, as told from outside. */
  readonly today: DaySerial;
  /** The day for which the list is drawn up. */
  readonly day: DaySerial;
  readonly daysAhead: number;
  /** The day that an outcome is written with. */
  readonly seenOn: DaySerial;
  /** Counts the readings asked for; an answer to an earlier one is dropped. */
  readonly wanted: number;
  readonly reading: Reading;
  readonly filter: Filter;
  readonly groupBy: GroupBy;
  /** Lines shown at most in each part of the list. */
  readonly most: number;
  /** The line that is opened. */
  readonly open: string | undefined;
  /** Day of the next look as typed for the open line; undefined: by the rules. */
  readonly nextLookOn: DaySerial | undefined;
  readonly pending: PendingSave | undefined;
  readonly handled: readonly HandledSave[];
  /** Id of the save that is being taken back. */
  readonly takingBack: string | undefined;
  /** The list is being written into the workbook; which name is tried. */
  readonly writing: { readonly attempt: number } | undefined;
  readonly printing: boolean;
  readonly notice: Notice | undefined;
}

export type DueEvent =
  | { readonly type: "workbook changed" }
  | { readonly type: "read"; readonly wanted: number; readonly book: DueBook }
  | { readonly type: "read failed"; readonly wanted: number; readonly message: string }
  | { readonly type: "day chosen"; readonly day: DaySerial }
  | { readonly type: "days ahead chosen"; readonly daysAhead: number }
  | { readonly type: "look day chosen"; readonly seenOn: DaySerial }
  | { readonly type: "filtered"; readonly filter: Partial<Filter> }
  | { readonly type: "grouped"; readonly groupBy: GroupBy }
  | { readonly type: "more asked" }
  | { readonly type: "line pressed"; readonly key: string }
  | { readonly type: "next look chosen"; readonly day: DaySerial | undefined }
  | { readonly type: "outcome chosen"; readonly key: string; readonly outcome: Outcome; readonly id: string }
  | { readonly type: "saved"; readonly id: string }
  | { readonly type: "save refused"; readonly id: string; readonly kind: TableErrorKind; readonly message: string }
  | { readonly type: "save tried again" }
  | { readonly type: "save given up" }
  | { readonly type: "take back pressed"; readonly id: string }
  | { readonly type: "taken back"; readonly id: string }
  | { readonly type: "take back refused"; readonly id: string; readonly message: string }
  | { readonly type: "write pressed" }
  | { readonly type: "list written"; readonly sheet: string }
  | { readonly type: "list refused"; readonly kind: TableErrorKind; readonly message: string }
  | { readonly type: "notice read" }
  | { readonly type: "print pressed" }
  | { readonly type: "printed" };

/** A screen of lines is drawn at once; so many more each time they are asked for. */
export const LINES_AT_ONCE = 60;

export function initialState(today: DaySerial): DueState {
  return {
    today,
    day: today,
    daysAhead: DAYS_AHEAD,
    seenOn: today,
    wanted: 1,
    reading: { kind: "reading" },
    filter: noFilter,
    groupBy: "work",
    most: LINES_AT_ONCE,
    open: undefined,
    nextLookOn: undefined,
    pending: undefined,
    handled: [],
    takingBack: undefined,
    writing: undefined,
    printing: false,
    notice: undefined,
  };
}
