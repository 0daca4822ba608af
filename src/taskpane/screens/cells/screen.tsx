import "./cells.css";
import "../../parts/pictures/pictures.css";
import { blocksOf } from "../../../blocks/gallery";
import type { WorkbookWith } from "../../pane-workbook";
import { useLiveBlocks } from "../../parts/live-blocks/use-live-blocks";
import { givenTo, isComputable, readFields } from "./given";
import { milkPriceOf } from "./milk-price";
import { CellsView } from "./view";

/** The tables behind the figures of the screen. */
const TABLES = ["Tests", "Prices", "Cows", "Scores"] as const;
const blocks = blocksOf("cells");

/** Cell counts, fed by the workbook. */
export function Cells(workbook: WorkbookWith<"tables">) {
  const [state, dispatch] = useLiveBlocks(workbook, {
    tables: TABLES,
    blocks,
    given(block, { typed, reading }) {
      const tables = reading.kind === "read" ? reading.herd.tables : undefined;
      const read = readFields(typed, milkPriceOf(tables?.get("Prices")));
      return isComputable(block, read) ? givenTo(block, read) : undefined;
    },
  });
  return <CellsView state={state} asOf={workbook.today()} workbook={workbook} dispatch={dispatch} />;
}
