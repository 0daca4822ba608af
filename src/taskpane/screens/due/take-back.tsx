import { isBusy } from "./model";
import type { DueEvent, DueState, HandledSave } from "./state";

interface TakeBackProps {
  readonly save: HandledSave;
  readonly state: DueState;
  dispatch(event: DueEvent): void;
}

/** Takes a written outcome back. */
export function TakeBack({ save, state, dispatch }: TakeBackProps) {
  return (
    <button
      type="button"
      class="due-back"
      disabled={isBusy(state)}
      aria-label={`Take back: ${save.told}`}
      onClick={() => dispatch({ type: "take back pressed", id: save.id })}
    >
      {state.takingBack === save.id ? "Taking back …" : "Take back"}
    </button>
  );
}
