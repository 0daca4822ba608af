import { columnOf } from "../../../herd/cow-rows";
import type { NewRow, TableContent, TypedValue } from "../../../workbook/table-port";
import { findingsTable } from "../../../workbook/tables";

/** Why an outcome cannot be written, in plain words. */
export interface Refused {
  readonly refused: string;
}

type Key = (typeof findingsTable.columns)[number]["key"];
type Values = Readonly<Partial<Record<Key, TypedValue>>>;

/**
 * Values under the headings that the table of findings has. A value whose column is not there, or fills itself, is
 * passed over where the outcome can do without it.
 */
export function rowUnder(content: TableContent, needed: Values, welcome: Values): NewRow | Refused {
  const row: Record<string, TypedValue> = {};
  const missing: string[] = [];
  const put = (values: Values, isNeeded: boolean): void => {
    for (const [key, value] of Object.entries(values)) {
      const { heading } = findingsTable.columns.find((column) => column.key === key)!;
      const column = content.columns[columnOf(content, heading)];
      if (column !== undefined && !column.calculated) row[column.heading] = value;
      else if (isNeeded) missing.push(`"${heading}"`);
    }
  };
  put(needed, true);
  put(welcome, false);
  if (missing.length === 0) return row;
  const columns = `column${missing.length > 1 ? "s" : ""} ${missing.join(", ")}`;
  return { refused: `Nothing was saved: table ${content.name} has no ${columns} to type in. Add what is missing.` };
}

export function isRefused(value: object): value is Refused {
  return "refused" in value && typeof value.refused === "string" && Object.keys(value).length === 1;
}
