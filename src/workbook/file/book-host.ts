import type { CellMark } from "../../xlsx/edit/mark-cells";
import { addTable } from "../../xlsx/edit/add-table";
import { removeTable } from "../../xlsx/edit/remove-table";
import type { SheetModel } from "../../xlsx/model";
import type { AppliedCell, BookHost, CellEdit, TableRange } from "../book-host";
import type { BrokenFormula, FunctionsAnswer } from "../book-port";
import { cellAddress, cellPosition } from "../cell-address";
import { callsHerd, NAME_ERROR, namesTable } from "../herd-formula";
import { formatFor, GENERAL_FORMAT } from "../number-format";
import { areaText, type PlainBook, type PlainSheet } from "../plain-book";
import { meets } from "../plain-room";
import type { CellPlace } from "../port";
import { plainValue } from "../saving/row-match";
import {
  cellsOccupied,
  nameTaken,
  sheetFiltered,
  sheetGone,
  sheetHidden,
  sheetProtected,
  tableGone,
  tableInUse,
} from "../table-error";
import { editableCell } from "./edit-cell";
import { markOf } from "./edit-table";
import { FileBook } from "./file-book";
import { type FileHostOptions, OpenFile } from "./open-file";
import { plainBook, plainSheet } from "./plain-book";
import type { FileStore } from "./store";

/** The sheets and cells of a workbook file. Nothing of a file is on a screen: showing a cell only checks its place. */
export class FileBookHost implements BookHost {
  private readonly file: OpenFile;

  constructor(store: FileStore, options: FileHostOptions) {
    this.file = new OpenFile(store, options);
  }

  async readBook(): Promise<PlainBook> {
    return plainBook((await this.file.load()).book.model);
  }

  async readSheet(name: string): Promise<PlainSheet> {
    const { book } = await this.file.load();
    return plainSheet(sheetOf(book, name), book.model.styles);
  }

  async show({ sheet }: CellPlace): Promise<void> {
    const { book } = await this.file.load();
    if (sheetOf(book, sheet).state !== "visible") throw sheetHidden(sheet);
  }

  async editCells(edits: readonly CellEdit[]): Promise<readonly AppliedCell[]> {
    let applied: AppliedCell[] = [];
    await this.file.change((book) => ({
      file: book.file,
      edit: () => {
        const done = edits.map((edit) => editCell(book, edit));
        applied = done.map((one) => one.applied);
        return done.flatMap(({ marks }) => marks);
      },
    }));
    return applied;
  }

  async takenNames(): Promise<readonly string[]> {
    const { sheets, names } = (await this.file.load()).book.model;
    return [...sheets.flatMap(({ tables }) => tables), ...names].map(({ name }) => name);
  }

  async makeTable({ sheet: sheetName, area, name }: TableRange): Promise<void> {
    await this.file.change((book) => {
      const sheet = sheetOf(book, sheetName);
      if (book.isProtected(sheetName)) throw sheetProtected(sheetName);
      // A filter of the sheet and that of a table may not meet: Excel would mend the file by taking one away.
      if (book.protection.filteredSheets.has(sheetName)) throw sheetFiltered(sheetName);
      const tables = book.model.sheets.flatMap((known) => known.tables);
      if (tables.some((table) => table.name.toLowerCase() === name.toLowerCase())) throw nameTaken(name);
      const met = sheet.tables.find((table) => meets(area)(table.area));
      if (met !== undefined) throw cellsOccupied(sheetName, areaText(met.area));
      const cells = book.cells(sheet);
      const columns = Array.from({ length: area.lastColumn - area.firstColumn + 1 }, (_, right) => ({
        heading: String(cells.plain(area.firstRow, area.firstColumn + right) ?? ""),
      }));
      const { ids } = this.file.options;
      return {
        file: book.file,
        edit: () => [],
        finish: (file) => addTable(file, { name, sheet: sheetName, area, columns }, ids),
      };
    });
  }

  async unmakeTable(name: string): Promise<void> {
    await this.file.change((now) => {
      const sheet = now.model.sheets.find(({ tables }) => tables.some((table) => table.name === name));
      if (sheet === undefined) throw tableGone(name);
      if (now.isProtected(sheet.name)) throw sheetProtected(sheet.name);
      const user = now.model.sheets.find(({ cells }) => cells.some(({ formula = "" }) => namesTable(formula, name)));
      if (user !== undefined) throw tableInUse(name, user.name);
      return { file: now.file, edit: () => [], finish: (file) => removeTable(file, name) };
    });
  }

  async brokenFormulas(): Promise<readonly BrokenFormula[]> {
    return brokenIn((await this.file.load()).book);
  }

  async reenter(cells: readonly CellPlace[]): Promise<readonly BrokenFormula[]> {
    const wanted = new Set(cells.map(placeText));
    const isWanted = (cell: CellPlace): boolean => wanted.has(placeText(cell));
    await this.file.change((start) => {
      const broken = brokenIn(start).filter(isWanted);
      for (const { sheet } of broken) if (start.isProtected(sheet)) throw sheetProtected(sheet);
      const book = withoutFormulas(start, new Set(broken.map(placeText)));
      return {
        file: start.file,
        book,
        edit: () => {
          for (const { sheet, address, formula } of broken) {
            const { row, column } = cellPosition(address);
            book.cells(sheetOf(book, sheet)).put(row, column, { formula: formula.slice(1), value: null });
          }
          return [];
        },
      };
    });
    return (await this.brokenFormulas()).filter(isWanted);
  }

  async functionsLoaded(): Promise<FunctionsAnswer> {
    return this.file.options.recompute === undefined ? "unknown" : "yes";
  }
}

function sheetOf({ model }: FileBook, name: string): SheetModel {
  const sheet = model.sheets.find((known) => known.name === name);
  if (sheet === undefined) throw sheetGone(name);
  return sheet;
}

function editCell(
  book: FileBook,
  edit: CellEdit,
): { readonly applied: AppliedCell; readonly marks: readonly CellMark[] } {
  const { sheet, address, was: before, set } = edit;
  const { row, column } = cellPosition(address);
  const model = sheetOf(book, sheet);
  const cells = editableCell(book, model, edit);
  const style = cells.at(row, column)?.style ?? 0;
  const own = book.model.styles[style]?.numberFormat;
  const numberFormat = edit.numberFormat ?? formatFor(set, own);
  cells.put(row, column, { value: plainValue(set) });
  const marks = [
    ...(numberFormat === undefined ? [] : [{ numberFormat }]),
    ...(typeof set === "string" ? markOf(set, own) : []),
  ];
  const formatBefore = numberFormat === undefined ? {} : { formatBefore: own ?? GENERAL_FORMAT };
  return {
    applied: { sheet, address, before, after: plainValue(set), ...formatBefore },
    marks: marks.length === 0 ? [] : [Object.assign({ sheet, row, column, style }, ...marks) as CellMark],
  };
}

function brokenIn({ model }: FileBook): BrokenFormula[] {
  return model.sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ row, column, value, formula }) => {
      const isBroken = typeof value === "object" && value?.error === NAME_ERROR;
      if (!isBroken || formula === undefined || !callsHerd(formula)) return [];
      return [{ sheet: name, address: cellAddress({ row, column }), formula: `=${formula}` }];
    }),
  );
}

/** A formula that the file already spells alike would else be left as it is. */
function withoutFormulas({ file, model, protection }: FileBook, places: ReadonlySet<string>): FileBook {
  const sheets = model.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => {
      if (cell.formula === undefined) return cell;
      const { formula, ...rest } = cell;
      return places.has(placeText({ sheet: sheet.name, address: cellAddress(cell) })) ? rest : { ...rest, formula };
    }),
  }));
  return new FileBook(file, { ...model, sheets }, protection);
}

function placeText({ sheet, address }: CellPlace): string {
  return `${sheet}!${address}`;
}
