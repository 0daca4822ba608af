import type { ColourReader } from "./colours";
import type { Styles } from "./styles";

/** What reading a sheet needs of the rest of the workbook. */
export interface SheetContext {
  readonly strings: readonly string[];
  readonly styles: Styles;
  readonly colour: ColourReader;
  /** Spells a stored formula as typed. */
  typed(formula: string): string;
  /** The same for the formula of a cell that is not marked as an array. */
  typedInOneCell(formula: string): string;
}
