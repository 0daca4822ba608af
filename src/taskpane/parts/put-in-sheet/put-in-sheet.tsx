import "./put-in-sheet.css";
import { useEffect, useId, useMemo, useReducer, useRef, useState } from "preact/hooks";
import type { SelectedCell } from "../../../workbook/port";
import { messageOf } from "../../message-of";
import type { WorkbookWith } from "../../pane-workbook";
import { asTableError } from "../../../workbook/table-error";
import { Note, TextList } from "../blocks";
import { SlowStatus } from "../slow-status";
import { type Attempt, type BlockToPut, putBlock } from "./put-block";
import { nextPut, nothingPut, type PutState, type Target } from "./state";

interface PutInSheetProps {
  readonly wanted: BlockToPut;
  readonly workbook: WorkbookWith<"tables" | "book">;
  /** Why it cannot be put now. */
  readonly unready?: string;
}

/** Puts a block into the workbook as live formulas: on a new sheet, or where the user says. */
export function PutInSheet({ wanted, workbook, unready }: PutInSheetProps) {
  const { port, tables, book } = workbook;
  const [selected, setSelected] = useState<SelectedCell>();
  const [state, dispatch] = useReducer(nextPut, nothingPut);
  const latest = useRef({ state, selected, wanted });
  latest.current = { state, selected, wanted };
  /** The try of which nobody knows yet whether it was written. */
  const attempt = useRef<Attempt>();
  const id = useId();

  useEffect(() => port.watchSelection(setSelected), [port]);

  useEffect(() => {
    const { state, selected, wanted } = latest.current;
    const refused = (error: unknown): void => {
      if (asTableError(error)?.kind !== "uncertain") attempt.current = undefined;
      dispatch({ type: "refused", message: messageOf(error) });
    };
    if (state.doing === "putting") {
      attempt.current ??= { id: crypto.randomUUID() };
      putBlock({ tables, book }, wanted, state.target, selected, attempt.current).then((put) => {
        attempt.current = undefined;
        dispatch({ type: "put", put });
      }, refused);
    } else if (state.doing === "taking back" && state.takingBack !== undefined) {
      tables.takeBack(state.takingBack).then(() => dispatch({ type: "taken back" }), refused);
    }
  }, [state.attempt]);

  const { title } = wanted.block;
  // The section of a block comes and goes with its figures; what stands in the workbook can be taken back all the same.
  const standing = useMemo(() => tables.pastSaves().find((save) => save.title === title), [state.doing, title]);
  const isBusy = state.doing !== "nothing";
  return (
    <div class="put-in-sheet">
      {selected !== undefined && (
        <>
          <label for={id}>
            Where <span class="readers-only">to put {title}</span>
          </label>
          <select
            id={id}
            value={state.target}
            disabled={isBusy}
            onChange={(event) => {
              attempt.current = undefined;
              dispatch({ type: "target chosen", target: event.currentTarget.value as Target });
            }}
          >
            <option value="new sheet">on a new sheet</option>
            <option value="this sheet">on the sheet {selected.sheet}, where it is free</option>
            <option value="selected cell">
              from the selected cell on: {selected.sheet}, {selected.address}
            </option>
          </select>
        </>
      )}
      <button
        type="button"
        disabled={isBusy || unready !== undefined}
        aria-label={`Put in the sheet: ${title}`}
        onClick={() => dispatch({ type: "put pressed" })}
      >
        Put in the sheet
      </button>
      <SlowStatus doing={doingOf(state, title)} />
      {unready !== undefined && <small>{unready}</small>}
      <div role="status">
        <Told state={state} />
      </div>
      {standing !== undefined && (
        <button
          type="button"
          disabled={isBusy}
          aria-label={`Take back: ${title}`}
          onClick={() => dispatch({ type: "take back pressed", id: standing.id })}
        >
          Take back
        </button>
      )}
    </div>
  );
}

function Told({ state: { told, put } }: { readonly state: PutState }) {
  if (told === undefined) return null;
  return (
    <Note kind={told.kind === "error" ? "error" : "remark"} title={told.kind === "error" ? "Not done" : "Done"}>
      <p>{told.text}</p>
      {put !== undefined && told.kind === "done" && put.refusals.length > 0 && (
        <>
          <p>Left out, because the workbook cannot compute it:</p>
          <TextList texts={put.refusals} />
        </>
      )}
      {put !== undefined && told.kind === "done" && put.chartsLeftOut.length > 0 && (
        <p>Its pictures are drawn in Excel only.</p>
      )}
    </Note>
  );
}

function doingOf({ doing }: PutState, title: string): string | undefined {
  if (doing === "putting") return `Writing ${title} …`;
  return doing === "taking back" ? `Taking back ${title} …` : undefined;
}
