import { textNumber } from "../../text-numbers";
import type { Check } from "../checked-herd";
import type { CheckedTable } from "../checked-table";
import type { Finding, Report } from "../report";

const TOUCHES = "Formulas do not take text for a number: the row is refused or left out of the figures.";

/** Units that may stand behind a number without changing it, by key of the column. */
const SAME_UNIT: Readonly<Record<string, readonly string[]>> = {
  toeMm: ["mm", "cm", "in"],
  milkKg: ["kg", "l", "lb", "lbs"],
  daysInMilk: ["d"],
};

/** Numbers that were typed as text. */
export const textNumbers: Check = {
  id: "text number",
  about: "numbers typed as text",
  run({ tables }, report) {
    for (const table of tables) {
      for (const key of table.keysHolding("number", "whole number")) checkColumn(table, key, report);
    }
  },
};

function checkColumn(table: CheckedTable, key: string, report: Report): void {
  const rows = table.texts(key).filter((row) => textNumber(String(table.cell(key, row))) !== undefined);
  const each = (row: number): Finding => about(table, key, String(table.cell(key, row)));
  report.column(table, key, rows, table.filled(key), each, {
    level: "wrong",
    wrong: "The numbers of this column are text.",
    touches: TOUCHES,
    repair: { title: "write them as numbers", to: null },
  });
}

function about(table: CheckedTable, key: string, text: string): Finding {
  const { value, unit } = textNumber(text)!;
  if (value === undefined) {
    return { level: "wrong", wrong: `"${text}" is text; its point or comma may part thousands or decimals.`, touches: TOUCHES }; // oxfmt-ignore
  }
  const wanted = table.column(key)?.unit ?? SAME_UNIT[key]?.[0];
  const isOwnUnit = unit === "" || unit === wanted || (wanted !== undefined && SAME_UNIT[key]?.includes(unit) === true && wanted.startsWith(unit)); // oxfmt-ignore
  if (!isOwnUnit) return { level: "wrong", wrong: `"${text}" is text with a unit of its own.`, touches: TOUCHES };
  return {
    level: "wrong",
    wrong: `"${text}" is text, not a number.`,
    touches: TOUCHES,
    repair: { title: `write the number ${value}`, to: value },
  };
}
