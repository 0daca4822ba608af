import type { SheetModel } from "../../xlsx/model";
import type { CellEdit } from "../book-host";
import { cellPosition } from "../cell-address";
import { areaText, holds } from "../plain-book";
import { cellCalculated, cellChanged, cellsMerged, headingInTable, sheetProtected } from "../table-error";
import type { FileBook } from "./file-book";
import type { SheetCells } from "./sheet-cells";

/** The cells of the sheet of an edit, once it is sure that the cell may be changed. */
export function editableCell(book: FileBook, sheet: SheetModel, { address, was }: CellEdit): SheetCells {
  const { name } = sheet;
  const { row, column } = cellPosition(address);
  if (book.isProtected(name)) throw sheetProtected(name);
  const merge = sheet.merges.find((area) => holds(area, row, column));
  const isHidden = merge !== undefined && (merge.firstRow !== row || merge.firstColumn !== column);
  if (isHidden) throw cellsMerged(name, areaText(merge));
  const headed = sheet.tables.find(
    ({ area, hasHeadings }) => hasHeadings && area.firstRow === row && holds(area, row, column),
  );
  if (headed !== undefined) throw headingInTable(headed.name, address);
  const cells = book.cells(sheet);
  const cell = cells.at(row, column);
  if (cell?.formula !== undefined || cell?.spilled === true) throw cellCalculated(name, address);
  const plain = cells.plain(row, column);
  const is = typeof plain === "string" && plain.trim() === "" ? null : plain;
  if (is !== was) throw cellChanged(name, address, was, is);
  return cells;
}
