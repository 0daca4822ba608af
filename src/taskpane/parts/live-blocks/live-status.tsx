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
        <div role="alert">
          <Note kind="error" title="The workbook could not be read">
            <p>{failure}</p>
            {reading.kind === "read" && <p>The figures shown are of the time before.</p>}
            <button type="button" onClick={() => dispatch({ type: "workbook changed" })}>
              Read again
            </button>
          </Note>
        </div>
      )}
    </>
  );
}

/** Whether figures are still on their way. */
export function isBusy(state: LiveState): boolean {
  return doingOf(state) !== undefined;
}

function doingOf({ wanted, answered, working }: LiveState): string | undefined {
  if (answered !== wanted) return "Reading the workbook …";
  return working ? "Computing …" : undefined;
}
