import { isoDate } from "../../../core/shared/days";
import { DAY_ORDERS } from "../../mapping/mapping";
import { type DayOrder, looksLikeDate, orderOf, textDate } from "../../text-dates";
import type { Check } from "../checked-herd";
import type { CheckedTable } from "../checked-table";
import type { Finding, Report } from "../report";

const TOUCHES = "Formulas in cells do not take text for a date: recheck dates, rates and lists leave the row out.";

/** Dates that were typed as text; day and month may be in either order. */
export const textDates: Check = {
  id: "text date",
  about: "dates typed as text",
  run({ tables }, report) {
    for (const table of tables) for (const key of table.keysHolding("day")) checkColumn(table, key, report);
  },
};

function checkColumn(table: CheckedTable, key: string, report: Report): void {
  const rows: number[] = [];
  const texts: string[] = [];
  for (const row of table.texts(key)) {
    const text = String(table.cell(key, row));
    if (!looksLikeDate(text)) continue;
    rows.push(row);
    texts.push(text);
  }
  if (rows.length === 0) return;
  const unit = table.column(key)?.unit;
  const order = DAY_ORDERS.find((known) => known === unit) ?? orderOf(texts).order;
  const [readable, others]: [number[], number[]] = [[], []];
  rows.forEach((row, index) => (isDay(texts[index]!, order) ? readable : others).push(row));
  for (const row of others) report.cell(table, key, row, unreadable(String(table.cell(key, row)), order));
  report.column(table, key, readable, table.filled(key), (row) => readableDate(String(table.cell(key, row)), order), {
    level: "note",
    wrong: `The dates of this column are text, read ${order ?? "year first"}.`,
    touches: TOUCHES,
    repair: { title: "write them as dates", to: null },
  });
}

function isDay(text: string, order: DayOrder | undefined): boolean {
  return textDate(text, order ?? "year first") !== undefined;
}

function readableDate(text: string, order: DayOrder | undefined): Finding {
  const day = textDate(text, order ?? "year first")!;
  const title = `write the date ${isoDate(day)}`;
  return {
    level: "wrong",
    wrong: `The date is text; the dates of its column read ${order ?? "year first"} make it ${isoDate(day)}.`,
    touches: TOUCHES,
    repair: { title, to: { day } },
  };
}

function unreadable(text: string, order: DayOrder | undefined): Finding {
  const swapped = order === "day first" ? textDate(text, "month first") : order === "month first" ? textDate(text, "day first") : undefined; // oxfmt-ignore
  if (swapped !== undefined) {
    return { level: "wrong", wrong: `The date is text and no day read ${order!}; day and month may be swapped: ${isoDate(swapped)}.`, touches: TOUCHES }; // oxfmt-ignore
  }
  const either = textDate(text, "day first") !== undefined;
  const wrong = either
    ? "The date is text, and nothing in its column tells the day from the month."
    : "The text looks like a date but is no day of the calendar.";
  return { level: "wrong", wrong, touches: TOUCHES };
}
