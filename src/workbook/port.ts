/**
 * The narrow port through which the pane sees a workbook, whatever host it is open in. Everything that crosses it is
 * plain data, so that a host may live in another process. Each adapter implements it in its own way.
 */

/** What one cell holds: an error is its text ("#N/A"), a blank is null, a day is its serial number. */
export type PlainCell = number | string | boolean | null;

/** What a function is handed for one argument: a cell, or a range row by row. */
export type PlainArgument = PlainCell | readonly (readonly PlainCell[])[];

/** A cell by the name of its sheet and its address, such as "D5". */
export interface CellPlace {
  readonly sheet: string;
  readonly address: string;
}

/** Where a cell lies in a result that fills several cells. Row and column count from 0. */
export interface SpillPlace {
  /** Address of the cell that holds the formula, on the same sheet. */
  readonly anchor: string;
  readonly row: number;
  readonly column: number;
}

/** The cell that the user has selected; the first one of a selected range. */
export interface SelectedCell extends CellPlace {
  /** Formula as typed, with "="; of a cell filled from elsewhere, the formula of its anchor. Absent where there is none. */
  readonly formula?: string;
  /** The value as the sheet shows it; "" for a blank. */
  readonly shown: string;
  /** Present where the value was filled in by the formula of another cell. */
  readonly spill?: SpillPlace;
}

/** One call of one of our functions inside a formula. */
export interface FunctionCall {
  /** Name without the namespace, such as "CELL.SCORE". */
  readonly functionId: string;
  /** The arguments as the formula writes them: "[@Count]", "Rules[#All]". */
  readonly argumentTexts: readonly string[];
  /** The arguments as the function was handed them; absent where the host cannot tell. */
  readonly rawArguments?: readonly PlainArgument[];
  /** The function's message where it returned an error. */
  readonly errorMessage?: string;
}

/** Ends a watch. */
export type Unwatch = () => void;

export interface WorkbookPort {
  /**
   * Calls back at once with the selected cell, and again whenever another cell is selected or the workbook was
   * recalculated. `undefined`: no cell is selected, or no workbook is open.
   */
  watchSelection(listener: (cell: SelectedCell | undefined) => void): Unwatch;

  /** The calls of our functions in the formula of a cell, outermost first and from left to right. */
  readCalls(cell: SelectedCell): Promise<readonly FunctionCall[]>;
}
