import type { HerdTableName } from "../../mapping/targets";
import { inputColumns } from "../../../workbook/table-definition";
import type { Check } from "../checked-herd";
import type { CheckedTable } from "../checked-table";

/** What makes two rows the same. Two findings may lie on one claw: only their notes may differ. */
function keysOf(table: CheckedTable): readonly string[] {
  if (table.name === "Cows") return ["cow"];
  if (table.name !== "Findings") return ["cow", "date"];
  return inputColumns(table.mapped.definition).map(({ key }) => key).filter((key) => key !== "note"); // oxfmt-ignore
}

const TOUCHES: Readonly<Record<HerdTableName, string>> = {
  Cows: "Counts of cows, and which of her rows is looked up.",
  Findings: "Cases are counted twice in shares and lists.",
  Scores: "The share of lame cows.",
  Tests: "The herd's average, milk lost and the yearly bill.",
};

/** Rows that stand twice. */
export const doubleRows: Check = {
  id: "double row",
  about: "rows that stand twice",
  run({ tables }, report) {
    for (const name of ["Cows", "Findings", "Scores", "Tests"] as const) {
      const seen = new Map<string, { table: CheckedTable; row: number }>();
      for (const table of tables) {
        if (table.name !== name) continue;
        const keys = keysOf(table).filter((key) => table.has(key));
        if (!keys.includes("cow") || (name !== "Cows" && !keys.includes("date"))) continue;
        for (let row = 0; row < table.rowCount; row++) {
          const key = keyOf(table, keys, row);
          if (key === undefined) continue;
          const first = seen.get(key);
          if (first === undefined) {
            seen.set(key, { table, row });
            continue;
          }
          const where = `${first.table.sheet === table.sheet ? "" : `${first.table.sheet}, `}${first.table.mapped.address("cow", first.row)}`; // oxfmt-ignore
          const what = name === "Cows" ? "This cow" : name === "Findings" ? "The same finding" : "This cow on this day";
          report.cell(table, "cow", row, { level: "wrong", wrong: `${what} stands in ${where} already.`, touches: TOUCHES[name] }); // oxfmt-ignore
        }
      }
    }
  },
};

/** undefined where the row lacks a cow or day, and cannot be told from others. */
function keyOf(table: CheckedTable, keys: readonly string[], row: number): string | undefined {
  let key = "";
  for (const one of keys) {
    const value = one === "cow" ? table.cowKey(row) : table.value(one, row);
    if ((one === "cow" || one === "date") && (value === null || value === "")) return undefined;
    key += `${String(value)}\n`;
  }
  return key;
}
