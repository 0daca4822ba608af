import { addSheet } from "../../xlsx/edit/add-sheet";
import { addTable } from "../../xlsx/edit/add-table";
import { setWidths } from "../../xlsx/edit/column-widths";
import type { CellMark } from "../../xlsx/edit/mark-cells";
import { changed, type PackageChange } from "../../xlsx/change-package";
import type { WorkbookPackage } from "../../xlsx/package";
import { cellAddress, cellPosition, type CellPosition } from "../cell-address";
import { areaText } from "../plain-book";
import { areaFrom, meets } from "../plain-room";
import { needsTextMark } from "../plain-text";
import { type CellStyle, contentOf, isWritten, styleOf } from "../saving/block-cells";
import { plainValue } from "../saving/row-match";
import type { WidenedColumn } from "../saving/written-block";
import { cellsMerged, cellsOccupied, nameTaken, sheetProtected } from "../table-error";
import type { CellBlock, NewTable } from "../table-port";
import { markOf } from "./edit-table";
import type { FileBook } from "./file-book";
import type { CellInput, SheetCells } from "./sheet-cells";

/** A change of the file: it edits the cells of a book, and says what is to be done to the file besides. */
export interface Making {
  /** The file that the cells are in, with a new sheet where one is wanted. */
  readonly file: WorkbookPackage;
  /** What the file was read as, where cells are to be written that hold the same already. */
  readonly book?: FileBook;
  /** Checks and edits; throws where that is refused. */
  edit(book: FileBook): readonly CellMark[];
  /** What follows once the cells are in the file. */
  readonly finish?: PackageChange;
}

export function withSheet({ file, model }: FileBook, name: string): WorkbookPackage {
  if (model.sheets.some((sheet) => sheet.name === name)) return file;
  return changed(file, (changing) => addSheet(changing, name));
}

export function tableMaking(start: FileBook, table: NewTable, ids: readonly string[]): Making {
  const { name, sheet, address = "A1", columns, rows } = table;
  const at = cellPosition(address);
  const bodyRows = Math.max(1, rows.length);
  if (start.tables.some(({ info }) => info.name.toLowerCase() === name.toLowerCase())) throw nameTaken(name);
  return {
    file: withSheet(start, sheet),
    edit: (book) => {
      const cells = freeCells(book, sheet, at, bodyRows + 1, columns.length);
      const marks: CellMark[] = [];
      columns.forEach(({ heading, formula, numberFormat }, right) => {
        const column = at.column + right;
        cells.put(at.row, column, { value: heading });
        for (let index = 0; index < bodyRows; index++) {
          const [row, value] = [at.row + 1 + index, rows[index]?.[heading] ?? null];
          cells.put(row, column, formula === undefined ? { value: plainValue(value) } : { formula, value: null });
          const needed = formula === undefined ? markOf(value, numberFormat) : [];
          marks.push(...needed.map((mark) => ({ sheet, row, column, ...mark })));
          if (numberFormat !== undefined) marks.push({ sheet, row, column, numberFormat });
        }
      });
      return marks;
    },
    finish: (file) => {
      const area = {
        firstRow: at.row,
        firstColumn: at.column,
        lastRow: at.row + bodyRows,
        lastColumn: at.column + columns.length - 1,
      };
      addTable(file, { name, sheet, area, columns }, ids);
    },
  };
}

export function blockMaking(
  start: FileBook,
  { sheet, address, cells: block, room }: CellBlock,
  widened: readonly WidenedColumn[],
): Making {
  const at = cellPosition(address);
  const width = Math.max(...block.map((row) => row.length));
  return {
    file: withSheet(start, sheet),
    edit: (book) => {
      const rows = Math.max(block.length, room?.rows ?? 0);
      const cells = freeCells(book, sheet, at, rows, Math.max(width, room?.columns ?? 0));
      return block.flatMap((inputs, down) =>
        inputs.flatMap((input, right): CellMark[] => {
          const [row, column] = [at.row + down, at.column + right];
          const content = contentOf(input);
          if (content !== null) cells.put(row, column, inputOf(content));
          return isWritten(input) ? [{ sheet, row, column, ...styleMark(styleOf(input)), ...textMark(content) }] : [];
        }),
      );
    },
    finish: (file) => setWidths(file, sheet, widened),
  };
}

type Content = ReturnType<typeof contentOf>;

function inputOf(content: Content): CellInput {
  if (typeof content === "object" && content !== null && "formula" in content) return { ...content, value: null };
  return { value: plainValue(content) };
}

function styleMark({ look, numberFormat }: CellStyle): Pick<CellMark, "look" | "numberFormat"> {
  return { ...(numberFormat === undefined ? {} : { numberFormat }), ...(look === undefined ? {} : { look }) };
}

function textMark(content: Content): Pick<CellMark, "asText"> {
  return typeof content === "string" && needsTextMark(content) ? { asText: true } : {};
}

/** The cells of a sheet, once it is sure that a block of them is free. */
function freeCells(book: FileBook, name: string, at: CellPosition, rows: number, columns: number): SheetCells {
  const sheet = book.model.sheets.find((known) => known.name === name)!;
  if (book.isProtected(name)) throw sheetProtected(name);
  const cells = book.cells(sheet);
  for (let row = at.row; row < at.row + rows; row++) {
    for (let column = at.column; column < at.column + columns; column++) {
      const inTable = sheet.tables.some(
        ({ area }) =>
          row >= area.firstRow && row <= area.lastRow && column >= area.firstColumn && column <= area.lastColumn,
      );
      if (inTable || cells.isUsed(row, column)) throw cellsOccupied(name, cellAddress({ row, column }));
    }
  }
  const merge = sheet.merges.find(meets(areaFrom(at, rows, columns)));
  if (merge !== undefined) throw cellsMerged(name, areaText(merge));
  return cells;
}
