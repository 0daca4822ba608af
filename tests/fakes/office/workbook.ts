import { cellPosition } from "../../../src/workbook/cell-address";
import type { FakeArea, FakeDocument, FakeSheet } from "./document";
import { HostError } from "./entry";
import { type FakeRange, rangeAt } from "./range";
import { FakeContext, Proxy } from "./strict";
import { FakeTables } from "./tables";

export class FakeWorksheet extends Proxy<FakeSheet> {
  protected readonly readers = { name: ({ name }: FakeSheet) => name, id: ({ id }: FakeSheet) => id };
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

  getRange(address: string): FakeRange {
    const { row, column } = cellPosition(address);
    return this.getRangeByIndexes(row, column, 1, 1);
  }

  delete(): void {
    this.do((sheet) => {
      const { document } = this.context;
      document.sheets.splice(document.sheets.indexOf(sheet), 1);
      const left = document.tables.filter((table) => table.sheet !== sheet);
      document.tables.splice(0, document.tables.length, ...left);
    });
  }
}

class FakeProtection extends Proxy<FakeSheet> {
  protected readonly readers = { protected: (sheet: FakeSheet) => sheet.protected };
  get protected(): unknown {
    return this.read("protected");
  }
}

class FakeWorksheets {
  constructor(private readonly context: FakeContext) {}

  private find(name: string): FakeSheet | undefined {
    return this.context.document.sheets.find((sheet) => sheet.name === name || sheet.id === name);
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
