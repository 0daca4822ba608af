import "./put-in-sheet.css";
import { useEffect, useId, useMemo, useReducer, useRef, useState } from "preact/hooks";
import type { SelectedCell } from "../../../workbook/port";
import type { WorkbookWith } from "../../pane-workbook";
import { Note, TextList } from "../blocks";
import { type BlockToPut, putBlock } from "./put-block";
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
  const id = useId();

  useEffect(() => port.watchSelection(setSelected), [port]);

  useEffect(() => {
    const { state, selected, wanted } = latest.current;
    const refused = (error: unknown): void => dispatch({ type: "refused", message: messageOf(error) });
    if (state.doing === "putting") {
      const newId = crypto.randomUUID();
      putBlock({ tables, book }, wanted, state.target, selected, newId).then((put) => dispatch({ type: "put", put }), refused); // prettier-ignore
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
            onChange={(event) => dispatch({ type: "target chosen", target: event.currentTarget.value as Target })}
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
        {state.doing === "putting" ? "Writing …" : "Put in the sheet"}
      </button>
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
          {state.doing === "taking back" ? "Taking back …" : "Take back"}
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
      {put !== undefined && put.chartsLeftOut.length > 0 && <p>Its pictures are drawn in Excel only.</p>}
    </Note>
  );
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
