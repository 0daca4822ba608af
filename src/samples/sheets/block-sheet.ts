import type { Block } from "../../blocks/block";
import type { BlockArea, LaidOutCell, LaidOutChart } from "../../blocks/laid-out";
import { layOutBlock, type LayoutOptions } from "../../blocks/layout";
import { LOOKS } from "../../workbook/look";
import { areaAddress, cellAddress } from "../../xlsx/address";
import type { CellStyle } from "../../xlsx/model";
import type { NewChart, NewContent, NewSheet } from "../../xlsx/write-model";
import { ACCENTS, COLOURS, withFormat } from "../look";
import { ALIGNED, Page } from "../page";

/** Room for headings of two lines. */
const HEADING_HEIGHT = 31;

/** A sheet that holds one block, from its first cell on. */
export function blockSheet(
  name: string,
  block: Block,
  options: Omit<LayoutOptions, "at">,
  tabColour: string = COLOURS.deep,
): NewSheet {
  const page = new Page(name, block.title, block.about);
  const { cells, charts, columnWidths } = layOutBlock(block, { ...options, at: { row: 0, column: 0 } });
  putCells(page, cells, { row: 0, column: 0 });
  for (const chart of charts) page.chart(chartOn(name, chart, { row: 0, column: 0 }));
  return page.sheet({ tabColour, widths: columnWidths, frozenRows: 2, print: { landscape: true, pagesDown: 1 } });
}

interface Place {
  readonly row: number;
  readonly column: number;
}

/** Puts the cells of a laid out block on a page, its first cell at `at`. */
export function putCells(page: Page, cells: readonly (readonly (LaidOutCell | null)[])[], at: Place): void {
  cells.forEach((row, down) =>
    row.forEach((cell, across) => {
      if (cell !== null) page.put(cellAddress(at.row + down, at.column + across), contentOf(cell), styleOf(cell));
    }),
  );
  cells.forEach((row, down) => {
    if (row.some((cell) => cell?.look === "heading")) page.height(at.row + down + 1, HEADING_HEIGHT);
  });
}

function contentOf({ formula, value = null, fills }: LaidOutCell): NewContent {
  if (formula === undefined) return value;
  return fills === true ? { formula, fills } : { formula };
}

function styleOf({ look, numberFormat, alignRight }: LaidOutCell): CellStyle {
  const aligned = alignRight === true ? { ...LOOKS[look], ...ALIGNED.number } : LOOKS[look];
  const upright = look === "heading" ? ({ ...aligned, vertical: "middle" } as const) : aligned;
  return withFormat(upright, numberFormat);
}

/** The picture of a laid out block as a chart of the sheet. */
function chartOn(sheet: string, { chart, categories, series, over, description }: LaidOutChart, at: Place): NewChart {
  const range = (area: BlockArea): string => `'${sheet.replace(/'/g, "''")}'!${absolute(moved(area, at))}`;
  return {
    type: chart.type === "bars" ? "columns" : chart.type,
    title: chart.title,
    description,
    over: areaAddress(moved(over, at)),
    categories: range(categories),
    ...(chart.categoryFormat === undefined ? {} : { categoryFormat: chart.categoryFormat }),
    valueTitle: chart.valueTitle,
    valueFormat: chart.valueFormat,
    series: series.map(({ name, values }, place) => ({
      name: range(name),
      values: range(values),
      colour: ACCENTS[place % ACCENTS.length]!,
      ...(chart.type === "lines" && place > 0 ? { dashed: true as const } : {}),
    })),
  };
}

function moved({ firstRow, firstColumn, lastRow, lastColumn }: BlockArea, { row, column }: Place): BlockArea {
  return {
    firstRow: firstRow + row,
    firstColumn: firstColumn + column,
    lastRow: lastRow + row,
    lastColumn: lastColumn + column,
  };
}

function absolute(area: BlockArea): string {
  return areaAddress(area).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
}
