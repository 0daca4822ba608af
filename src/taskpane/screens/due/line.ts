import type { AftercareKind } from "../../../core/claws/aftercare";
import type { DaySerial } from "../../../core/shared/days";

/** What kind of work a line asks for. */
export type Work = AftercareKind | "lame" | "trim" | "score";

/** The kinds of work in the order in which the list shows them, as its headings call them. */
export const WORK_NAMES: Readonly<Record<Work, string>> = {
  lame: "Lame, not treated yet",
  recheck: "Feet to see again",
  block: "Blocks",
  bandage: "Bandages",
  topical: "Topical treatment to repeat",
  "pain relief": "Pain relief",
  trim: "Routine trims",
  score: "Mobility scoring",
};
export const WORKS = Object.keys(WORK_NAMES) as readonly Work[];

/** One thing to be done by a day. */
export interface DueLine {
  /** Stays the same as long as the rows behind the line do. */
  readonly key: string;
  readonly work: Work;
  readonly what: string;
  readonly due: DaySerial;
  /** The block comes off. */
  readonly ends?: boolean;
  /** "" where the line is for the whole herd. */
  readonly cow: string;
  /** Where she stands: her group; "" where it is not known. */
  readonly place: string;
  /** The foot and claw, lesion and treatment of the finding behind the line. */
  readonly finding?: LineFinding;
  /** More to know about the cow. */
  readonly remarks: readonly string[];
}

/** A line with a finding behind it, for which an outcome can be written. */
export type FindingLine = DueLine & { readonly finding: LineFinding };

export interface LineFinding {
  /** The same for all lines of one finding. */
  readonly key: string;
  /** Row of the table, counted from 0. */
  readonly index: number;
  readonly foot: string;
  readonly claw: string;
  /** Code of the claw disorder key; "" where no lesion is written. */
  readonly lesion: string;
  readonly lesionName: string;
  readonly treatment: string;
  readonly treatedOn: DaySerial;
  readonly note: string;
}
