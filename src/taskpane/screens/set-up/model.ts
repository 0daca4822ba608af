import { nextCheck } from "./check-model";
import { nextCopy } from "./copy-model";
import { withoutPreview } from "./copy-state";
import { findWords } from "./found-words";
import { nextLists } from "./lists-model";
import type { FoundList } from "./found-lists";
import type { BookRead, SetUpEvent, SetUpState } from "./state";
import { nextWords } from "./words-model";
import { nextWrite } from "./write-model";

/** The next state of the screen. What comes too late or twice changes nothing. */
export function nextState(state: SetUpState, event: SetUpEvent): SetUpState {
  switch (event.type) {
    case "workbook changed":
      return { ...state, stale: true, copy: withoutPreview(state.copy) };
    case "reading asked":
      return { ...state, wanted: state.wanted + 1, notice: undefined };
    case "read":
      return event.read.wanted === state.wanted ? withRead(state, event.read) : state;
    case "read failed":
      if (event.wanted !== state.wanted) return state;
      return { ...state, reading: { kind: "failed", message: event.message } };
    case "section pressed":
      return { ...state, open: state.open === event.section ? undefined : event.section };
    case "notice read":
      return { ...state, notice: undefined };
    case "show refused":
      return { ...state, notice: { kind: "error", text: event.message } };
    default:
      return nextPart(state, event) ?? nextWrite(state, event);
  }
}

function nextPart(state: SetUpState, event: SetUpEvent): SetUpState | undefined {
  return nextLists(state, event) ?? nextWords(state, event) ?? nextCheck(state, event) ?? nextCopy(state, event);
}

function withRead(state: SetUpState, read: BookRead): SetUpState {
  const touched = read.lists.filter((list) => stillTouched(state, list)).map(({ id }) => id);
  const lists = read.lists.map((list) => {
    const draft = touched.includes(list.id) ? state.lists.find(({ id }) => id === list.id) : undefined;
    return draft === undefined ? list : { ...draft, rowCount: list.rowCount, area: list.area, kept: list.kept };
  });
  const { check } = state;
  return {
    ...state,
    reading: { kind: "read", ...read },
    stale: false,
    lists,
    touched,
    words: findWords(read.book, lists, read.words),
    check: check.kind === "checked" ? { kind: "checking", wanted: read.wanted, before: check.checked } : check,
  };
}

/** What the user has said of a list holds while its headings are the same. */
function stillTouched(state: SetUpState, list: FoundList): boolean {
  const draft = state.touched.includes(list.id) ? state.lists.find(({ id }) => id === list.id) : undefined;
  const headings = ({ columns }: FoundList): string => JSON.stringify(columns.map(({ heading, column }) => [heading, column])); // oxfmt-ignore
  return draft !== undefined && headings(draft) === headings(list);
}
