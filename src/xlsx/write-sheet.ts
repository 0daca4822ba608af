import type { CellValueInput, Workbook, Worksheet } from "@cj-tech-master/excelts";
import { cellAddress, parseCell } from "./address";
import { addChart } from "./write-chart";
import type { ComputedValues, NewCell, NewHighlight, NewSheet, NewTable, NewValidation } from "./write-model";
import { highlightStyle, libraryStyle, argb } from "./write-style";
import { dateOfSerial, filledCells, formulaValue, isFormula, type Spelling } from "./write-values";

/** Paper of the sizes that a farm's printer takes. Source: ECMA-376 Part 1, 18.3.1.63: 9 is A4. */
const A4 = 9;

/** Writes a sheet; the function returned adds its charts, once all sheets are there. */
export function writeSheet(
  workbook: Workbook,
  sheet: NewSheet,
  spelling: Spelling,
  computed: ComputedValues | undefined,
): () => void {
  const worksheet = workbook.addWorksheet(sheet.name, {
    properties: { tabColor: { argb: argb(sheet.tabColour) } },
    views: [viewOf(sheet)],
    pageSetup: pageSetupOf(sheet),
    headerFooter: { oddFooter: sheet.print.footer },
  });
  sheet.widths.forEach((width, index) => (worksheet.getColumn(index + 1).width = width));
  for (const [row, height] of Object.entries(sheet.heights ?? {})) worksheet.getRow(Number(row)).height = height;
  for (const cell of sheet.cells) writeCell(worksheet, cell, spelling, computed);
  for (const table of sheet.tables) writeTable(worksheet, table, spelling, computed);
  for (const merge of sheet.merges) worksheet.mergeCells(merge);
  for (const validation of sheet.validations) addValidation(worksheet, validation, spelling);
  sheet.highlights.forEach((highlight, index) => addHighlight(worksheet, highlight, index + 1, spelling));
  return () => {
    for (const chart of sheet.charts) addChart(worksheet, chart);
  };
}

function viewOf({ frozen, showGridLines }: NewSheet) {
  if (frozen === undefined) return { showGridLines };
  return { state: "frozen" as const, xSplit: frozen.columns, ySplit: frozen.rows, showGridLines };
}

function pageSetupOf({ print }: NewSheet) {
  return {
    paperSize: A4,
    orientation: print.landscape ? ("landscape" as const) : ("portrait" as const),
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: print.pagesDown ?? 0,
    ...(print.area === undefined ? {} : { printArea: print.area }),
    ...(print.titleRows === undefined ? {} : { printTitlesRow: print.titleRows }),
    margins: { left: 0.5, right: 0.5, top: 0.6, bottom: 0.7, header: 0.3, footer: 0.3 },
  };
}

function writeCell(
  worksheet: Worksheet,
  { at, holds, style }: NewCell,
  spelling: Spelling,
  computed: ComputedValues | undefined,
): void {
  const cell = worksheet.getCell(at);
  if (isFormula(holds)) {
    cell.value = formulaValue(holds, { sheet: worksheet.name, address: at }, spelling, computed);
    if (holds.fills) {
      for (const { address, value } of filledCells(worksheet.name, at, computed)) {
        worksheet.getCell(address).value = value;
      }
    }
  } else if (typeof holds === "object" && holds !== null) {
    cell.value = { text: holds.text, hyperlink: `#${holds.to}` };
  } else if (holds !== null) cell.value = holds;
  if (style !== undefined) Object.assign(cell, libraryStyle(style));
}

function writeTable(
  worksheet: Worksheet,
  { name, at, styleName, columns, rows }: NewTable,
  spelling: Spelling,
  computed: ComputedValues | undefined,
): void {
  const corner = parseCell(at)!;
  const place = (row: number, column: number): string => cellAddress(corner.row + row, corner.column + column);
  worksheet.addTable({
    name,
    ref: at,
    headerRow: true,
    style: { theme: styleName, showRowStripes: true },
    columns: columns.map(({ heading, formula }) => ({
      name: heading,
      filterButton: true,
      ...(formula === undefined ? {} : { calculatedColumnFormula: spelling.stored(formula, name) }),
    })),
    rows: rows.map((row, index) =>
      columns.map(({ formula }, column): CellValueInput => {
        if (formula === undefined) return row[column] ?? null;
        const address = place(index + 1, column);
        return formulaValue({ formula }, { sheet: worksheet.name, address, ownTable: name }, spelling, computed);
      }),
    ) as never,
  });
  columns.forEach(({ headingStyle, style }, column) => {
    Object.assign(worksheet.getCell(place(0, column)), libraryStyle(headingStyle));
    const cellStyle = libraryStyle(style);
    for (let row = 1; row <= rows.length; row++) Object.assign(worksheet.getCell(place(row, column)), cellStyle);
  });
}

function addValidation(
  worksheet: Worksheet,
  { area, rule, prompt, refusal, warnOnly }: NewValidation,
  spelling: Spelling,
): void {
  const dated = (serial: number): number | Date => (rule.type === "date" ? dateOfSerial(serial) : serial);
  worksheet.dataValidations.add(area, {
    type: rule.type,
    ...(rule.type === "list"
      ? { formulae: [spelling.stored(rule.source)] }
      : { operator: "between" as const, formulae: [dated(rule.from), dated(rule.to)] }),
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: warnOnly === true ? "warning" : "stop",
    errorTitle: "Please check",
    error: refusal,
    ...(prompt === undefined ? {} : { showInputMessage: true, prompt }),
  });
}

function addHighlight(
  worksheet: Worksheet,
  { area, formula, style }: NewHighlight,
  priority: number,
  spelling: Spelling,
): void {
  worksheet.addConditionalFormatting({
    ref: area,
    rules: [{ type: "expression", formulae: [spelling.stored(formula)], priority, style: highlightStyle(style) }],
  });
}
