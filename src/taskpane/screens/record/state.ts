import type { DaySerial } from "../../../core/shared/days";
import type { Herd } from "../../../herd/herd";
import type { PastSave, Save } from "../../../workbook/table-port";
import type { RulesInForce } from "../../rules";
import type { Care, ClawChoice, Field, Foot, Visit } from "./fields";
import type { Problem } from "./problems";

/** One finding as typed. */
export interface FindingEntry {
  readonly foot: Foot | "";
  readonly claw: ClawChoice | "";
  readonly zone: string;
  /** Code, name or another word of the trade. */
  readonly lesion: string;
  readonly stage: string;
  readonly severity: string;
  readonly note: string;
  readonly care: Partial<Care>;
}

export interface ToeLengths {
  readonly inner: string;
  readonly outer: string;
}

/** All that was typed about one cow, until it is saved. */
export interface Entry {
  /** Under this id it is saved, once. */
  readonly id: string;
  readonly cowText: string;
  /** The cow chosen, by her name in the workbook or as typed; blank until then. */
  readonly cow: string;
  readonly score: string;
  /** Toe lengths by foot, before trimming. */
  readonly toes: Readonly<Partial<Record<Foot, ToeLengths>>>;
  readonly findings: readonly FindingEntry[];
  /** Which finding is open. */
  readonly current: number;
  /** Questions that were answered with yes. */
  readonly agreed: readonly string[];
}

/** What survives a closed pane. Plain data. */
export interface Draft {
  readonly visit: Visit;
  readonly entry: Entry;
  /** What was being written when this was kept: it may stand in the workbook already. */
  readonly begun?: PlannedSave;
  /** An entry from before that was neither gone on with nor thrown away. */
  readonly earlier?: Draft;
}

/** A save, and the rows that it writes in words. */
export interface PlannedSave {
  readonly save: Save;
  readonly written: readonly string[];
}

export type Phase =
  | { readonly kind: "typing" }
  | { readonly kind: "saving"; readonly planned: PlannedSave }
  /** Part of it may be written: nothing may be changed before the same save is handed over again. */
  | { readonly kind: "uncertain"; readonly planned: PlannedSave; readonly message: string };

/** The last save, for the user to see what was written. */
export interface SavedSummary {
  readonly id: string;
  readonly title: string;
  readonly written: readonly string[];
}

export interface RecordState {
  readonly today: DaySerial;
  readonly herd: Herd | undefined;
  readonly rules: RulesInForce;
  /** Why the workbook could not be read. */
  readonly readError: string;
  readonly visit: Visit;
  readonly entry: Entry;
  /** Place in the list of cows or disorders that the arrow keys have reached; -1 for none. */
  readonly highlighted: number;
  /** First letter of a foot that is being typed. */
  readonly footSide: "L" | "R" | "";
  /** Fields that were left once: only then is a fault shown. */
  readonly left: readonly Field[];
  /** Saving was tried: every fault is shown. */
  readonly attempted: boolean;
  readonly phase: Phase;
  /** What stands in the way of the key or button pressed last; gone with the next change. */
  readonly obstacle: Problem | undefined;
  /** Why the last save or taking back was refused. */
  readonly error: string;
  readonly saved: SavedSummary | undefined;
  readonly past: readonly PastSave[];
  readonly takingBack: string;
  /** An entry left from before, to go on with or to throw away. */
  readonly offered: Draft | undefined;
  /** The entry that was cleared last, to be brought back. */
  readonly cleared: Entry | undefined;
  /** Where the keyboard goes next; the count makes the same field a new wish. */
  readonly focus: { readonly field: Field; readonly count: number };
  /** What a screen reader is told. */
  readonly announced: string;
}

export const blankVisit: Visit = { date: "", place: "", trimmer: "", reason: "", landmark: "" };

export const blankFinding: FindingEntry = {
  foot: "",
  claw: "",
  zone: "",
  lesion: "",
  stage: "",
  severity: "",
  note: "",
  care: {},
};

export function blankEntry(id: string): Entry {
  return { id, cowText: "", cow: "", score: "", toes: {}, findings: [blankFinding], current: 0, agreed: [] };
}

export function currentFinding({ findings, current }: Entry): FindingEntry {
  return findings[current] ?? blankFinding;
}

/** Whether anything was typed into a finding. A foot alone counts: it was lifted for something. */
export function isBlankFinding(finding: FindingEntry): boolean {
  const { care, ...texts } = finding;
  return Object.values(texts).every((text) => text.trim() === "") && Object.keys(care).length === 0;
}

export function isBlankEntry({ cowText, score, toes, findings }: Entry): boolean {
  const measured = Object.values(toes).some(({ inner, outer }) => inner !== "" || outer !== "");
  return cowText.trim() === "" && score === "" && !measured && findings.every(isBlankFinding);
}
