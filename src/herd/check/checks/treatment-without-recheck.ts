import { disorderOf, parentCode } from "../../../core/claws/disorder-key";
import { recheckDays, ruleFor } from "../../../core/claws/recheck-rules";
import type { Check, CheckedHerd } from "../checked-herd";
import type { CheckedTable } from "../checked-table";

/** Treated feet that nobody looked at again and that no day is set for. */
export const treatmentWithoutRecheck: Check = {
  id: "treatment without recheck",
  about: "treated feet without a day to look again",
  run(herd, report) {
    const latest = latestLooks(herd);
    for (const table of herd.named("Findings")) {
      const computed = computedRechecks(table);
      if (computed === undefined && !table.has("nextLook")) continue;
      for (let row = 0; row < table.rowCount; row++) {
        const code = codeIn(herd, table, row);
        const date = table.number("date", row);
        if (code === undefined || date === null || table.cell("treatment", row) === null) continue;
        const rule = ruleFor(herd.rules, code);
        if (rule === undefined || recheckDays(rule).length === 0) continue;
        const isSet = table.cell("nextLook", row) !== null || (computed !== undefined && computed(row));
        const isDone = table.cell("closedOn", row) !== null || table.cell("seenAgain", row) !== null;
        if (isSet || isDone || (latest.get(footKey(table, row, code)) ?? date) > date) continue;
        report.cell(table, table.has("nextLook") ? "nextLook" : "treatment", row, {
          level: "doubtful",
          wrong: `${code} was treated and no day is set to look again; the built-in rule says after ${recheckDays(rule)[0]!} days.`,
          touches: "The foot is missing in the list of what is due.",
        });
      }
    }
  },
};

function codeIn({ words }: CheckedHerd, table: CheckedTable, row: number): string | undefined {
  const text = table.text("lesion", row);
  const code = text === null ? undefined : words.codeOf(text);
  return code === undefined ? undefined : disorderOf(code)?.code;
}

function footKey(table: CheckedTable, row: number, code: string): string {
  return `${table.cowKey(row)}\n${table.text("foot", row) ?? ""}\n${parentCode(code)}`;
}

/** The latest day on which the same lesion of the same foot stands in a row: it was looked at then. */
function latestLooks(herd: CheckedHerd): ReadonlyMap<string, number> {
  const latest = new Map<string, number>();
  for (const table of herd.named("Findings")) {
    for (let row = 0; row < table.rowCount; row++) {
      const code = codeIn(herd, table, row);
      const date = table.number("date", row);
      if (code === undefined || date === null) continue;
      const key = footKey(table, row, code);
      if (date > (latest.get(key) ?? 0)) latest.set(key, date);
    }
  }
  return latest;
}

/** Whether our own column of recheck dates holds one; undefined where there is no such column. */
function computedRechecks({ mapped }: CheckedTable): ((row: number) => boolean) | undefined {
  const place = mapped.content.columns.findIndex(({ heading, calculated }) => calculated && heading === "Recheck");
  return place < 0 ? undefined : (row) => typeof mapped.content.rows[row]?.[place] === "number";
}
