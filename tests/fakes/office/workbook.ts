import { cellPosition, SHEET_COLUMNS, SHEET_ROWS } from "../../../src/workbook/cell-address";
import type { FakeArea, FakeDocument, FakeSheet } from "./document";
import { FakeCharts } from "./charts";
import { type FakeCell, HostError } from "./entry";
import { FakeRange, rangeAt } from "./range";
import { FakeContext, Proxy } from "./strict";
import { FakeTables } from "./tables";

export class FakeWorksheet extends Proxy<FakeSheet> {
  protected readonly readers = {
    name: ({ name }: FakeSheet) => name,
    id: ({ id }: FakeSheet) => id,
    visibility: visibilityOf,
  };
  get visibility(): unknown {
    return this.read("visibility");
  }
  get name(): unknown {
    return this.read("name");
  }
  get id(): unknown {
    return this.read("id");
  }

  get protection(): FakeProtection {
    return new FakeProtection(this.context, () => this.host);
  }

  get tables(): FakeTables {
    return new FakeTables(this.context, () => this.host);
  }

  getRangeByIndexes(row: number, column: number, rows: number, columns: number): FakeRange {
    return rangeAt(this.context, (): FakeArea => {
      if (row < 0 || column < 0 || rows < 1 || columns < 1) throw new HostError("InvalidArgument");
      return { sheet: this.host, row, column, rows, columns };
    });
  }

  /** The whole sheet where no address is given. */
  getRange(address?: string): FakeRange {
    if (address === undefined) return this.getRangeByIndexes(0, 0, SHEET_ROWS, SHEET_COLUMNS);
    const [first = "", last = first] = address.split(":");
    const { row, column } = cellPosition(first);
    const end = cellPosition(last);
    return this.getRangeByIndexes(row, column, end.row - row + 1, end.column - column + 1);
  }

  get charts(): FakeCharts {
    return new FakeCharts(this.context, () => this.host);
  }

  getUsedRangeOrNullObject(valuesOnly = false): FakeRange {
    return new FakeRange(this.context, () => usedArea(this.host, valuesOnly), "orNull");
  }

  activate(): void {
    this.do((sheet) => {
      if (sheet.hidden) throw new HostError("InvalidOperation", "the sheet is hidden");
    });
  }

  delete(): void {
    this.do((sheet) => this.context.document.removeSheet(sheet));
  }
}

class FakeProtection extends Proxy<FakeSheet> {
  protected readonly readers = { protected: (sheet: FakeSheet) => sheet.protected };
  get protected(): unknown {
    return this.read("protected");
  }
}

function visibilityOf({ hidden }: FakeSheet): string {
  return hidden ? "Hidden" : "Visible";
}

/** The block that takes in every cell that holds something; a format alone counts too, as in Excel. */
function usedArea(sheet: FakeSheet, valuesOnly: boolean): FakeArea | undefined {
  const columnsOf = (cells: ReadonlyMap<number, FakeCell>): number[] =>
    [...cells].flatMap(([column, { value }]) => (valuesOnly && value === "" ? [] : [column]));
  const rows = [...sheet.cells].filter(([, cells]) => columnsOf(cells).length > 0);
  if (rows.length === 0) return undefined;
  const columns = [...new Set(rows.flatMap(([, cells]) => columnsOf(cells)))];
  const [row, column] = [Math.min(...rows.map(([at]) => at)), Math.min(...columns)];
  return {
    sheet,
    row,
    column,
    rows: Math.max(...rows.map(([at]) => at)) - row + 1,
    columns: Math.max(...columns) - column + 1,
  };
}

class FakeNames extends Proxy<FakeDocument> {
  protected readonly readers = { "items/name": () => [] };
  get items(): readonly { readonly name: string }[] {
    return this.read("items/name") as [];
  }
}

class FakeWorksheets extends Proxy<FakeDocument> {
  protected readonly readers = {
    "items/name": ({ sheets }: FakeDocument) => [...sheets],
    "items/visibility": ({ sheets }: FakeDocument) => sheets.map(visibilityOf),
  };

  constructor(context: FakeContext) {
    super(context, () => context.document, "known");
  }

  get items(): readonly FakeWorksheet[] {
    const sheets = this.read("items/name") as FakeSheet[];
    return sheets.map((sheet) =>
      new FakeWorksheet(this.context, () => sheet, "known").remember({
        name: sheet.name,
        visibility: visibilityOf(sheet),
      }),
    );
  }

  private find(name: string): FakeSheet | undefined {
    return this.context.document.findSheet(name);
  }

  getItem(name: string): FakeWorksheet {
    return new FakeWorksheet(this.context, () => this.find(name));
  }

  getItemOrNullObject(name: string): FakeWorksheet {
    return new FakeWorksheet(this.context, () => this.find(name), "orNull");
  }

  add(name: string): FakeWorksheet {
    return new FakeWorksheet(this.context, () => this.context.document.addSheet(name));
  }
}

/** Runs work as `Excel.run` does, for one user of a document. */
export function fakeRun(document: FakeDocument, actor: unknown) {
  return async <T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> => {
    const context = new FakeContext(document, actor);
    const workbook = {
      worksheets: new FakeWorksheets(context),
      get names() {
        return new FakeNames(context, () => document, "known");
      },
      get tables() {
        return new FakeTables(context, () => "workbook" as const);
      },
    };
    const request = { workbook, sync: () => context.sync(), fake: context };
    const result = await work(request as unknown as Excel.RequestContext);
    if (context.pending > 0) document.misuse("commands were left unsent");
    return result;
  };
}
