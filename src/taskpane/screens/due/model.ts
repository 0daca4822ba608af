import { isoDate } from "../../../core/shared/days";
import { cowKey } from "../../../herd/cow-rows";
import { counted } from "../../format";
import type { DueBook } from "./book";
import { bucketOf, filtered } from "./grouping";
import type { DueLine, FindingLine } from "./line";
import { type Listing, listingOf } from "./listing";
import { isRefused } from "./outcome-row";
import { outcomeSave, type OutcomeSave } from "./outcomes";
import { type DueEvent, type DueState, LINES_AT_ONCE } from "./state";

/** The next state of the screen. What comes too late, twice or for a line that is gone changes nothing. */
export function nextState(state: DueState, event: DueEvent): DueState {
  switch (event.type) {
    case "workbook changed":
      return { ...state, wanted: state.wanted + 1 };
    case "read":
      return event.wanted === state.wanted ? stillSettled(withBook(state, event.book)) : state;
    case "read failed":
      if (event.wanted !== state.wanted) return state;
      return { ...state, reading: { kind: "failed", message: event.message }, open: undefined };
    case "day chosen":
      return drawnUp({
        ...state,
        day: event.day,
        seenOn: Math.min(event.day, state.today),
        handled: state.handled.map((save) => ({ ...save, lines: [] })),
      });
    case "days ahead chosen":
      return drawnUp({ ...state, daysAhead: event.daysAhead });
    case "look day chosen":
      return { ...state, seenOn: Math.min(event.seenOn, state.today) };
    case "filtered":
      return { ...state, filter: { ...state.filter, ...event.filter }, most: LINES_AT_ONCE, open: undefined };
    case "grouped":
      return { ...state, groupBy: event.groupBy, open: undefined };
    case "more asked":
      return { ...state, most: state.most + LINES_AT_ONCE };
    case "line pressed":
      if (isBusy(state)) return state;
      return { ...state, open: state.open === event.key ? undefined : event.key, nextLookOn: undefined };
    case "next look chosen":
      return { ...state, nextLookOn: event.day };
    case "notice read":
      return { ...state, notice: undefined };
    case "print pressed":
      return { ...state, printing: true };
    case "printed":
      return { ...state, printing: false };
    default:
      return afterWork(state, event);
  }
}

type WorkEvent = Extract<
  DueEvent,
  {
    type:
      | "outcome chosen"
      | "saved"
      | "save refused"
      | "save tried again"
      | "save given up"
      | "take back pressed"
      | "taken back"
      | "take back refused"
      | "write pressed"
      | "list written"
      | "list refused";
  }
>;

function afterWork(state: DueState, event: WorkEvent): DueState {
  const { pending } = state;
  switch (event.type) {
    case "outcome chosen":
      return choose(state, event);
    case "saved":
      return pending?.save.id === event.id ? settled(state, pending) : state;
    case "save refused":
      return pending?.save.id === event.id ? refused(state, pending, event) : state;
    case "save tried again":
      if (pending?.brokenOff !== true) return state;
      return { ...state, pending: { ...pending, brokenOff: false, attempt: pending.attempt + 1 }, notice: undefined };
    case "save given up":
      if (pending?.brokenOff !== true) return state;
      return { ...state, pending: undefined, open: undefined, notice: undefined, wanted: state.wanted + 1 };
    case "take back pressed":
      if (isBusy(state) || !state.handled.some(({ id }) => id === event.id)) return state;
      return { ...state, takingBack: event.id, notice: undefined };
    case "taken back":
      return takenBack(state, event.id);
    case "take back refused":
      if (state.takingBack !== event.id) return state;
      return { ...state, takingBack: undefined, notice: { kind: "error", text: `Not taken back. ${event.message}` } };
    case "write pressed":
      if (isBusy(state) || state.reading.kind !== "read") return state;
      if (openLines(state).length === 0)
        return { ...state, notice: { kind: "error", text: "Nothing is due: there is no list to write." } };
      return { ...state, writing: { attempt: 0 }, notice: undefined };
    case "list written":
      return {
        ...state,
        writing: undefined,
        notice: { kind: "done", text: `The list stands on sheet ${event.sheet}.` },
      };
    case "list refused":
      return listRefused(state, event);
  }
}

/** Only one thing is written at a time. */
export function isBusy({ pending, takingBack, writing }: DueState): boolean {
  return pending !== undefined || takingBack !== undefined || writing !== undefined;
}

function withBook(state: DueState, book: DueBook): DueState {
  const listing = listingOf(book, state.day, state.daysAhead);
  return keepOpen({ ...state, reading: { kind: "read", book, listing } });
}

/** A line that stands in the list as before is open again, whoever undid what settled it. */
function stillSettled(state: DueState): DueState {
  const present = new Set(listingIn(state)?.lines.map(({ key }) => key));
  const isOpen = ({ finding, key }: DueLine): boolean => finding !== undefined && present.has(key);
  const stillGone = (lines: readonly DueLine[]) => lines.filter((line) => !isOpen(line));
  return { ...state, handled: state.handled.map((save) => ({ ...save, lines: stillGone(save.lines) })) };
}

function drawnUp(state: DueState): DueState {
  return state.reading.kind === "read" ? withBook(state, state.reading.book) : state;
}

/** An opened line stays open while its rows are as they were; otherwise it is closed and the user told. */
function keepOpen(state: DueState): DueState {
  const { open, pending } = state;
  if (open === undefined || pending !== undefined || lineOf(state, open) !== undefined) return state;
  const text = "The opened line changed in the workbook and was closed. Nothing was written.";
  return { ...state, open: undefined, nextLookOn: undefined, notice: { kind: "error", text } };
}

export function listingIn({ reading }: DueState): Listing | undefined {
  return reading.kind === "read" ? reading.listing : undefined;
}

function lineOf(state: DueState, key: string): DueLine | undefined {
  return listingIn(state)?.lines.find((line) => line.key === key);
}

/** The written outcome that settled a line. */
export function handledBy(state: DueState, key: string): DueState["handled"][number] | undefined {
  return state.handled.find(({ lines }) => lines.some((line) => line.key === key));
}

function choose(state: DueState, { key, outcome, id }: Extract<DueEvent, { type: "outcome chosen" }>): DueState {
  const line = lineOf(state, key);
  if (isBusy(state) || state.reading.kind !== "read" || line?.finding === undefined) return state;
  if (state.open !== key || handledBy(state, key) !== undefined) return state;
  const { book, listing } = state.reading;
  const { seenOn, nextLookOn } = state;
  const chosen = outcomeSave(id, line as FindingLine, { outcome, seenOn, nextLookOn }, book, listing);
  if (isRefused(chosen)) return { ...state, notice: { kind: "error", text: chosen.refused } };
  const lines = listing.lines.filter((other) => isSettled(other, line, chosen));
  return { ...state, pending: { ...chosen, line, lines, attempt: 1, brokenOff: false }, notice: undefined };
}

function isSettled(line: DueLine, chosen: DueLine, { settles }: OutcomeSave): boolean {
  if (settles === "cow") return cowKey(line.cow) === cowKey(chosen.cow);
  return line.finding?.key === chosen.finding?.key && line.finding !== undefined;
}

function settled(state: DueState, { save, told, caution, lines }: NonNullable<DueState["pending"]>): DueState {
  return {
    ...state,
    pending: undefined,
    open: undefined,
    nextLookOn: undefined,
    handled: [...state.handled, { id: save.id, told, caution, lines }],
    wanted: state.wanted + 1,
    notice: { kind: caution === undefined ? "done" : "caution", text: [told, caution?.short ?? ""].join(" ").trim() },
  };
}

function refused(
  state: DueState,
  pending: NonNullable<DueState["pending"]>,
  { kind, message }: Extract<DueEvent, { type: "save refused" }>,
): DueState {
  const notice = { kind: "error", text: message } as const;
  if (kind === "uncertain") return { ...state, pending: { ...pending, brokenOff: true }, notice };
  const open = kind === "changed" ? undefined : state.open;
  return { ...state, pending: undefined, open, notice, wanted: state.wanted + 1 };
}

function takenBack(state: DueState, id: string): DueState {
  const save = state.handled.find((known) => known.id === id);
  if (state.takingBack !== id || save === undefined) return state;
  return {
    ...state,
    takingBack: undefined,
    handled: state.handled.filter((known) => known !== save),
    wanted: state.wanted + 1,
    notice: { kind: "done", text: `Taken back. ${save.told}` },
  };
}

/** Names tried before the user is told that they are taken. */
const NAMES_TRIED = 20;

function listRefused(state: DueState, { kind, message }: Extract<DueEvent, { type: "list refused" }>): DueState {
  const attempt = (state.writing?.attempt ?? 0) + 1;
  if ((kind === "name-taken" || kind === "occupied") && state.writing !== undefined && attempt < NAMES_TRIED)
    return { ...state, writing: { attempt } };
  return { ...state, writing: undefined, notice: { kind: "error", text: message } };
}

/** The lines of the list with those that were settled just now, which keep their places, before any filter. */
export function linesOf(state: DueState): readonly DueLine[] {
  const lines = listingIn(state)?.lines ?? [];
  if (state.handled.length === 0) return lines;
  const present = new Set(lines.map(({ key }) => key));
  const gone = state.handled.flatMap((save) => save.lines.filter(({ key }) => !present.has(key)));
  return gone.length === 0 ? lines : [...lines, ...gone].sort((a, b) => a.due - b.due);
}

/** What is still to be done of what the filter lets through. */
export function openLines(state: DueState): readonly DueLine[] {
  const lines = filtered(listingIn(state)?.lines ?? [], state.filter);
  return lines.filter(({ key }) => handledBy(state, key) === undefined);
}

/** How much is due, in a sentence. */
export function summary(state: DueState): string {
  if (state.reading.kind !== "read") return "";
  const count = { overdue: 0, today: 0, ahead: 0 };
  for (const line of openLines(state)) count[bucketOf(line, state.day)]++;
  const ahead = `${count.ahead} in the ${counted(state.daysAhead, "day")} after`;
  return `${count.overdue} overdue, ${count.today} on ${isoDate(state.day)}, ${ahead}`;
}
