import { withoutPreview } from "./copy-state";
import type { SetUpEvent, SetUpState } from "./state";
import type { Task } from "./task";

/** Writing into the workbook, and taking it back. */
export function nextWrite(state: SetUpState, event: SetUpEvent): SetUpState {
  const { work, takingBack } = state;
  switch (event.type) {
    case "written":
      return work !== undefined && work.task.id === event.id ? written(state, work.task, event.told) : state;
    case "write refused": {
      if (work === undefined || work.task.id !== event.id) return state;
      const notice = { kind: "error", text: event.message } as const;
      if (event.kind === "uncertain") return { ...state, work: { ...work, brokenOff: true }, notice };
      return { ...state, work: undefined, notice, wanted: state.wanted + 1, copy: withoutPreview(state.copy) };
    }
    case "write tried again":
      if (work?.brokenOff !== true) return state;
      return { ...state, work: { ...work, brokenOff: false, attempt: work.attempt + 1 }, notice: undefined };
    case "write given up":
      if (work?.brokenOff !== true) return state;
      return { ...state, work: undefined, notice: undefined, wanted: state.wanted + 1, copy: withoutPreview(state.copy) }; // oxfmt-ignore
    case "take back pressed": {
      const past = state.reading.kind === "read" ? state.reading.past.find(({ id }) => id === event.id) : undefined;
      return isBusy(state) || past === undefined ? state : { ...state, takingBack: past, notice: undefined };
    }
    case "taken back": {
      if (takingBack?.id !== event.id) return state;
      const text = `Taken back: ${takingBack.title}.`;
      const copy = withoutPreview(state.copy);
      return { ...state, takingBack: undefined, wanted: state.wanted + 1, copy, notice: { kind: "done", text } };
    }
    case "take back refused": {
      if (takingBack?.id !== event.id) return state;
      const notice = { kind: "error", text: `Not taken back. ${event.message}` } as const;
      return { ...state, takingBack: undefined, notice, wanted: state.wanted + 1 };
    }
    default:
      return state;
  }
}

/** Only one thing is written at a time. */
export function isBusy({ work, takingBack }: SetUpState): boolean {
  return work !== undefined || takingBack !== undefined;
}

/** The state in which a task is on its way into the workbook. */
export function begun(state: SetUpState, task: Task): SetUpState {
  return { ...state, work: { task, attempt: 1, brokenOff: false }, notice: undefined };
}

function written(state: SetUpState, task: Task, told: string): SetUpState {
  return {
    ...state,
    work: undefined,
    wanted: state.wanted + 1,
    touched: task.kind === "mapping" ? [] : state.touched,
    chosenCodes: task.kind === "words" ? {} : state.chosenCodes,
    copy: withoutPreview(state.copy),
    formulas: task.kind === "formulas" ? { kind: "looking" } : state.formulas,
    notice: { kind: "done", text: told, ...(task.kind === "formulas" ? {} : { back: task.id }) },
  };
}
