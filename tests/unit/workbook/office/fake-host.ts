import { areaOf, type FakeBook, FakeContext, FakeObject, type FakeSheet } from "./fake-excel";
import { FakeRange, FakeTableObject, FakeWorksheet, namesOf } from "./fake-objects";

class FakeFunctionResult extends FakeObject<number> {
  protected read(value: number, name: string): unknown {
    if (name !== "value") throw new Error(`the fake knows no result.${name}`);
    return value;
  }
  get value(): unknown {
    return this.property("value");
  }
}

function sheetOf({ sheets }: FakeBook, name: string): FakeSheet | null {
  return sheets.find((sheet) => sheet.name === name) ?? null;
}

class FakeRequestContext extends FakeContext {
  get workbook() {
    const { book } = this;
    return {
      getActiveCell: () => new FakeRange(this, () => areaOf(sheetOf(book, book.active.sheet)!, book.active.address)),
      worksheets: {
        getItem: (name: string) => new FakeWorksheet(this, () => sheetOf(book, name)),
        onCalculated: this.event("calculated"),
      },
      tables: {
        getItemOrNullObject: (name: string) =>
          new FakeTableObject(this, () => book.tables?.find((table) => table.name === name) ?? null, true),
      },
      names: namesOf(this, (name) => {
        if (!(name in (book.names ?? {}))) return null;
        const [sheet = "", address = ""] = book.names?.[name]?.split("!") ?? [];
        return sheet === "" ? {} : { area: areaOf(sheetOf(book, sheet)!, address) };
      }),
      functions: {
        today: () => new FakeFunctionResult(this, () => book.today ?? 0),
        // The only date that the tests ask for.
        date: (...parts: number[]) =>
          new FakeFunctionResult(this, () => (parts.join("-") === "2024-2-20" ? 45_342 : -1)),
      },
      onSelectionChanged: this.event("selection"),
    };
  }

  private event(name: string) {
    const listeners = this.listeners.get(name)!;
    return {
      add: (listener: () => unknown) => {
        this.queue(() => listeners.add(listener));
        return { context: this, remove: () => this.queue(() => listeners.delete(listener)) };
      },
    };
  }
}

/** Puts a fake Excel in the place of the real one. */
export class FakeHost {
  readonly listeners = new Map([
    ["selection", new Set<() => unknown>()],
    ["calculated", new Set<() => unknown>()],
  ]);
  readonly contexts: FakeContext[] = [];

  constructor(readonly book: FakeBook) {
    Object.assign(globalThis, { Excel: { run: this.run } });
  }

  readonly run = (options: unknown, batch: (context: FakeContext) => Promise<unknown>): Promise<unknown> => {
    if (options instanceof FakeContext) return batch(options);
    if (!(options as { delayForCellEdit?: boolean }).delayForCellEdit) throw new Error("a cell may be under edit");
    const context = new FakeRequestContext(this.book, this.listeners);
    this.contexts.push(context);
    return batch(context);
  };

  /** How often Excel was asked in all. */
  get syncs(): number {
    return this.contexts.reduce((sum, { syncs }) => sum + syncs, 0);
  }

  fire(event: "selection" | "calculated"): void {
    for (const listener of this.listeners.get(event)!) listener();
  }

  select(sheet: string, address: string): void {
    this.book.active = { sheet, address };
    this.fire("selection");
  }
}
