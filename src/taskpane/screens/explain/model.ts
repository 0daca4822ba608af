import type { FunctionSpec } from "../../../functions/define";
import type { CellPlace, FunctionCall, SelectedCell } from "../../../workbook/port";
import { type CallContent, explainCall } from "./call-content";

/** What the screen shows below the name of the cell. */
export type Content =
  | { readonly kind: "nothing selected" }
  /** No figure of ours stands in the cell. */
  | { readonly kind: "no call"; readonly holds: "blank" | "value" | "formula" }
  | { readonly kind: "reading" }
  | { readonly kind: "unknown function"; readonly functionName: string }
  | { readonly kind: "call"; readonly call: CallContent }
  | { readonly kind: "failed"; readonly message: string };

export interface ExplainState {
  readonly cell: SelectedCell | undefined;
  /** The calls in the formula of the cell. */
  readonly calls: readonly FunctionCall[];
  /** Which of the calls is explained. */
  readonly chosen: number;
  readonly content: Content;
  /** The cell whose calls are to be read; undefined when nothing is awaited. */
  readonly awaited: SelectedCell | undefined;
}

export type ExplainEvent =
  | { readonly type: "selected"; readonly cell: SelectedCell | undefined }
  | { readonly type: "calls read"; readonly cell: SelectedCell; readonly calls: readonly FunctionCall[] }
  | { readonly type: "read failed"; readonly cell: SelectedCell; readonly message: string }
  | { readonly type: "chose"; readonly index: number };

export type FindSpec = (functionId: string) => FunctionSpec | undefined;

export const initialState: ExplainState = {
  cell: undefined,
  calls: [],
  chosen: 0,
  content: { kind: "nothing selected" },
  awaited: undefined,
};

/** A formula that may call one of our functions. */
const OUR_CALL = /\bHERD\.[A-Z]/i;

/** The next state of the screen. Answers that come for a cell left meanwhile change nothing. */
export function nextState(state: ExplainState, event: ExplainEvent, find: FindSpec): ExplainState {
  switch (event.type) {
    case "selected":
      return select(state, event.cell);
    case "calls read":
      if (event.cell !== state.awaited) return state;
      return show({ ...state, calls: event.calls, awaited: undefined }, find);
    case "read failed":
      if (event.cell !== state.awaited) return state;
      return { ...state, calls: [], awaited: undefined, content: { kind: "failed", message: event.message } };
    case "chose":
      return state.calls[event.index] ? show({ ...state, chosen: event.index }, find) : state;
  }
}

function select(state: ExplainState, cell: SelectedCell | undefined): ExplainState {
  if (cell === undefined) return initialState;
  if (cell.formula === undefined || !OUR_CALL.test(cell.formula)) {
    const holds = cell.formula !== undefined ? "formula" : cell.shown === "" ? "blank" : "value";
    return { ...initialState, cell, content: { kind: "no call", holds } };
  }
  const recalculated = samePlace(state.cell, cell) && state.cell?.formula === cell.formula;
  return recalculated
    ? { ...state, cell, awaited: cell }
    : { cell, calls: [], chosen: 0, awaited: cell, content: { kind: "reading" } };
}

function show(state: ExplainState, find: FindSpec): ExplainState {
  const { cell, calls } = state;
  const chosen = state.chosen < calls.length ? state.chosen : 0;
  const call = calls[chosen];
  if (!cell || !call) return { ...state, chosen: 0, content: { kind: "no call", holds: "formula" } };
  const spec = find(call.functionId);
  const content: Content = spec
    ? explained(spec, call, cell)
    : { kind: "unknown function", functionName: `HERD.${call.functionId}` };
  return { ...state, chosen, content };
}

function explained(spec: FunctionSpec, call: FunctionCall, cell: SelectedCell): Content {
  try {
    return { kind: "call", call: explainCall(spec, call, cell) };
  } catch (error) {
    return { kind: "failed", message: `HERD.${spec.id} could not be explained: ${String(error)}` };
  }
}

function samePlace(a: CellPlace | undefined, b: CellPlace): boolean {
  return a?.sheet === b.sheet && a.address === b.address;
}

/** What a screen reader is told when the screen changes. */
export function announcement({ cell, content }: ExplainState): string {
  if (!cell) return "";
  const place = `${cell.sheet}, ${cell.address}`;
  switch (content.kind) {
    case "call": {
      const { functionName, outcome } = content.call;
      if (outcome.kind === "value") return `${place}: ${functionName}: ${outcome.text} ${outcome.unit ?? ""}`.trim();
      return `${place}: ${functionName}: error. ${outcome.message}`;
    }
    case "no call":
      return `${place}: no HERD figure`;
    case "unknown function":
      return `${place}: ${content.functionName} is not known`;
    case "failed":
      return `${place}: ${content.message}`;
    default:
      return "";
  }
}
