import { isoDate } from "../../../core/shared/days";
import type { Check, CheckedHerd, CowPlace } from "../checked-herd";
import type { CheckedTable } from "../checked-table";
import type { Report } from "../report";

/** No heifer calves younger than this: some 15 months. Common practice, no source. */
const YOUNGEST_CALVING_DAYS = 450;

/** Dates that contradict others: before birth or calving, after she left, closed before found. */
export const impossibleDates: Check = {
  id: "impossible date",
  about: "dates before birth, calving or the finding itself",
  run(herd, report) {
    for (const table of herd.named("Cows")) checkCows(table, report);
    for (const table of herd.records) checkRecords(herd, table, report);
    for (const table of herd.named("Findings")) checkFindings(table, report);
  },
};

interface Rule {
  readonly later: string;
  readonly earlier: string;
  readonly days: number;
  readonly says: string;
}

const COW_RULES: readonly Rule[] = [
  { later: "calved", earlier: "born", days: YOUNGEST_CALVING_DAYS, says: "calved before she was old enough; born" },
  { later: "entered", earlier: "born", days: 0, says: "entered before she was born on" },
  { later: "left", earlier: "born", days: 0, says: "left before she was born on" },
  { later: "left", earlier: "calved", days: 0, says: "left before her latest calving on" },
  { later: "left", earlier: "entered", days: 0, says: "left before she entered on" },
];

function checkCows(table: CheckedTable, report: Report): void {
  for (const { later, earlier, days, says } of COW_RULES) {
    for (let row = 0; row < table.rowCount; row++) {
      const [last, first] = [table.number(later, row), table.number(earlier, row)];
      if (last === null || first === null || last - first >= days || report.has(table, later, row)) continue;
      report.cell(table, later, row, {
        level: "wrong",
        wrong: `Cow ${table.text("cow", row) ?? "?"} ${says} ${isoDate(first)}.`,
        touches: "Days in milk, lactation groups and the days that cows stood at risk.",
      });
    }
  }
}

function checkRecords(herd: CheckedHerd, table: CheckedTable, report: Report): void {
  if (!table.has("date")) return;
  for (let row = 0; row < table.rowCount; row++) {
    const date = table.number("date", row);
    const cow = herd.cow(table.cowKey(row));
    if (date === null || cow === undefined || report.has(table, "date", row)) continue;
    const wrong = contradiction(cow, date, table.number("lactation", row), report);
    if (wrong === undefined) continue;
    report.cell(table, "date", row, {
      level: "wrong",
      wrong: `Cow ${table.text("cow", row)!} ${wrong}.`,
      touches: "Her days in milk, and the figures of the month and lactation it is counted in.",
    });
  }
}

/** What the list of cows says against a day; its cells that are doubtful themselves say nothing. */
function contradiction(
  { table, row }: CowPlace,
  date: number,
  lactation: number | null,
  report: Report,
): string | undefined {
  const on = (key: string): number | null => (report.has(table, key, row) ? null : table.number(key, row));
  const [born, left, calved] = [on("born"), on("left"), on("calved")];
  if (born !== null && date < born) return `was born on ${isoDate(born)}, after this day`;
  if (left !== null && date > left) return `had left on ${isoDate(left)}`;
  const isThisLactation = lactation !== null && lactation === on("lactation");
  if (calved !== null && date < calved && isThisLactation) {
    return `calved for lactation ${lactation} on ${isoDate(calved)}, after this day`;
  }
  return undefined;
}

const AFTER_FINDING = [
  ["seenAgain", "was seen again before it was found"],
  ["nextLook", "is to be looked at before it was found"],
  ["closedOn", "was closed before it was found"],
] as const;

function checkFindings(table: CheckedTable, report: Report): void {
  for (const [key, says] of AFTER_FINDING) {
    if (!table.has(key)) continue;
    for (let row = 0; row < table.rowCount; row++) {
      const [later, date] = [table.number(key, row), table.number("date", row)];
      if (later === null || date === null || later >= date) continue;
      if (report.has(table, key, row) || report.has(table, "date", row)) continue;
      report.cell(table, key, row, {
        level: "wrong",
        wrong: `The finding of ${isoDate(date)} ${says}.`,
        touches: "What is due, and how long feet take to heal.",
      });
    }
  }
}
