import { useEffect, useReducer, useRef } from "preact/hooks";
import type { Block } from "../../../blocks/block";
import { computeInSteps, type InputValues } from "../../../blocks/compute";
import type { FunctionSpec } from "../../../functions/define";
import { registry } from "../../../functions/registry";
import { TableError } from "../../../workbook/table-error";
import type { WorkbookWith } from "../../pane-workbook";
import { messageOf } from "../../message-of";
import { inSlices } from "../in-slices";
import { useWorkbookChanges } from "../use-workbook-changes";
import { readHerdTables } from "./read-herd-tables";
import { initialLiveState, type LiveEvent, type LiveState, nextLiveState } from "./state";

const specs = new Map(registry.map((spec) => [spec.id, spec]));

export function specOf(id: string): FunctionSpec | undefined {
  return specs.get(id);
}

/** What a screen computes. */
export interface LiveBlocks {
  /** Names of the tables that it reads. */
  readonly tables: readonly string[];
  /** The blocks in the order in which they are computed, the first to be read first. */
  readonly blocks: readonly Block[];
  /** What the user typed, as the inputs of a block take it; undefined where it cannot be computed with that. */
  given(block: Block, state: LiveState): InputValues | undefined;
}

/** The blocks of a screen, computed from the workbook and anew whenever it or what was typed changes. */
export function useLiveBlocks(
  { tables: port, today }: WorkbookWith<"tables">,
  { tables, blocks, given }: LiveBlocks,
  typed: LiveState["typed"] = {},
): readonly [LiveState, (event: LiveEvent) => void] {
  const [state, dispatch] = useReducer(nextLiveState, typed, initialLiveState);
  const { wanted, work } = state;
  const latest = useRef(state);
  latest.current = state;

  useWorkbookChanges(port, tables, () => dispatch({ type: "workbook changed" }));

  useEffect(() => {
    readHerdTables(port, tables, today()).then(
      (herd) => dispatch({ type: "read", wanted, herd }),
      (error: unknown) => dispatch({ type: "read failed", wanted, message: notReadMessage(error) }),
    );
  }, [port, wanted]);

  useEffect(() => {
    let isWanted = true;
    const compute = async (): Promise<void> => {
      const current = latest.current;
      if (current.reading.kind !== "read") return;
      for (const block of blocks) {
        const values = given(block, current);
        if (values === undefined) {
          dispatch({ type: "not computed", work, id: block.id });
          continue;
        }
        const steps = computeInSteps(block, current.reading.data, specOf, values);
        const computed = await inSlices(steps, () => isWanted);
        if (computed === undefined) return;
        dispatch({ type: "computed", work, block: computed });
      }
      dispatch({ type: "all computed", work });
    };
    void compute();
    return () => {
      isWanted = false;
    };
  }, [work]);

  return [state, dispatch];
}

function notReadMessage(error: unknown): string {
  return error instanceof TableError ? error.message : `The workbook could not be read: ${messageOf(error)}.`;
}
