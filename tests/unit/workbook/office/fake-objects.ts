import {
  addressOf,
  type Area,
  areaOf,
  type FakeContext,
  FakeObject,
  type FakeSheet,
  type FakeTable,
} from "./fake-excel";

export class FakeRange extends FakeObject<Area> {
  protected read(area: Area, name: string): unknown {
    const { sheet, row, column, rows, columns } = area;
    switch (name) {
      case "address":
        return `${/\W/.test(sheet.name) ? `'${sheet.name}'` : sheet.name}!${addressOf(area)}`;
      case "rowIndex":
        return row;
      case "columnIndex":
        return column;
      case "rowCount":
        return rows;
      case "columnCount":
        return columns;
      case "values":
        return cellsOf(area, (r, c) => sheet.values[r]?.[c] ?? "");
      case "text":
        return cellsOf(area, (r, c) => String(sheet.values[r]?.[c] ?? ""));
      case "formulas":
        return cellsOf(area, (r, c) => {
          const address = addressOf({ sheet, row: r, column: c, rows: 1, columns: 1 });
          return sheet.formulas?.[address] ?? sheet.values[r]?.[c] ?? "";
        });
      default:
        throw new Error(`the fake knows no range.${name}`);
    }
  }

  get address(): unknown {
    return this.property("address");
  }
  get rowIndex(): unknown {
    return this.property("rowIndex");
  }
  get columnIndex(): unknown {
    return this.property("columnIndex");
  }
  get rowCount(): unknown {
    return this.property("rowCount");
  }
  get columnCount(): unknown {
    return this.property("columnCount");
  }
  get values(): unknown {
    return this.property("values");
  }
  get text(): unknown {
    return this.property("text");
  }
  get formulas(): unknown {
    return this.property("formulas");
  }

  get worksheet(): FakeWorksheet {
    const area = this.onward();
    return new FakeWorksheet(this.context, () => area().sheet);
  }

  getEntireRow(): FakeRange {
    const area = this.onward();
    return new FakeRange(this.context, () => areaOf(area().sheet, `${area().row + 1}:${area().row + area().rows}`));
  }

  getIntersection(other: FakeRange): FakeRange {
    const [one, two] = [this.onward(), other.onward()];
    return new FakeRange(this.context, () => intersection(one(), two()));
  }

  getBoundingRect(other: FakeRange): FakeRange {
    const [one, two] = [this.onward(), other.onward()];
    return new FakeRange(this.context, () => bounding(one(), two()));
  }

  getSpillParentOrNullObject(): FakeRange {
    const area = this.onward();
    return new FakeRange(this.context, () => besides(area(), area().sheet.spilledFrom), true);
  }

  getSpillingToRange(): FakeRange {
    const area = this.onward();
    return new FakeRange(this.context, () => besides(area(), area().sheet.spillsTo));
  }

  getTables(fullyContained: boolean): { getFirst(): FakeTableObject } {
    if (fullyContained) throw new Error("the fake looks for tables around a cell");
    const area = this.onward();
    const { tables = [] } = this.context.book;
    const around = ({ sheet, address }: FakeTable): boolean =>
      sheet === area().sheet.name && intersection(areaOf(area().sheet, address), area()) !== null;
    return { getFirst: () => new FakeTableObject(this.context, () => tables.find(around) ?? null) };
  }
}

function cellsOf({ row, column, rows, columns }: Area, cell: (row: number, column: number) => unknown): unknown[][] {
  return Array.from({ length: rows }, (_, r) => Array.from({ length: columns }, (__, c) => cell(row + r, column + c)));
}

function besides(area: Area, places: Readonly<Record<string, string>> | undefined): Area | null {
  const address = places?.[addressOf(area)];
  return address === undefined ? null : areaOf(area.sheet, address);
}

function intersection(one: Area, two: Area): Area | null {
  const row = Math.max(one.row, two.row);
  const column = Math.max(one.column, two.column);
  const rows = Math.min(one.row + one.rows, two.row + two.rows) - row;
  const columns = Math.min(one.column + one.columns, two.column + two.columns) - column;
  return rows > 0 && columns > 0 && one.sheet === two.sheet ? { sheet: one.sheet, row, column, rows, columns } : null;
}

function bounding(one: Area, two: Area): Area {
  const row = Math.min(one.row, two.row);
  const column = Math.min(one.column, two.column);
  const rows = Math.max(one.row + one.rows, two.row + two.rows) - row;
  const columns = Math.max(one.column + one.columns, two.column + two.columns) - column;
  return { sheet: one.sheet, row, column, rows, columns };
}

export class FakeWorksheet extends FakeObject<FakeSheet> {
  protected read(sheet: FakeSheet, name: string): unknown {
    if (name !== "name") throw new Error(`the fake knows no worksheet.${name}`);
    return sheet.name;
  }

  get name(): unknown {
    return this.property("name");
  }

  getRange(address: string): FakeRange {
    const sheet = this.onward();
    return new FakeRange(this.context, () => areaOf(sheet(), address));
  }

  getRangeByIndexes(row: number, column: number, rows: number, columns: number): FakeRange {
    const sheet = this.onward();
    return new FakeRange(this.context, () => ({ sheet: sheet(), row, column, rows, columns }));
  }

  getUsedRangeOrNullObject(valuesOnly: boolean): FakeRange {
    if (!valuesOnly) throw new Error("formats alone are no use");
    const sheet = this.onward();
    return new FakeRange(this.context, () => usedArea(sheet()), true);
  }

  get names() {
    const sheet = this.onward();
    return namesOf(this.context, (name) => {
      const address = sheet().names?.[name];
      return address === undefined ? (name in (sheet().names ?? {}) ? {} : null) : { area: areaOf(sheet(), address) };
    });
  }
}

function usedArea(sheet: FakeSheet): Area | null {
  const columns = sheet.values.reduce((most, row) => Math.max(most, row.length), 0);
  return columns === 0 ? null : { sheet, row: 0, column: 0, rows: sheet.values.length, columns };
}

/** A name: of a range, or of something else. */
interface Named {
  readonly area?: Area;
}

class FakeName extends FakeObject<Named> {
  protected read({ area }: Named, name: string): unknown {
    if (name !== "type") throw new Error(`the fake knows no name.${name}`);
    return area === undefined ? "Double" : "Range";
  }
  get type(): unknown {
    return this.property("type");
  }
  getRange(): FakeRange {
    const named = this.onward();
    return new FakeRange(this.context, () => named().area ?? null);
  }
}

export function namesOf(context: FakeContext, find: (name: string) => Named | null) {
  return { getItemOrNullObject: (name: string) => new FakeName(context, () => find(name), true) };
}

export class FakeTableObject extends FakeObject<FakeTable> {
  protected read(): unknown {
    throw new Error("the fake reads nothing of a table itself");
  }

  protected part(cut: (area: Area, totals: boolean) => Area | null): FakeRange {
    const table = this.onward();
    return new FakeRange(this.context, () => cut(this.areaOfTable(table()), table().totals === true));
  }

  protected areaOfTable({ sheet, address }: FakeTable): Area {
    return areaOf(
      this.context.book.sheets.find(({ name }) => name === sheet)!,
      address,
    );
  }

  getRange(): FakeRange {
    return this.part((area) => area);
  }
  getDataBodyRange(): FakeRange {
    return this.part((area, totals) => ({ ...area, row: area.row + 1, rows: area.rows - (totals ? 2 : 1) }));
  }
  getTotalRowRange(): FakeRange {
    return this.part((area, totals) => (totals ? { ...area, row: area.row + area.rows - 1, rows: 1 } : null));
  }
  getHeaderRowRange(): FakeRange {
    return this.part((area) => ({ ...area, rows: 1 }));
  }

  get columns() {
    const table = this.onward();
    return { getItem: (name: string) => new FakeColumn(this.context, table, name) };
  }
}

class FakeColumn extends FakeTableObject {
  constructor(context: FakeContext, table: () => FakeTable, column: string) {
    super(context, () => {
      const area = this.areaOfTable(table());
      const headings = area.sheet.values[area.row]!.slice(area.column, area.column + area.columns);
      const index = headings.indexOf(column);
      if (index < 0) return null;
      return { ...table(), address: addressOf({ ...area, column: area.column + index, columns: 1 }) };
    });
  }
}
