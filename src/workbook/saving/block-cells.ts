import { type CellLook, LOOKS } from "../look";
import { ISO_DATE } from "../number-format";
import { type BlockCell, type FormulaCell, isDay, type StyledCell, type TypedValue } from "../table-port";

/** What a cell of a block is to look like. */
export interface CellStyle {
  readonly numberFormat?: string;
  readonly look?: CellLook;
}

/** What is written into a cell of a block; null where nothing is. */
export function contentOf(cell: BlockCell): TypedValue | { readonly formula: string } {
  if (!isStyled(cell)) return cell;
  return "formula" in cell ? { formula: cell.formula } : cell.value;
}

export function styleOf(cell: BlockCell): CellStyle {
  const content = contentOf(cell);
  const usual = isDay(content) ? { numberFormat: ISO_DATE } : {};
  if (!isStyled(cell)) return usual;
  const { look, alignRight, numberFormat } = cell;
  const aligned = alignRight === true ? ({ horizontal: "right" } as const) : {};
  return {
    ...usual,
    ...(numberFormat === undefined ? {} : { numberFormat }),
    ...(look === undefined && alignRight === undefined
      ? {}
      : { look: { ...(look === undefined ? {} : LOOKS[look]), ...aligned } }),
  };
}

/** Whether a block changes the cell: what it holds, or only how it looks. */
export function isWritten(cell: BlockCell): boolean {
  const { numberFormat, look } = styleOf(cell);
  return contentOf(cell) !== null || numberFormat !== undefined || look !== undefined;
}

/** Whether the cell is more than a bare value. */
function isStyled(cell: BlockCell): cell is FormulaCell | StyledCell {
  return typeof cell === "object" && cell !== null && ("formula" in cell || "value" in cell);
}
