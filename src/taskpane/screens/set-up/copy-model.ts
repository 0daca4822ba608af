import { counted } from "../../format";
import { type CopyEvent, type CopyState, type OldBook, REASONS_AT_ONCE } from "./copy-state";
import { editLists } from "./list-edits";
import { openPoints } from "./lists";
import { unknownIn } from "./old-words";
import type { SetUpEvent, SetUpState } from "./state";
import { begun, isBusy } from "./write-model";

/** Copying from an old book; undefined where the event is about something else. */
export function nextCopy(state: SetUpState, event: SetUpEvent): SetUpState | undefined {
  const { copy } = state;
  switch (event.type) {
    case "old book chosen":
      return isBusy(state) ? state : withCopy(state, { kind: "opening", name: event.name, turn: event.turn });
    case "old book read":
      if (copy.kind !== "opening" || copy.turn !== event.turn) return state;
      return withCopy(state, {
        kind: "opened",
        old: event.old,
        preview: { kind: "not yet" },
        shownReasons: REASONS_AT_ONCE,
      });
    case "old book refused":
      if (copy.kind !== "opening" || copy.turn !== event.turn) return state;
      return withCopy(state, { kind: "failed", name: copy.name, message: event.message });
    case "old book put away":
      return isBusy(state) ? state : withCopy(state, { kind: "none" });
    case "old list changed":
    case "old code chosen":
    case "preview pressed":
    case "preview drawn up":
    case "preview failed":
    case "more reasons asked":
    case "copy pressed":
      return copy.kind === "opened" ? inOldBook(state, copy, event) : state;
    default:
      return undefined;
  }
}

type Opened = Extract<CopyState, { kind: "opened" }>;

function inOldBook(state: SetUpState, copy: Opened, event: CopyEvent): SetUpState {
  const { old, preview } = copy;
  switch (event.type) {
    case "old list changed": {
      if (isBusy(state)) return state;
      const lists = editLists(old.lists, event.edit, old.book);
      return changed(state, { ...old, lists, unknown: unknownIn({ ...old, lists }, state.words.known) });
    }
    case "old code chosen":
      return isBusy(state) ? state : changed(state, { ...old, codes: { ...old.codes, [event.word]: event.code } });
    case "preview pressed": {
      if (isBusy(state)) return state;
      const [point, ...others] = old.lists.flatMap((list) => openPoints(list).map((text) => `${list.sheet}: ${text}`));
      if (point === undefined) return withCopy(state, { ...copy, preview: { kind: "looking", turn: event.turn } });
      const after = others.length > 0 ? ` ${counted(others.length, "more question")} after that.` : "";
      return { ...state, notice: { kind: "error", text: `Not looked at yet. ${point}${after}` } };
    }
    case "preview drawn up":
      if (preview.kind !== "looking" || preview.turn !== event.turn) return state;
      return withCopy(state, {
        ...copy,
        preview: { kind: "shown", preview: event.preview },
        shownReasons: REASONS_AT_ONCE,
      });
    case "preview failed":
      if (preview.kind !== "looking" || preview.turn !== event.turn) return state;
      return withCopy(state, { ...copy, preview: { kind: "failed", message: event.message } });
    case "more reasons asked":
      return withCopy(state, { ...copy, shownReasons: copy.shownReasons + REASONS_AT_ONCE });
    case "copy pressed": {
      if (isBusy(state) || preview.kind !== "shown") return state;
      const rows = preview.preview.counts.reduce((sum, { over }) => sum + over, 0);
      const title = `${counted(rows, "row")} copied from ${old.name}`;
      if (rows === 0) return { ...state, notice: { kind: "error", text: "No row can come over." } };
      return begun(state, { kind: "copy", id: event.id, title, preview: preview.preview });
    }
    default:
      return state;
  }
}

function withCopy(state: SetUpState, copy: CopyState): SetUpState {
  return { ...state, copy, notice: undefined };
}

/** What was previewed holds no longer. */
function changed(state: SetUpState, old: OldBook): SetUpState {
  return withCopy(state, { kind: "opened", old, preview: { kind: "not yet" }, shownReasons: REASONS_AT_ONCE });
}
