import { WorkbookFileError } from "./file-error";
import type { DefinedNameModel, SheetModel, TableModel, WorkbookModel } from "./model";
import { openPackage, partText, relationshipsOf, type WorkbookPackage } from "./package";
import { colourReader } from "./read/colours";
import { isSeveral, withIntersection } from "./read/intersection";
import { readSheet } from "./read/sheet";
import type { SheetContext } from "./read/sheet-context";
import { readSharedStrings } from "./read/strings";
import { readStyles } from "./read/styles";
import { readTable } from "./read/tables";
import { type WorksheetEntry, worksheetEntries } from "./sheets";
import { type FormulaForms, formulaForms } from "./stored-formula";
import { attribute, childrenOf, descend, flag, numberAttribute, parsePart, textOf, type XmlElement } from "./xml";

/**
 * Reads a workbook from the bytes of an .xlsx file. `ids` are the ids of the worksheet functions, by which their
 * stored names are told apart. Throws WorkbookFileError where the bytes are no workbook.
 */
export function readWorkbook(bytes: Uint8Array, ids: readonly string[]): WorkbookModel {
  return readPackage(openPackage(bytes), ids);
}

/** Reads a workbook whose parts are at hand already. */
export function readPackage(file: WorkbookPackage, ids: readonly string[]): WorkbookModel {
  const root = partRoot(file, file.workbookPath);
  const related = relationshipsOf(file.parts, file.workbookPath);
  const part = (kind: string): XmlElement | undefined => {
    const path = related.find((relationship) => relationship.kind === kind)?.target;
    return path === undefined || !Object.hasOwn(file.parts, path) ? undefined : partRoot(file, path);
  };
  const colour = colourReader(part("theme"));
  const styles = readStyles(part("styles"), colour);
  const forms = formulaForms(ids);
  const context: SheetContext = {
    strings: readSharedStrings(part("sharedStrings")),
    styles,
    colour,
    typed: forms.typed,
    typedInOneCell: oneCellForms(root, forms),
  };
  const sheets = worksheetEntries(file, root);
  return {
    sheets: sheets.map((entry) => readWorksheet(file, entry, context)),
    names: readNames(root, sheets, context),
    styles: styles.cells,
    activeSheet: activeSheet(root, sheets),
    from1904: flag(descend(root, "workbookPr"), "date1904"),
  };
}

/** Spells formulas of cells that are not marked as arrays; a column of a table holds the same one in every row. */
function oneCellForms(root: XmlElement, forms: FormulaForms): (formula: string) => string {
  const blocks = blockNames(root);
  const known = new Map<string, string>();
  return (formula) => {
    let typed = known.get(formula);
    if (typed === undefined) {
      typed = withIntersection(forms.typed(formula), (name) => blocks.has(name.toUpperCase()));
      known.set(formula, typed);
    }
    return typed;
  };
}

/** Names, in capitals, that stand for a block of cells. */
function blockNames(root: XmlElement): ReadonlySet<string> {
  return new Set(
    childrenOf(descend(root, "definedNames"), "definedName")
      .filter((element) => /^[^(]*![^!(]*$/.test(textOf(element)) && isSeveral(textOf(element)))
      .map((element) => (attribute(element, "name") ?? "").toUpperCase()),
  );
}

function partRoot({ parts }: WorkbookPackage, path: string): XmlElement {
  return parsePart(partText(parts, path), path);
}

function readWorksheet(
  file: WorkbookPackage,
  { element, name, path }: WorksheetEntry,
  context: SheetContext,
): SheetModel {
  const state = attribute(element, "state");
  const tables = relationshipsOf(file.parts, path)
    .filter(({ kind }) => kind === "table")
    .map(({ target }) => readTable(partRoot(file, target), context.typed))
    .filter((table): table is TableModel => table !== undefined);
  return {
    name,
    state: state === "hidden" || state === "veryHidden" ? state : "visible",
    tables,
    ...readSheet(partText(file.parts, path), path, context),
  };
}

function readNames(root: XmlElement, sheets: readonly WorksheetEntry[], { typed }: SheetContext): DefinedNameModel[] {
  return childrenOf(descend(root, "definedNames"), "definedName").flatMap((element): DefinedNameModel[] => {
    const name = attribute(element, "name") ?? "";
    const position = numberAttribute(element, "localSheetId");
    const sheet = position === undefined ? -1 : sheets.findIndex((entry) => entry.position === position);
    if (name === "" || (position !== undefined && sheet < 0)) return [];
    return [
      {
        name,
        formula: typed(textOf(element)),
        hidden: flag(element, "hidden"),
        ...(position === undefined ? {} : { sheet }),
      },
    ];
  });
}

function activeSheet(root: XmlElement, sheets: readonly WorksheetEntry[]): number {
  if (sheets.length === 0) throw new WorkbookFileError("the workbook has no worksheet");
  const position = numberAttribute(descend(root, "bookViews", "workbookView"), "activeTab") ?? 0;
  return Math.max(
    0,
    sheets.findIndex((entry) => entry.position === position),
  );
}
