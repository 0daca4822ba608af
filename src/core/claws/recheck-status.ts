import type { DaySerial } from "../shared/days";

/** Where a recheck stands on a day: "done", "overdue 3 d", "today" or "in 4 d". */
export function recheckStatus(due: DaySerial, done: boolean, today: DaySerial): string {
  if (done) return "done";
  if (due === today) return "today";
  return due < today ? `overdue ${today - due} d` : `in ${due - today} d`;
}
