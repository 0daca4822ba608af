import type { DaySerial } from "../../core/shared/days";
import { AS_OF } from "../tables";

/** The day that the workbook in Excel counts from, where it has a cell of that name that holds a day. */
export function dayOfWorkbook(): Promise<DaySerial | undefined> {
  return Excel.run(async (context) => {
    const cell = context.workbook.names.getItemOrNullObject(AS_OF).getRangeOrNullObject();
    cell.load("values");
    await context.sync();
    if (cell.isNullObject) return undefined;
    const value: unknown = cell.values[0]?.[0];
    return typeof value === "number" ? Math.floor(value) : undefined;
  });
}
