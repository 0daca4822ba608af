import "./due.css";
import { useCallback, useEffect, useReducer, useRef, useState } from "preact/hooks";
import type { WorkbookWith } from "../../pane-workbook";
import { DUE_TABLES } from "./book";
import { doingOf } from "./doing";
import { read, save, takeBack, writeList } from "./effects";
import { nextState } from "./model";
import { useWorkbookChanges } from "../../parts/use-workbook-changes";
import { PrintSheet } from "./print-sheet";
import { initialState } from "./state";
import { DueView } from "./view";

/** The screen, fed by the workbook. */
export function Due({ tables, today }: WorkbookWith<"tables">) {
  const [state, dispatch] = useReducer(nextState, undefined, () => initialState(today()));
  const { wanted, pending, takingBack, writing, printing } = state;
  const latest = useRef(state);
  latest.current = state;

  useWorkbookChanges(tables, DUE_TABLES, () => dispatch({ type: "workbook changed" }));

  const [answered, setAnswered] = useState(0);
  useEffect(() => {
    void read(tables, wanted).then((event) => {
      setAnswered((last) => Math.max(last, wanted));
      dispatch(event);
    });
  }, [tables, wanted]);

  const trying = pending?.brokenOff === false ? `${pending.save.id} ${pending.attempt}` : undefined;
  useEffect(() => {
    const { pending } = latest.current;
    if (trying !== undefined && pending !== undefined) void save(tables, pending).then(dispatch);
  }, [tables, trying]);

  useEffect(() => {
    if (takingBack !== undefined) void takeBack(tables, takingBack).then(dispatch);
  }, [tables, takingBack]);

  useEffect(() => {
    if (writing !== undefined) void writeList(tables, latest.current).then(dispatch);
  }, [tables, writing]);

  useEffect(() => {
    if (!printing) return;
    const done = (): void => dispatch({ type: "printed" });
    window.addEventListener("afterprint", done);
    window.print();
    return () => window.removeEventListener("afterprint", done);
  }, [printing]);

  const choose = useCallback(
    (key: string, outcome: Parameters<typeof chooseEvent>[1]) =>
      dispatch(chooseEvent(key, outcome, crypto.randomUUID())),
    [],
  );
  return (
    <>
      <DueView state={state} dispatch={dispatch} choose={choose} doing={doingOf(state, answered !== wanted)} />
      {printing && <PrintSheet state={state} />}
    </>
  );
}

function chooseEvent(key: string, outcome: "healed" | "better" | "same" | "worse" | "gone", id: string) {
  return { type: "outcome chosen", key, outcome, id } as const;
}
