import type { Injector } from "@univerjs/core";
import { SheetsDataValidationValidatorService } from "@univerjs/preset-sheets-data-validation";

/**
 * The grid checks what lists and limits say of sheets out of sight when the browser is idle, and asks for the workbook
 * then, though it may be closed by now. From when it is closed there is nothing to check.
 */
export function stopChecking(injector: Injector): void {
  injector.get(SheetsDataValidationValidatorService).validatorRanges = () => Promise.resolve([]);
}
