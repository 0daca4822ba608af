import "./herd.css";
import type { WorkbookWith } from "../../pane-workbook";
import { useLiveBlocks } from "../../parts/live-blocks/use-live-blocks";
import { givenTo } from "./given";
import { allBlocks } from "./shown-blocks";
import { HerdView } from "./view";

/** The tables behind the figures of the screen. */
const TABLES = ["Cows", "Findings", "Scores", "Targets"] as const;

/** The herd over a time, fed by the workbook. */
export function Herd(workbook: WorkbookWith<"tables">) {
  const [state, dispatch] = useLiveBlocks(workbook, {
    tables: TABLES,
    blocks: allBlocks,
    given: (block, { typed }) => givenTo(block, typed, workbook.today()),
  });
  return <HerdView state={state} workbook={workbook} dispatch={dispatch} />;
}
