import "./explain.css";
import { useCallback, useEffect, useReducer } from "preact/hooks";
import { wholeRegistry } from "../../../functions/whole-registry";
import { messageOf } from "../../message-of";
import type { PaneWorkbook } from "../../pane-workbook";
import { type ExplainEvent, type ExplainState, initialState, nextState } from "./model";
import { ExplainScreen } from "./view";

const specs = new Map(wholeRegistry.map((spec) => [spec.id, spec]));
const step = (state: ExplainState, event: ExplainEvent) =>
  nextState(state, event, (functionId) => specs.get(functionId.toUpperCase()));

/** The screen, fed by the workbook. */
export function Explain({ port }: PaneWorkbook) {
  const [state, dispatch] = useReducer(step, initialState);
  const { awaited: cell } = state;

  useEffect(() => port.watchSelection((selected) => dispatch({ type: "selected", cell: selected })), [port]);

  useEffect(() => {
    if (!cell) return;
    port.readCalls(cell).then(
      (calls) => dispatch({ type: "calls read", cell, calls }),
      (error: unknown) => dispatch({ type: "read failed", cell, message: notReadMessage(error) }),
    );
  }, [port, cell]);

  const choose = useCallback((index: number) => dispatch({ type: "chose", index }), []);
  return <ExplainScreen state={state} choose={choose} />;
}

function notReadMessage(error: unknown): string {
  return `The cell could not be read: ${messageOf(error)}`;
}
