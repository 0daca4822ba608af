import type { ResultColumn } from "../functions/define";
import { ISO_DATE } from "../workbook/number-format";
import type { SpecOf } from "./expression/run";

/** The columns that a worksheet function spills. */
export function columnsOf(id: string, specOf: SpecOf): readonly ResultColumn[] {
  const spec = specOf(id);
  if (spec?.result.shape !== "table") throw new Error(`HERD.${id} is no function that spills a table`);
  return spec.result.columns;
}

/** The number format of a column's cells; undefined for texts and plain numbers. */
export function formatOf({ type, format }: ResultColumn): string | undefined {
  return format ?? (type === "date" ? ISO_DATE : undefined);
}
