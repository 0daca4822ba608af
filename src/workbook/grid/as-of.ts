import type { FUniver } from "@univerjs/core/facade";
import type { DaySerial } from "../../core/shared/days";
import { AS_OF } from "../tables";

/** The day that the workbook in the grid counts from, where it has a cell of that name that holds a day. */
export function dayOfWorkbook(api: FUniver): DaySerial | undefined {
  const workbook = api.getActiveWorkbook();
  const place = workbook?.getDefinedName(AS_OF)?.getFormulaOrRefString();
  const [, sheet, address] = /^=?'?(.+?)'?!\$?([A-Z]+\$?\d+)$/.exec(place ?? "") ?? [];
  if (sheet === undefined || address === undefined) return undefined;
  const value = workbook?.getSheetByName(sheet)?.getRange(address.replace("$", "")).getRawValue();
  return typeof value === "number" ? Math.floor(value) : undefined;
}
