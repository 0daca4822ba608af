import { day, isoDate } from "../../../core/shared/days";
import type { Check } from "../checked-herd";

/** Days on which something has happened; a dry-off or next look may lie ahead. */
const PAST_DAYS = ["date", "born", "calved", "entered", "left", "seenAgain", "closedOn"];
/** No cow on a farm today was born, and no record of her made, before this day; an earlier one was mistyped. */
const EARLIEST = day("1990-01-01");

/** Dates in the future, and dates from before any living cow. */
export const datesOutOfTime: Check = {
  id: "date out of time",
  about: "dates in the future or long past",
  run({ tables, asOf }, report) {
    for (const table of tables) {
      for (const key of table.keysHolding("day")) {
        for (let row = 0; row < table.rowCount; row++) {
          const serial = table.number(key, row);
          if (serial === null) continue;
          if (serial > asOf && PAST_DAYS.includes(key)) {
            report.cell(table, key, row, {
              level: "wrong",
              wrong: `${isoDate(serial)} lies after ${isoDate(asOf)}, the day on which the workbook is looked at.`,
              touches: "Rates, due lists and everything counted by date.",
            });
          } else if (serial < EARLIEST) {
            report.cell(table, key, row, {
              level: "wrong",
              wrong: `${isoDate(serial)} lies before any cow of today; the year may be mistyped, or the number is no date.`,
              touches: "Ages, rates and everything counted by date.",
            });
          }
        }
      }
    }
  },
};
