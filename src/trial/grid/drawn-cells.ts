import { type ICellDataForSheetInterceptor, type Nullable, Worksheet } from "@univerjs/core";
import { Scene } from "@univerjs/preset-sheets-core";
import { cellNumber } from "../../xlsx/address";

type Cell = Nullable<ICellDataForSheetInterceptor>;

/** What the cells of each sheet hold and look like in the picture that is being drawn; undefined between pictures. */
let drawn: Map<Worksheet, Map<number, Cell>> | undefined;
let areCellsKept = false;

/**
 * For one picture the grid asks eight times and more what a cell looks like, and works through number formats, rules
 * and conditional formats each time, which is most of its drawing. No cell changes while a picture is drawn: each is
 * asked once. Call before a grid is made; further calls change nothing.
 */
export function keepCellsWhileDrawing(): void {
  if (areCellsKept) return;
  areCellsKept = true;
  const { render } = Scene.prototype;
  Scene.prototype.render = function (this: Scene, ...context) {
    // A picture within a picture belongs to it.
    if (drawn !== undefined) return render.apply(this, context);
    drawn = new Map();
    try {
      render.apply(this, context);
    } finally {
      drawn = undefined;
    }
  };
  const { getCell } = Worksheet.prototype;
  Worksheet.prototype.getCell = function (this: Worksheet, row, column) {
    if (drawn === undefined || column < 0) return getCell.call(this, row, column);
    const cells = cellsOf(drawn, this);
    const key = cellNumber(row, column);
    const known = cells.get(key);
    if (known !== undefined) return known;
    // Null rather than undefined, so that blank cells are known too.
    const cell = getCell.call(this, row, column) ?? null;
    cells.set(key, cell);
    return cell;
  };
}

function cellsOf(sheets: Map<Worksheet, Map<number, Cell>>, sheet: Worksheet): Map<number, Cell> {
  const known = sheets.get(sheet);
  if (known !== undefined) return known;
  const cells = new Map<number, Cell>();
  sheets.set(sheet, cells);
  return cells;
}
