import { counted } from "../../format";
import { findWords } from "./found-words";
import { editLists, type ListEdit } from "./list-edits";
import { canBeTable, listsAlike, mappingOf, openPoints } from "./lists";
import type { SetUpEvent, SetUpState } from "./state";
import { begun, isBusy } from "./write-model";

/** What the user says of lists; undefined where the event is about something else. */
export function nextLists(state: SetUpState, event: SetUpEvent): SetUpState | undefined {
  switch (event.type) {
    case "list read as":
    case "column read as":
    case "unit chosen":
    case "landmark chosen":
      return changed(state, event);
    case "keep lists pressed":
      return keep(state, event.id);
    case "make table pressed":
      return makeTable(state, event.list, event.id);
    default:
      return undefined;
  }
}

function changed(state: SetUpState, edit: ListEdit): SetUpState {
  const { reading, work, touched } = state;
  if (work !== undefined || reading.kind !== "read") return state;
  const lists = editLists(state.lists, edit, reading.book);
  const words = findWords(reading.book, lists, reading.words);
  return { ...state, lists, touched: [...new Set([...touched, edit.list])], words, notice: undefined };
}

function keep(state: SetUpState, id: string): SetUpState {
  if (isBusy(state) || state.reading.kind !== "read") return state;
  const points = [
    ...state.lists.flatMap((list) => openPoints(list).map((point) => `${list.sheet}: ${point}`)),
    ...listsAlike(state.lists),
  ];
  if (points.length > 0) {
    const text = `Not kept yet. ${points[0]!}${points.length > 1 ? ` ${counted(points.length - 1, "more question")} after that.` : ""}`; // oxfmt-ignore
    return { ...state, notice: { kind: "error", text } };
  }
  const mapping = mappingOf(state.lists.filter(({ own }) => !own));
  if (mapping.sources.length === 0 && !state.reading.hasMapping) {
    return { ...state, notice: { kind: "error", text: "Nothing to keep: no list is read." } };
  }
  const title = `What is read from ${counted(mapping.sources.length, "list")}`;
  return begun(state, { kind: "mapping", id, title, mapping });
}

function makeTable(state: SetUpState, listId: string, id: string): SetUpState {
  const list = state.lists.find((known) => known.id === listId);
  if (isBusy(state) || list === undefined || !canBeTable(list)) return state;
  if (state.touched.includes(listId)) {
    const text = `Not made a table yet. What you said of the list on ${list.sheet} is not kept: press Keep this first.`;
    return { ...state, notice: { kind: "error", text } };
  }
  const { sheet, area } = list;
  const title = `The list on ${sheet} as a table`;
  return begun(state, { kind: "table", id, title, sheet, area, name: sheet });
}
