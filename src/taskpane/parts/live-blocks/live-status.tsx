import { Note } from "../blocks";
import { SlowStatus } from "../slow-status";
import type { LiveEvent, LiveState } from "./state";

interface LiveStatusProps {
  readonly state: LiveState;
  dispatch(event: LiveEvent): void;
}

/** Says what a screen is waiting for, and why it may show less than the workbook holds now. */
export function LiveStatus({ state, dispatch }: LiveStatusProps) {
  const { failure, reading } = state;
  return (
    <>
      <SlowStatus doing={doingOf(state)} />
      {failure !== undefined && (
        <Note kind="error" title="The workbook could not be read">
          <p>{failure}</p>
          {reading.kind === "read" && <p>The figures shown are of the time before.</p>}
          <button type="button" onClick={() => dispatch({ type: "workbook changed" })}>
            Read again
          </button>
        </Note>
      )}
    </>
  );
}

/** Whether figures are still on their way. */
export function isBusy(state: LiveState): boolean {
  return doingOf(state) !== undefined;
}

function doingOf({ reading, failure, working }: LiveState): string | undefined {
  if (reading.kind === "nothing yet") return failure === undefined ? "Reading the workbook …" : undefined;
  return working ? "Computing …" : undefined;
}
