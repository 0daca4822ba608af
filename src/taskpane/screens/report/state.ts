import { namedThings, type Report } from "./report";
import { THINGS_NAMED } from "./things";
import type { WrittenReport } from "./written";

export interface Notice {
  readonly kind: "done" | "error";
  readonly text: string;
}

/** What the user does with the report, beside its days. */
export interface ReportState {
  /** Whom or what the report is for, in the user's words. */
  readonly heading: string;
  readonly notes: string;
  /** The earlier day from which the notes were kept; undefined where they are of today. */
  readonly notesOf: string | undefined;
  /** Ids of the things to look at; undefined: the first ones. */
  readonly chosen: readonly string[] | undefined;
  readonly printing: boolean;
  /** The report is being written into the workbook; which name is tried. */
  readonly writing: { readonly attempt: number } | undefined;
  /** The report that is being taken out of the workbook. */
  readonly takingBack: WrittenReport | undefined;
  readonly notice: Notice | undefined;
}

export type ReportEvent =
  | { readonly type: "heading typed"; readonly text: string }
  | { readonly type: "notes typed"; readonly text: string }
  | { readonly type: "thing pressed"; readonly id: string; readonly report: Report }
  | { readonly type: "print pressed" }
  | { readonly type: "printed" }
  | { readonly type: "write pressed" }
  | { readonly type: "name taken" }
  | { readonly type: "written"; readonly sheet: string }
  | { readonly type: "take back pressed"; readonly written: WrittenReport }
  | { readonly type: "taken back" }
  | { readonly type: "write refused"; readonly message: string }
  | { readonly type: "notice read" };

export const initialReportState: ReportState = {
  heading: "",
  notes: "",
  notesOf: undefined,
  chosen: undefined,
  printing: false,
  writing: undefined,
  takingBack: undefined,
  notice: undefined,
};

/** Sheets of one day that a workbook may already have. */
const MOST_ATTEMPTS = 50;

export function nextReportState(state: ReportState, event: ReportEvent): ReportState {
  switch (event.type) {
    case "heading typed":
      return { ...state, heading: event.text };
    case "notes typed":
      return { ...state, notes: event.text, notesOf: undefined };
    case "thing pressed":
      return { ...state, chosen: pressed(state, event.id, event.report) };
    case "print pressed":
      return { ...state, printing: true, notice: undefined };
    case "printed":
      return { ...state, printing: false };
    case "write pressed":
      if (isAtWork(state)) return state;
      return { ...state, writing: { attempt: 0 }, notice: undefined };
    case "name taken":
      return nextName(state);
    case "written":
      return {
        ...state,
        writing: undefined,
        notice: { kind: "done", text: `The report stands on sheet ${event.sheet}.` },
      };
    case "take back pressed":
      if (isAtWork(state)) return state;
      return { ...state, takingBack: event.written, notice: undefined };
    case "taken back":
      return {
        ...state,
        takingBack: undefined,
        notice: {
          kind: "done",
          text: `Taken back: the report on sheet ${state.takingBack?.sheet} is out of the workbook.`,
        },
      };
    case "write refused":
      return { ...state, writing: undefined, takingBack: undefined, notice: { kind: "error", text: event.message } };
    case "notice read":
      return { ...state, notice: undefined };
  }
}

/** Whether the report is on its way into the workbook, or out of it. */
export function isAtWork({ writing, takingBack }: ReportState): boolean {
  return writing !== undefined || takingBack !== undefined;
}

/** A thing more than the report has room for is not taken. */
function pressed({ chosen }: ReportState, id: string, report: Report): readonly string[] {
  const ids = namedThings(report, chosen).map((thing) => thing.id);
  if (ids.includes(id)) return ids.filter((other) => other !== id);
  return ids.length < THINGS_NAMED ? [...ids, id] : ids;
}

function nextName(state: ReportState): ReportState {
  if (state.writing === undefined) return state;
  const { attempt } = state.writing;
  if (attempt < MOST_ATTEMPTS) return { ...state, writing: { attempt: attempt + 1 } };
  const text = `Nothing was written: the workbook already has ${MOST_ATTEMPTS} reports of that day.`;
  return { ...state, writing: undefined, notice: { kind: "error", text } };
}
