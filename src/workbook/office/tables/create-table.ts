import { ISO_DATE } from "../../number-format";
import { plainValue } from "../../saving/row-match";
import type { StandingCell } from "../../saving/written-block";
import { nameTaken } from "../../table-error";
import { isDay, type NewTable } from "../../table-port";
import { enteredValue } from "./cells";
import type { ExcelTable } from "./describe";
import { make, type Making, siteAt } from "./make";
import type { RunExcel } from "./run";
import { rangeOf, type Site } from "./site";

export async function createTable(run: RunExcel, table: NewTable): Promise<void> {
  const { sheet, address = "A1", columns, rows } = table;
  await make(run, siteAt(sheet, address, Math.max(1, rows.length) + 1, columns.length), new TableWriting(table));
}

/** A table that is being made, and what it changes besides the contents of its cells. */
class TableWriting implements Making {
  private formats: unknown[][] | undefined;

  constructor(private readonly table: NewTable) {}

  get meant(): readonly (readonly StandingCell[])[] {
    const { columns, rows } = this.table;
    const body = rows.length === 0 ? [{}] : rows;
    return [
      columns.map(({ heading }) => heading),
      ...body.map((row) =>
        columns.map(({ heading, formula }) => (formula === undefined ? plainValue(row[heading] ?? null) : { formula })),
      ),
    ];
  }

  check(tables: readonly ExcelTable[]): void {
    const { name } = this.table;
    if (tables.some(({ info }) => info.name.toLowerCase() === name.toLowerCase())) throw nameTaken(name);
  }

  async prepare(context: Excel.RequestContext, site: Site): Promise<void> {
    this.formats = undefined;
    if (site.isNew) return;
    const range = rangeOf(context, site);
    range.load("numberFormat");
    await context.sync();
    this.formats = range.numberFormat;
  }

  begin(): void {
    // A table is made once or not at all: nothing is noted of it.
  }

  queue(context: Excel.RequestContext, site: Site): void {
    const { name, columns, rows } = this.table;
    const range = rangeOf(context, site);
    const bodyRows = Math.max(1, rows.length);
    range.values = [
      columns.map(({ heading }) => enteredValue(heading)),
      ...Array.from({ length: bodyRows }, (_, at) =>
        columns.map(({ heading, formula }) =>
          formula === undefined ? enteredValue(rows[at]?.[heading] ?? undefined) : null,
        ),
      ),
    ];
    const formats = columns.map(
      ({ heading, numberFormat }) => numberFormat ?? (rows.some((row) => isDay(row[heading])) ? ISO_DATE : null),
    );
    range.numberFormat = [columns.map(() => null), ...Array.from({ length: bodyRows }, () => formats)];
    const { tables } = context.workbook.worksheets.getItem(site.sheet);
    const table = tables.add(range, true);
    table.name = name;
    if (columns.some(({ formula }) => formula !== undefined)) {
      const formulas = columns.map(({ formula }) => (formula === undefined ? null : `=${formula}`));
      table.getDataBodyRange().formulas = Array.from({ length: bodyRows }, () => formulas);
    }
  }

  /** It may not have come to its name: what tells it is its place, and its headings. */
  isOwn({ info, row, column }: ExcelTable, { sheet, at }: Site): boolean {
    const { columns } = this.table;
    return (
      info.sheet === sheet &&
      row - 1 === at.row &&
      column === at.column &&
      info.columns.length === columns.length &&
      info.columns.every(({ heading }, index) => heading === columns[index]?.heading)
    );
  }

  clearAway(context: Excel.RequestContext, site: Site): Promise<void> {
    if (this.formats !== undefined) rangeOf(context, site).numberFormat = this.formats;
    return Promise.resolve();
  }
}
