import { type ColumnDefinition, inputColumns, type TableDefinition } from "../../workbook/table-definition";
import { cowsTable, findingsTable, scoresTable, testsTable } from "../../workbook/tables";

/** The tables that a farm's own columns are mapped to. */
export const herdTables = [cowsTable, findingsTable, scoresTable, testsTable] as const;
export type HerdTableName = (typeof herdTables)[number]["name"];

/** Columns that only the check reads: a farm may keep them beside its findings. */
const checkedOnly: Readonly<Partial<Record<HerdTableName, readonly ColumnDefinition[]>>> = {
  Findings: [
    { key: "drug", heading: "Drug", holds: "text", about: "The medicine that was given." },
    { key: "withdrawal", heading: "Withdrawal", holds: "text", about: "Withdrawal of milk and meat, by the label." },
  ],
};

export function tableNamed(name: HerdTableName): TableDefinition {
  return herdTables.find((table) => table.name === name)!;
}

/** The columns of a table that a farm's column can be mapped to. */
export function mappedColumns(name: HerdTableName): readonly ColumnDefinition[] {
  return [...inputColumns(tableNamed(name)), ...(checkedOnly[name] ?? [])];
}

/** What a column means: the key of one of our columns, or "other" for what is known and not used. */
export type Meaning =
  | "cow" | "date" | "lactation" | "daysInMilk" | "born" | "calved" | "dryOff" | "entered" | "left" | "group"
  | "foot" | "claw" | "zone" | "lesion" | "stage" | "severity" | "toeMm" | "measuredFrom" | "treatment"
  | "seenAgain" | "outcome" | "nextLook" | "closedOn" | "note" | "drug" | "withdrawal"
  | "score" | "milkKg" | "count" | "other"; // oxfmt-ignore

export function isHerdTable(name: string): name is HerdTableName {
  return herdTables.some((table) => table.name === name);
}
