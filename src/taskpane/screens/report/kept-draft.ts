import { initialReportState, type ReportState } from "./state";

/** What the user wrote into the report, as it is kept between two openings of the pane. */
export interface ReportDraft {
  readonly heading: string;
  readonly notes: string;
  /** The day on which it was written, 2026-09-01. */
  readonly writtenOn: string;
}

/** The draft that a pane keeps which is open on a day. */
export function draftOf({ heading, notes, notesOf }: ReportState, today: string): ReportDraft {
  return { heading, notes, writtenOn: notesOf ?? today };
}

/** The screen as it opens on a day, with what was kept; what is no draft is left out. */
export function startWith(kept: unknown, today: string): ReportState {
  const { heading, notes, writtenOn } = textsIn(kept);
  const isOld = notes.trim() !== "" && writtenOn !== "" && writtenOn !== today;
  return { ...initialReportState, heading, notes, notesOf: isOld ? writtenOn : undefined };
}

function textsIn(kept: unknown): ReportDraft {
  const known: Partial<Record<string, unknown>> = typeof kept === "object" && kept !== null ? { ...kept } : {};
  const text = (key: keyof ReportDraft): string => (typeof known[key] === "string" ? known[key] : "");
  return { heading: text("heading"), notes: text("notes"), writtenOn: text("writtenOn") };
}
