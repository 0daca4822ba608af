import type { Workbook } from "@univerjs/core";
import { pixelsOf } from "../workbook/look";
import type { ColumnWidth } from "../xlsx/edit/column-widths";
import type { WorkbookModel } from "../xlsx/model";

/** The columns, sheet by sheet, that are as wide in the grid as the file does not say. */
export function changedWidths(
  workbook: Workbook,
  { sheets }: WorkbookModel,
): { readonly sheet: string; readonly widths: readonly ColumnWidth[] }[] {
  return workbook.getSheets().map((sheet) => {
    const name = sheet.getName();
    const known = sheets.find((one) => one.name === name)?.columns ?? [];
    const { columnData, defaultColumnWidth } = sheet.getConfig();
    const widths = Object.entries(columnData).flatMap(([index, data]): ColumnWidth[] => {
      const column = Number(index);
      const own = known.find(({ first, last }) => first <= column && column <= last)?.width;
      const before = own === undefined ? defaultColumnWidth : Math.round(pixelsOf(own));
      const now = data?.w ?? defaultColumnWidth;
      return now === before ? [] : [{ column, set: now / pixelsOf(1) }];
    });
    return { sheet: name, widths };
  });
}
