import type { FunctionCall, SelectedCell, Unwatch, WorkbookPort } from "../port";
import { watchSelection } from "./selection";

/** The workbook open in Excel. */
export class OfficePort implements WorkbookPort {
  watchSelection(listener: (cell: SelectedCell | undefined) => void): Unwatch {
    return watchSelection(listener);
  }

  /** What reads formulas is large, and asked for by one screen: it comes with the first formula. */
  async readCalls(cell: SelectedCell): Promise<readonly FunctionCall[]> {
    if (cell.formula === undefined) return [];
    const { readCalls } = await import(/* webpackChunkName: "formulas" */ "./read-calls");
    return readCalls(cell);
  }
}
