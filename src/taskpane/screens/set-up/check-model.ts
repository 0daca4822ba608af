import { safeRepairs } from "../../../herd/check/repairs/safe-repairs";
import type { CellChange } from "../../../workbook/book-port";
import { capitalised, counted } from "../../format";
import type { DoubtGroup } from "./doubts";
import { type Checked, DOUBTS_AT_ONCE, type SetUpEvent, type SetUpState } from "./state";
import { begun, isBusy } from "./write-model";

/** Checking, repairing, and looking at formulas; undefined where the event is about something else. */
export function nextCheck(state: SetUpState, event: SetUpEvent): SetUpState | undefined {
  switch (event.type) {
    case "check pressed": {
      if (isBusy(state)) return state;
      const wanted = state.wanted + 1;
      return { ...state, wanted, check: { kind: "checking", wanted, before: checkedIn(state) }, notice: undefined };
    }
    case "checked":
      if (state.check.kind !== "checking" || state.check.wanted !== event.wanted) return state;
      return { ...state, check: { kind: "checked", checked: event.checked } };
    case "check failed":
      if (state.check.kind !== "checking" || state.check.wanted !== event.wanted) return state;
      return { ...state, check: { kind: "failed", message: event.message } };
    case "group pressed": {
      const openGroup = state.openGroup === event.check ? undefined : event.check;
      return { ...state, openGroup, shownDoubts: DOUBTS_AT_ONCE, askingAll: false };
    }
    case "more doubts asked":
      return { ...state, shownDoubts: state.shownDoubts + DOUBTS_AT_ONCE };
    case "repair pressed":
      return repair(state, safeRepairs([event.doubt]).cells, `${capitalised(event.doubt.repair?.title ?? "")} on ${event.doubt.sheet}, ${event.doubt.address}`, event.id); // oxfmt-ignore
    case "all repairs asked":
      return isBusy(state) ? state : { ...state, askingAll: true };
    case "all repairs left":
      return { ...state, askingAll: false };
    case "all repairs pressed": {
      const group = openGroupOf(state);
      if (group === undefined || !state.askingAll) return state;
      const title = `${counted(group.repairs.length, "cell")} repaired: ${group.title}`;
      return repair(state, group.repairs, title, event.id);
    }
    case "formulas asked":
      return { ...state, formulas: { kind: "looking" } };
    case "formulas looked at":
      return { ...state, formulas: { kind: "looked", broken: event.broken, loaded: event.loaded } };
    case "formulas failed":
      return { ...state, formulas: { kind: "failed", message: event.message } };
    case "reenter pressed": {
      const { formulas } = state;
      if (isBusy(state) || formulas.kind !== "looked" || formulas.broken.length === 0) return state;
      return begun(state, { kind: "formulas", id: event.id, cells: formulas.broken });
    }
    default:
      return undefined;
  }
}

/** What the last check found, also while the next one runs. */
export function checkedIn({ check }: SetUpState): Checked | undefined {
  if (check.kind === "checked") return check.checked;
  return check.kind === "checking" ? check.before : undefined;
}

export function openGroupOf(state: SetUpState): DoubtGroup | undefined {
  return checkedIn(state)?.groups.find(({ check }) => check === state.openGroup);
}

/** Repairs go by what the check saw: while a newer one runs, they wait. */
function repair(state: SetUpState, cells: readonly CellChange[], title: string, id: string): SetUpState {
  if (isBusy(state) || state.check.kind !== "checked" || cells.length === 0) return state;
  return { ...begun(state, { kind: "cells", id, title, cells }), askingAll: false };
}
