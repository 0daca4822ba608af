import { Note } from "../../parts/blocks";
import type { WrittenBefore } from "./task";
import type { SetUpViewProps } from "./view-props";
import { isBusy } from "./write-model";

/** What came of the last thing that was done; it stays in view at the lower edge. */
export function WriteNotice({ state, dispatch }: SetUpViewProps) {
  const { notice, work } = state;
  const back = pastWrites(state).find(({ id }) => id === notice?.back);
  return (
    <div class="set-up-notice">
      <Note kind={notice?.kind === "done" ? "remark" : "error"} title={notice?.kind === "done" ? "Done" : "Not done"}>
        <p>{notice?.text}</p>
        <p class="set-up-buttons">
          {work?.brokenOff === true ? (
            <>
              <button type="button" onClick={() => dispatch({ type: "write tried again" })}>
                Try again
              </button>
              <button type="button" onClick={() => dispatch({ type: "write given up" })}>
                Leave it as it is
              </button>
            </>
          ) : (
            <>
              {back !== undefined && <TakeBack write={back} state={state} dispatch={dispatch} />}
              <button type="button" onClick={() => dispatch({ type: "notice read" })}>
                Close
              </button>
            </>
          )}
        </p>
      </Note>
    </div>
  );
}

/** Everything that can still be taken back, the latest first. */
export function PastWrites({ state, dispatch }: SetUpViewProps) {
  const past = pastWrites(state);
  if (past.length === 0) return null;
  return (
    <details class="set-up-past">
      <summary>Done here ({past.length})</summary>
      <ul class="set-up-lines">
        {past.map((write) => (
          <li key={write.id} data-place>
            <span>{write.title}</span>
            <TakeBack write={write} state={state} dispatch={dispatch} />
          </li>
        ))}
      </ul>
    </details>
  );
}

function pastWrites({ reading }: SetUpViewProps["state"]): readonly WrittenBefore[] {
  return reading.kind === "read" ? reading.past : [];
}

type TakeBackProps = Pick<SetUpViewProps, "state" | "dispatch"> & { readonly write: WrittenBefore };

function TakeBack({ write, state, dispatch }: TakeBackProps) {
  return (
    <button
      type="button"
      class="set-up-back"
      disabled={isBusy(state)}
      aria-label={`Take back: ${write.title}`}
      onClick={() => dispatch({ type: "take back pressed", id: write.id })}
    >
      {state.takingBack?.id === write.id ? "Taking back …" : "Take back"}
    </button>
  );
}
