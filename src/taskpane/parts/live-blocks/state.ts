import type { ComputedBlock } from "../../../blocks/compute";
import { BlockData, type HerdTables } from "../../../blocks/data";

/** What was read of the workbook last. */
export type Reading =
  | { readonly kind: "nothing yet" }
  | { readonly kind: "read"; readonly herd: HerdTables; readonly data: BlockData };

/** Blocks computed from the workbook and from what the user typed. */
export interface LiveState {
  /** Counts the readings asked for; an answer to an earlier one is dropped. */
  readonly wanted: number;
  /** The latest of them that was answered. */
  readonly answered: number;
  readonly reading: Reading;
  /** Why the workbook could not be read the last time. What was read before stays. */
  readonly failure: string | undefined;
  /** What was typed or chosen, by field; a field that is not there holds what is usual. */
  readonly typed: Readonly<Record<string, string>>;
  /** Counts the computations asked for; what an earlier one gives is dropped. */
  readonly work: number;
  readonly working: boolean;
  /** The blocks as last computed, by id. While new ones are on their way the old ones stay. */
  readonly computed: ReadonlyMap<string, ComputedBlock>;
}

export type LiveEvent =
  | { readonly type: "workbook changed" }
  | { readonly type: "read"; readonly wanted: number; readonly herd: HerdTables }
  | { readonly type: "read failed"; readonly wanted: number; readonly message: string }
  | { readonly type: "typed"; readonly field: string; readonly text: string }
  | { readonly type: "computed"; readonly work: number; readonly block: ComputedBlock }
  | { readonly type: "not computed"; readonly work: number; readonly id: string }
  | { readonly type: "all computed"; readonly work: number };

export function initialLiveState(typed: LiveState["typed"] = {}): LiveState {
  return {
    wanted: 1,
    answered: 0,
    reading: { kind: "nothing yet" },
    failure: undefined,
    typed,
    work: 0,
    working: false,
    computed: new Map(),
  };
}

/** The next state. What comes too late changes nothing. */
export function nextLiveState(state: LiveState, event: LiveEvent): LiveState {
  switch (event.type) {
    case "workbook changed":
      return { ...state, wanted: state.wanted + 1, failure: undefined };
    case "read": {
      if (event.wanted !== state.wanted) return state;
      const { herd, wanted } = event;
      const reading = { kind: "read", herd, data: new BlockData(herd) } as const;
      return anew({ ...state, answered: wanted, reading, failure: undefined });
    }
    case "read failed":
      if (event.wanted !== state.wanted) return state;
      return { ...state, answered: event.wanted, failure: event.message };
    case "typed":
      return anew({ ...state, typed: { ...state.typed, [event.field]: event.text } });
    case "computed":
      if (event.work !== state.work) return state;
      return { ...state, computed: new Map(state.computed).set(event.block.block.id, event.block) };
    case "not computed": {
      if (event.work !== state.work) return state;
      const computed = new Map(state.computed);
      computed.delete(event.id);
      return { ...state, computed };
    }
    case "all computed":
      return event.work === state.work ? { ...state, working: false } : state;
  }
}

function anew(state: LiveState): LiveState {
  return state.reading.kind === "read" ? { ...state, work: state.work + 1, working: true } : state;
}
