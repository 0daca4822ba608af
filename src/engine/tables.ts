import type { IRange } from "@univerjs/core";

/** A table as formulas refer to it. */
export interface EngineTable {
  readonly name: string;
  /** Name made of letters only, under which the engine's own parser can be handed the table. */
  readonly alias: string;
  readonly sheetId: string;
  /** Headings and rows. */
  readonly range: IRange;
  readonly columns: readonly string[];
  /** Place of each column under its alias. */
  readonly titleMap: ReadonlyMap<string, number>;
}

/** The tables of every open workbook, by its id. The engine keeps them too, but cannot tell their names in any case. */
export class TableIndex {
  private readonly workbooks = new Map<string, Map<string, EngineTable>>();
  private readonly aliased = new Map<string, ReadonlyMap<string, EngineTable>>();
  private aliases = 0;

  set(workbookId: string, table: Omit<EngineTable, "alias" | "titleMap">): void {
    const tables = this.workbooks.get(workbookId) ?? new Map<string, EngineTable>();
    this.workbooks.set(workbookId, tables);
    const key = table.name.toUpperCase();
    const alias = tables.get(key)?.alias ?? aliasName(this.aliases++);
    const titleMap = new Map(table.columns.map((_, index) => [aliasColumn(index), index]));
    tables.set(key, { ...table, alias, titleMap });
    this.aliased.delete(workbookId);
  }

  remove(workbookId: string, name: string): void {
    this.workbooks.get(workbookId)?.delete(name.toUpperCase());
    this.aliased.delete(workbookId);
  }

  get(workbookId: string, name: string): EngineTable | undefined {
    return this.workbooks.get(workbookId)?.get(name.toUpperCase());
  }

  /** The workbook's tables by alias. */
  byAlias(workbookId: string): ReadonlyMap<string, EngineTable> {
    let tables = this.aliased.get(workbookId);
    if (tables === undefined) {
      tables = new Map([...(this.workbooks.get(workbookId)?.values() ?? [])].map((table) => [table.alias, table]));
      this.aliased.set(workbookId, tables);
    }
    return tables;
  }
}

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** HerdTableA, HerdTableB, ... HerdTableBA: too long for the name of a column. */
function aliasName(number: number): string {
  let letters = "";
  let rest = number;
  do {
    letters = LETTERS[rest % LETTERS.length]! + letters;
    rest = Math.floor(rest / LETTERS.length);
  } while (rest > 0);
  return `HerdTable${letters}`;
}

/** Name of a column under its table's alias. */
export function aliasColumn(index: number): string {
  return `c${index}`;
}
