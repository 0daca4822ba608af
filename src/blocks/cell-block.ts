import { cellAddress, type CellPosition } from "../workbook/cell-address";
import { isDateFormat } from "../workbook/number-format";
import type { BlockCell, CellBlock } from "../workbook/table-port";
import type { LaidOutBlock, LaidOutCell } from "./laid-out";

/** A laid out block as the table port writes it. `at` is the place it was laid out for. */
export function cellBlockOf(
  { cells, room, columnWidths, charts }: LaidOutBlock,
  sheet: string,
  at: CellPosition,
): CellBlock {
  const width = Math.max(...cells.map((row) => row.length));
  return {
    sheet,
    address: cellAddress(at),
    cells: cells.map((row) => Array.from({ length: width }, (_, column) => blockCell(row[column] ?? null))),
    room,
    columnWidths,
    charts: charts.map(({ chart, categories, series, over, description }) => ({
      type: chart.type,
      title: chart.title,
      altText: description,
      categories,
      series: series.map(({ heading, values }) => ({ name: heading, values })),
      place: over,
    })),
  };
}

function blockCell(cell: LaidOutCell | null): BlockCell {
  if (cell === null) return null;
  const { formula, value = null, numberFormat, look, alignRight } = cell;
  const style = {
    look,
    ...(alignRight === true ? { alignRight } : {}),
    ...(numberFormat === undefined ? {} : { numberFormat }),
  };
  if (formula !== undefined) return { formula, ...style };
  const isADay = typeof value === "number" && numberFormat !== undefined && isDateFormat(numberFormat);
  return { value: isADay ? { day: value } : value, ...style };
}
