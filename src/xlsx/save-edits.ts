import { type ChangingPackage, changeFile } from "./change-package";
import { cellEdits } from "./edit/cell-edits";
import { contentXml } from "./edit/content-xml";
import type { EditedCell, EditedSheet } from "./edit/edited-workbook";
import { NumberFormatStyles } from "./edit/number-formats";
import { type Rewrite, rewriteCells } from "./edit/rewrite-cells";
import { growRuleRanges } from "./edit/rule-ranges";
import { unshared } from "./edit/shared-formulas";
import { resizeTables } from "./edit/table-parts";
import type { SheetModel, WorkbookModel } from "./model";
import { partText, relationshipsOf } from "./package";
import { putValues } from "./save";
import { dropCalculationChain, dynamicArrayNumber } from "./save/dynamic-arrays";
import { type ScannedSheet, scanSheet } from "./save/scan";
import { worksheetEntries } from "./sheets";
import { type FormulaForms, formulaForms } from "./stored-formula";

export type { EditedCell, EditedSheet };

/**
 * The workbook with what was typed into its cells, its tables as long as they are now, and fresh values. `model` is
 * what the original bytes were read as; `ids` are the ids of the worksheet functions. What was not edited keeps its
 * bytes, and cells keep their format.
 */
export function saveEdits(
  original: Uint8Array,
  model: WorkbookModel,
  ids: readonly string[],
  edited: readonly EditedSheet[],
): Uint8Array {
  return changeFile(original, (file) => putEdits(file, model, ids, edited));
}

/** Puts what was typed, and fresh values, into a workbook that was read as `model`. */
export function putEdits(
  file: ChangingPackage,
  model: WorkbookModel,
  ids: readonly string[],
  edited: readonly EditedSheet[],
): void {
  const writer = new SheetWriter(file, formulaForms(ids), model);
  for (const { name, path } of worksheetEntries(file)) {
    const before = model.sheets.find((sheet) => sheet.name === name);
    const after = edited.find((sheet) => sheet.name === name);
    if (before && after) writer.write(path, before, after);
  }
  writer.finish();
  putValues(
    file,
    edited.map(({ fresh }) => fresh),
  );
}

class SheetWriter {
  private readonly tableNames: readonly string[];
  private readonly stylesPath: string | undefined;
  private formats: NumberFormatStyles | undefined;
  private areFormulasChanged = false;
  private dynamicArray: string | undefined;

  constructor(
    private readonly file: ChangingPackage,
    private readonly forms: FormulaForms,
    model: WorkbookModel,
  ) {
    this.tableNames = model.sheets.flatMap(({ tables }) => tables.map(({ name }) => name));
    this.stylesPath = relationshipsOf(file.parts, file.workbookPath).find(({ kind }) => kind === "styles")?.target;
  }

  private get parts(): ChangingPackage["parts"] {
    return this.file.parts;
  }

  write(path: string, before: SheetModel, after: EditedSheet): void {
    const changes = resizeTables(this.parts, path, after.tables);
    const xml = partText(this.parts, path);
    const sheet = scanSheet(xml);
    const edits = cellEdits(before, after.contents);
    if (sheet === undefined || (edits.length === 0 && changes.length === 0)) return;
    const written = edits.length === 0 ? xml : this.withEdits(xml, sheet, before, after, edits);
    this.parts[path] = new TextEncoder().encode(growRuleRanges(written, changes));
  }

  /** Puts the parts in order that belong to the whole workbook. */
  finish(): void {
    if (this.formats && this.stylesPath) this.parts[this.stylesPath] = new TextEncoder().encode(this.formats.text);
    if (this.areFormulasChanged) dropCalculationChain(this.parts, this.file.workbookPath);
  }

  private withEdits(
    xml: string,
    sheet: ScannedSheet,
    before: SheetModel,
    { tables }: EditedSheet,
    edits: readonly EditedCell[],
  ): string {
    const rewrites = new Map<number, Map<number, Rewrite>>();
    for (const edit of [...edits, ...unshared(sheet, before, edits)]) {
      const { row, column, value } = edit;
      const rewrite: Rewrite = (present) => {
        if (edit.formula !== undefined || present?.formula !== undefined) this.areFormulasChanged = true;
        const style = this.styleOf(edit);
        return contentXml(
          sheet.prefix,
          { row, column, value, ...this.storedFormula(edit, tables), ...(style === undefined ? {} : { style }) },
          present,
        );
      };
      const cells = rewrites.get(row);
      if (cells) cells.set(column, rewrite);
      else rewrites.set(row, new Map([[column, rewrite]]));
    }
    return rewriteCells(xml, sheet, rewrites);
  }

  /** Looked up once: a table may take in thousands of formulas. */
  private dynamicArrayNumber(): string | undefined {
    return (this.dynamicArray ??= dynamicArrayNumber(this.parts, this.file.workbookPath));
  }

  /** Calls of add-in functions are saved as dynamic arrays of one cell, as Excel saves them. */
  private storedFormula(
    { formula, row, column }: EditedCell,
    tables: EditedSheet["tables"],
  ): { readonly formula?: string; readonly dynamicArray?: string } {
    if (formula === undefined) return {};
    const ownTable = tables.find(
      ({ area }) =>
        row >= area.firstRow && row <= area.lastRow && column >= area.firstColumn && column <= area.lastColumn,
    )?.name;
    const stored = this.forms.stored(formula, { tables: this.tableNames, ...(ownTable ? { ownTable } : {}) });
    const mark = /\bHERD\./i.test(formula) ? this.dynamicArrayNumber() : undefined;
    return mark === undefined ? { formula: stored } : { formula: stored, dynamicArray: mark };
  }

  private styleOf({ style, numberFormat }: EditedCell): string | undefined {
    if (style !== undefined) return style === 0 ? undefined : String(style);
    if (numberFormat === undefined || this.stylesPath === undefined) return undefined;
    this.formats ??= new NumberFormatStyles(partText(this.parts, this.stylesPath));
    return this.formats.styleFor(numberFormat);
  }
}
