import { bodyArea, type FakeArea, type FakeSheet, type FakeTable, tableArea } from "./document";
import { HostError } from "./entry";
import { FakeRange, rangeAt } from "./range";
import { FakeHandlers, Proxy } from "./strict";
import { deleteTableRow, insertTableRows } from "./table-rows";
import { FakeWorksheet } from "./workbook";

/** Excel takes names that differ only in case for the same. */
function isNamed(table: FakeTable, name: string): boolean {
  return table.name.toLowerCase() === name.toLowerCase();
}

export class FakeTableProxy extends Proxy<FakeTable> {
  protected readonly readers = {
    id: ({ id }: FakeTable) => id,
    name: ({ name }: FakeTable) => name,
    showTotals: ({ totals }: FakeTable) => totals,
  };

  get id(): unknown {
    return this.read("id");
  }
  get name(): unknown {
    return this.read("name");
  }
  set name(name: unknown) {
    this.do((table) => {
      const taken = this.context.document.tables.some((other) => other !== table && isNamed(other, String(name)));
      if (taken) throw new HostError("InvalidArgument", "the name is taken");
      table.name = String(name);
    });
  }
  get showTotals(): unknown {
    return this.read("showTotals");
  }

  get worksheet(): FakeWorksheet {
    return new FakeWorksheet(this.context, () => this.host.sheet);
  }

  get columns(): FakeColumns {
    return new FakeColumns(this.context, () => this.host);
  }

  get autoFilter(): FakeAutoFilter {
    return new FakeAutoFilter(this.context, () => this.host);
  }

  get rows(): FakeRows {
    return new FakeRows(this.context, () => this.host);
  }

  getDataBodyRange(): FakeRange {
    return rangeAt(this.context, () => bodyArea(this.host));
  }

  getRange(): FakeRange {
    return rangeAt(this.context, () => tableArea(this.host));
  }

  resize(range: FakeRange): void {
    this.do((table) => {
      const { document } = this.context;
      document.refuseProtected(table.sheet);
      const { sheet, row, column, rows, columns } = range.host;
      const bodyRows = rows - 1 - (table.totals ? 1 : 0);
      const fits = sheet === table.sheet && row === table.row && column === table.column && columns === table.width;
      if (!fits || bodyRows < 1) throw new HostError("InvalidArgument", "the table does not fit the range");
      if (bodyRows > table.bodyRows) document.grow(table, bodyRows - table.bodyRows);
      else table.bodyRows = bodyRows;
      this.context.noteEvent({ type: "changed", table });
    });
  }

  convertToRange(): FakeRange {
    const range = this.getRange();
    this.delete();
    return range;
  }

  delete(): void {
    this.do((table) => {
      const { document } = this.context;
      document.refuseProtected(table.sheet);
      document.tables.splice(document.tables.indexOf(table), 1);
      this.context.noteEvent({ type: "deleted", table });
    });
  }
}

class FakeColumns extends Proxy<FakeTable> {
  protected readonly readers = {
    "items/name": ({ sheet, row, column, width }: FakeTable) =>
      Array.from({ length: width }, (_, at) => ({ name: String(sheet.cell(row, column + at).value) })),
  };
  get items(): unknown {
    return this.read("items/name");
  }
}

class FakeAutoFilter extends Proxy<FakeTable> {
  protected readonly readers = { isDataFiltered: ({ filtered }: FakeTable) => filtered };
  get isDataFiltered(): unknown {
    return this.read("isDataFiltered");
  }
}

class FakeRows extends Proxy<FakeTable> {
  protected readonly readers = { count: ({ bodyRows }: FakeTable) => bodyRows };
  get count(): unknown {
    return this.read("count");
  }

  getItemAt(index: number): { delete(): void } {
    const table = (): FakeTable => this.host;
    const { context } = this;
    return {
      delete: () =>
        context.add({
          run: () => {
            deleteTableRow(context.document, table(), index);
            context.noteEvent({ type: "changed", table: table() });
          },
        }),
    };
  }

  add(index: number | null | undefined, values: unknown[][]): void {
    this.do((table) => {
      const { document } = this.context;
      const at = index ?? table.bodyRows;
      if (values.some((row) => row.length !== table.width)) throw new HostError("InvalidArgument");
      insertTableRows(document, table, at, values.length);
      const area: FakeArea = { ...bodyArea(table), row: table.row + 1 + at, rows: values.length };
      document.enter(area, values);
      this.context.noteEvent({ type: "changed", table });
    });
  }
}

type TableEventArgs = { readonly tableId: string; readonly source: "Local" | "Remote"; readonly type: string };

export class FakeTables extends Proxy<FakeSheet | "workbook"> {
  protected readonly readers = {
    "items/id": () => this.all(),
    "items/name": () => this.all().map(({ name }) => name),
    "items/showTotals": () => this.all().map(({ totals }) => totals),
  };

  private all(): readonly FakeTable[] {
    const { tables } = this.context.document;
    return this.host === "workbook" ? [...tables] : tables.filter(({ sheet }) => sheet === this.host);
  }

  private find(key: string): FakeTable | undefined {
    return this.all().find((table) => table.id === key || isNamed(table, key));
  }

  get items(): readonly FakeTableProxy[] {
    const [tables, names, totals] = ["id", "name", "showTotals"].map((name) => this.read(`items/${name}`)) as [
      FakeTable[],
      string[],
      boolean[],
    ];
    return tables.map((table, at) =>
      new FakeTableProxy(this.context, () => table, "known").remember({
        id: table.id,
        name: names[at],
        showTotals: totals[at],
      }),
    );
  }

  getItem(key: string): FakeTableProxy {
    return new FakeTableProxy(this.context, () => this.find(key));
  }

  getItemOrNullObject(key: string): FakeTableProxy {
    return new FakeTableProxy(this.context, () => this.find(key), "orNull");
  }

  add(address: string | FakeRange, hasHeaders: boolean): FakeTableProxy {
    if (!hasHeaders) this.context.document.misuse("a table is made without its headings");
    return new FakeTableProxy(this.context, () => {
      if (typeof address === "string") this.context.document.misuse("tables are made of ranges here");
      const table = this.context.document.addTable(address.host);
      this.context.noteEvent({ type: "added", table });
      return table;
    });
  }

  private handlers(type: "changed" | "added" | "deleted"): FakeHandlers<TableEventArgs> {
    return new FakeHandlers(this.context, type, ({ table }, source) => ({ tableId: table.id, source, type }));
  }

  readonly onChanged = this.handlers("changed");
  readonly onAdded = this.handlers("added");
  readonly onDeleted = this.handlers("deleted");
}
