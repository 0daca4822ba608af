import "./costs.css";
import "../../parts/pictures/pictures.css";
import { blocksOf } from "../../../blocks/gallery";
import type { WorkbookWith } from "../../pane-workbook";
import { useLiveBlocks } from "../../parts/live-blocks/use-live-blocks";
import { milkPriceOf } from "../cells/milk-price";
import { givenTo } from "./given";
import { CostsView } from "./view";

/** The tables behind the figures of the screen. */
const TABLES = ["Findings", "Costs", "Tests", "Prices"] as const;
const blocks = blocksOf("costs");

/** Costs, fed by the workbook. */
export function Costs(workbook: WorkbookWith<"tables">) {
  const asOf = workbook.today();
  const [state, dispatch] = useLiveBlocks(workbook, {
    tables: TABLES,
    blocks,
    given(block, { typed, reading }) {
      const tables = reading.kind === "read" ? reading.herd.tables : undefined;
      return givenTo(block, typed, asOf, milkPriceOf(tables?.get("Prices")));
    },
  });
  return <CostsView state={state} asOf={asOf} workbook={workbook} dispatch={dispatch} />;
}
