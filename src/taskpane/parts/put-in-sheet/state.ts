import type { CellPlace } from "../../../workbook/port";

/** Where a block is to stand. */
export type Target = "new sheet" | "this sheet" | "selected cell";

/** Where a block was put. */
export interface PutBlock {
  readonly place: CellPlace;
  /** Parts that no formula can compute in this workbook, in plain sentences. */
  readonly refusals: readonly string[];
  /** Titles of pictures that this host cannot draw. */
  readonly chartsLeftOut: readonly string[];
}

export interface PutState {
  readonly target: Target;
  readonly doing: "nothing" | "putting" | "taking back";
  /** Counts the attempts, so that a second one is a new thing to do. */
  readonly attempt: number;
  /** The save that is being taken back. */
  readonly takingBack: string | undefined;
  readonly put: PutBlock | undefined;
  readonly told: { readonly kind: "done" | "error"; readonly text: string } | undefined;
}

export type PutEvent =
  | { readonly type: "target chosen"; readonly target: Target }
  | { readonly type: "put pressed" }
  | { readonly type: "put"; readonly put: PutBlock }
  | { readonly type: "take back pressed"; readonly id: string }
  | { readonly type: "taken back" }
  | { readonly type: "refused"; readonly message: string };

export const nothingPut: PutState = {
  target: "new sheet",
  doing: "nothing",
  attempt: 0,
  takingBack: undefined,
  put: undefined,
  told: undefined,
};

/** The next state. What is pressed while something is written changes nothing. */
export function nextPut(state: PutState, event: PutEvent): PutState {
  const { doing } = state;
  switch (event.type) {
    case "target chosen":
      return doing === "nothing" ? { ...state, target: event.target, told: undefined } : state;
    case "put pressed":
      if (doing !== "nothing") return state;
      return { ...state, doing: "putting", attempt: state.attempt + 1, told: undefined };
    case "put": {
      if (doing !== "putting") return state;
      const { sheet, address } = event.put.place;
      const text = `It stands on the sheet ${sheet}, from ${address} on. Its figures go on with the workbook.`;
      return { ...state, doing: "nothing", put: event.put, told: { kind: "done", text } };
    }
    case "take back pressed":
      if (doing !== "nothing") return state;
      return { ...state, doing: "taking back", attempt: state.attempt + 1, takingBack: event.id, told: undefined };
    case "taken back":
      if (doing !== "taking back") return state;
      return { ...state, doing: "nothing", put: undefined, told: { kind: "done", text: "Taken back." } };
    case "refused":
      if (doing === "nothing") return state;
      return { ...state, doing: "nothing", told: { kind: "error", text: event.message } };
  }
}
