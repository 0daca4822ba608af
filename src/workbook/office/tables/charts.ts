import type { CellPosition } from "../../cell-address";
import type { BlockArea, BlockChart, CellBlock } from "../../table-port";

const TYPES = {
  lines: "Line",
  columns: "ColumnClustered",
  "stacked columns": "ColumnStacked",
  bars: "BarClustered",
} as const satisfies Record<BlockChart["type"], string>;

/** Names by which the charts of a block are found again: no two blocks begin in one cell. */
export function chartNames({ sheet, address, charts = [] }: CellBlock): string[] {
  return charts.map(({ title }, index) => `${title} (${sheet} ${address}, ${index + 1})`);
}

/** Excel gives add-ins no way to set the alternative text of a chart: its title says what it shows. */
export function queueCharts(context: Excel.RequestContext, block: CellBlock, first: CellPosition): void {
  const { sheet: name, charts = [] } = block;
  const names = chartNames(block);
  const sheet = context.workbook.worksheets.getItem(name);
  const range = ({ firstRow, firstColumn, lastRow, lastColumn }: BlockArea): Excel.Range =>
    sheet.getRangeByIndexes(
      first.row + firstRow,
      first.column + firstColumn,
      lastRow - firstRow + 1,
      lastColumn - firstColumn + 1,
    );
  charts.forEach(({ type, title, categories, series, place }, index) => {
    const [leading, ...others] = series;
    const chart = sheet.charts.add(TYPES[type], range(leading?.values ?? categories), "Columns");
    chart.name = names[index]!;
    chart.title.text = title;
    chart.setPosition(
      range({ ...place, lastRow: place.firstRow, lastColumn: place.firstColumn }),
      range({ ...place, firstRow: place.lastRow, firstColumn: place.lastColumn }),
    );
    const drawn = [
      { one: leading, item: chart.series.getItemAt(0) },
      ...others.map((one) => ({ one, item: chart.series.add(one.name) })),
    ];
    for (const { one, item } of drawn) {
      if (one === undefined) continue;
      item.name = one.name;
      item.setValues(range(one.values));
      item.setXAxisValues(range(categories));
    }
  });
}

export async function deleteCharts(
  context: Excel.RequestContext,
  sheet: string,
  names: readonly string[],
): Promise<void> {
  if (names.length === 0) return;
  const charts = names.map((name) => {
    const chart = context.workbook.worksheets.getItem(sheet).charts.getItemOrNullObject(name);
    chart.load("name");
    return chart;
  });
  await context.sync();
  for (const chart of charts) if (!chart.isNullObject) chart.delete();
}
