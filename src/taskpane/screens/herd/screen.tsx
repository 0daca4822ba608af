import "./herd.css";
import { blocksOf } from "../../../blocks/gallery";
import type { WorkbookWith } from "../../pane-workbook";
import { useLiveBlocks } from "../../parts/live-blocks/use-live-blocks";
import { givenTo } from "./given";
import { HerdView } from "./view";

/** The tables behind the figures of the screen. */
const TABLES = ["Cows", "Findings", "Scores", "Targets"] as const;
const blocks = blocksOf("herd");

/** The herd over a time, fed by the workbook. */
export function Herd(workbook: WorkbookWith<"tables">) {
  const [state, dispatch] = useLiveBlocks(workbook, {
    tables: TABLES,
    blocks,
    given: (block, { typed }) => givenTo(block, typed, workbook.today()),
  });
  return <HerdView state={state} blocks={blocks} workbook={workbook} dispatch={dispatch} />;
}
