import type { SheetModel, TableModel, WorkbookModel } from "../../xlsx/model";
import { conditionalFormatRule } from "./conditional-formats";
import { gridRange } from "./sheet";
import { validationRule } from "./validations";

/** What the grid keeps of a workbook outside its cells, by the name of the plugin that reads it. */
export function gridResources(
  model: WorkbookModel,
  sheetIds: readonly string[],
): { readonly name: string; readonly data: string }[] {
  const bySheet = <T>(read: (sheet: SheetModel, id: string) => T): Record<string, T> =>
    Object.fromEntries(model.sheets.map((sheet, index) => [sheetIds[index]!, read(sheet, sheetIds[index]!)]));
  return [
    resource(
      "SHEET_TABLE_PLUGIN",
      bySheet(({ tables }) => ({ tables: tables.map(gridTable), tableFilteredOutRows: [] })),
    ),
    resource(
      "SHEET_DATA_VALIDATION_PLUGIN",
      bySheet(({ validations }, id) =>
        validations.map((validation, index) => validationRule(validation, `${id}-validation-${index}`, model.names)),
      ),
    ),
    resource(
      "SHEET_CONDITIONAL_FORMATTING_PLUGIN",
      bySheet(({ conditionalFormats }, id) =>
        [...conditionalFormats]
          .sort((a, b) => a.priority - b.priority)
          .map((format, index) => conditionalFormatRule(format, `${id}-format-${index}`)),
      ),
    ),
    resource("SHEET_DEFINED_NAME_PLUGIN", gridNames(model, sheetIds)),
  ];
}

function resource(name: string, data: unknown): { name: string; data: string } {
  return { name, data: JSON.stringify(data) };
}

/** The grid has no row of totals: it stays below the table as plain cells. */
function gridTable({ name, area, columns, hasTotals }: TableModel): object {
  return {
    id: `table-${name}`,
    name,
    range: gridRange(hasTotals ? { ...area, lastRow: area.lastRow - 1 } : area),
    options: { showHeader: true, showFooter: false },
    filters: { tableColumnFilterList: [] },
    columns: columns.map((column, index) => ({
      id: `table-${name}-${index}`,
      displayName: column.name,
      dataType: "string",
      formula: column.formula === undefined ? "" : `=${column.formula}`,
      meta: {},
      style: {},
    })),
    meta: {},
  };
}

/** Names that the format keeps for itself (print areas, filters) begin with _xlnm. */
const RESERVED_NAME = /^_xl/i;
/** The grid's word for a name that all sheets know. */
const WHOLE_WORKBOOK = "AllDefaultWorkbook";

function gridNames({ names }: WorkbookModel, sheetIds: readonly string[]): Record<string, object> {
  const entries = names
    .filter(({ name, formula }) => !RESERVED_NAME.test(name) && !formula.includes("#REF!"))
    .map(({ name, formula, sheet, hidden }, index) => {
      const id = `name-${index}`;
      const isFormula = !/^('[^']+'|[^\s'!()+*/-]+)!\$?[A-Za-z]{0,3}\$?\d*(:\$?[A-Za-z]{0,3}\$?\d*)?$/.test(formula);
      return [
        id,
        {
          id,
          name,
          formulaOrRefString: isFormula ? `=${formula}` : formula,
          localSheetId: sheet === undefined ? WHOLE_WORKBOOK : sheetIds[sheet],
          ...(hidden ? { hidden: true } : {}),
        },
      ] as const;
    });
  return Object.fromEntries(entries);
}
