import "./set-up.css";
import { useCallback, useEffect, useMemo, useReducer, useRef } from "preact/hooks";
import type { CellPlace } from "../../../workbook/port";
import type { WorkbookWith } from "../../pane-workbook";
import { check, lookAtFormulas, perform, read, show, takeBack } from "./effects";
import { nextState } from "./model";
import { initialState } from "./state";
import { newTaskId } from "./task";
import { SetUpView } from "./view";

const newId = (): string => newTaskId(new Date(), crypto.randomUUID());

/** What copying needs is asked for with its part of the screen. */
const copying = () => import(/* webpackChunkName: "copy" */ "./copy-effects");
const NOT_LOADED =
  "The code for it could not be loaded. Check the connection to where Evenfoot is kept, then try again.";

/** The screen, fed by the workbook. */
export function SetUp(workbook: WorkbookWith<"tables" | "book">) {
  const { tables, book, today } = workbook;
  const ports = useMemo(() => ({ tables, book }), [tables, book]);
  const [state, dispatch] = useReducer(nextState, today(), initialState);
  const { wanted, reading, work, takingBack, formulas } = state;
  const latest = useRef(state);
  latest.current = state;

  useEffect(() => tables.watchChanges(() => dispatch({ type: "workbook changed" })), [tables]);

  useEffect(() => void read(ports, wanted).then(dispatch), [ports, wanted]);

  const waiting = state.check.kind === "checking" && reading.kind === "read" && reading.wanted >= state.check.wanted;
  const toCheck = waiting && state.check.kind === "checking" ? state.check.wanted : undefined;
  useEffect(() => {
    const { reading } = latest.current;
    if (toCheck !== undefined && reading.kind === "read") void check(reading.book, today(), toCheck).then(dispatch);
  }, [toCheck]);

  const trying = work?.brokenOff === false ? `${work.task.id} ${work.attempt}` : undefined;
  useEffect(() => {
    const { work } = latest.current;
    if (trying !== undefined && work !== undefined) void perform(ports, work.task).then(dispatch);
  }, [ports, trying]);

  useEffect(() => {
    if (takingBack !== undefined) void takeBack(ports, takingBack).then(dispatch);
  }, [ports, takingBack]);

  useEffect(() => {
    if (formulas.kind === "looking") void lookAtFormulas(ports).then(dispatch);
  }, [ports, formulas]);

  const turns = useRef(0);
  const newTurn = useCallback(() => ++turns.current, []);
  const { openBook } = workbook;
  const chooseFile = useCallback(
    (file: File) => {
      if (openBook === undefined) return;
      const turn = newTurn();
      dispatch({ type: "old book chosen", name: file.name, turn });
      copying().then(
        ({ readOldBook }) =>
          readOldBook(() => openBook(file), file.name, latest.current.words.known, turn).then(dispatch),
        () => dispatch({ type: "old book refused", turn, message: NOT_LOADED }),
      );
    },
    [openBook],
  );

  const { copy } = state;
  const previewing = copy.kind === "opened" && copy.preview.kind === "looking" ? copy.preview.turn : undefined;
  useEffect(() => {
    const { copy, words } = latest.current;
    if (previewing === undefined || copy.kind !== "opened") return;
    copying().then(
      ({ drawUpPreview }) => drawUpPreview(ports, copy.old, words.known, today(), previewing).then(dispatch),
      () => dispatch({ type: "preview failed", turn: previewing, message: NOT_LOADED }),
    );
  }, [ports, previewing]);

  const showCell = useCallback(
    (place: CellPlace) => void show(ports, place).then((event) => event !== undefined && dispatch(event)),
    [ports],
  );
  return (
    <SetUpView
      workbook={workbook}
      state={state}
      dispatch={dispatch}
      newId={newId}
      newTurn={newTurn}
      chooseFile={chooseFile}
      show={showCell}
    />
  );
}
