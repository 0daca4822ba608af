import type { DaySerial } from "../../../core/shared/days";
import { foldHeading } from "../../../herd/read-rows";
import type { TableContent } from "../../../workbook/table-port";

/** The days on which cows were tested up to a day, the latest first. */
export function testDays(content: TableContent | undefined, upTo: DaySerial): readonly DaySerial[] {
  const place = content?.columns.findIndex(({ heading }) => foldHeading(heading) === "date") ?? -1;
  const days = new Set<DaySerial>();
  for (const row of content?.rows ?? []) {
    const day = row[place];
    if (typeof day === "number" && day <= upTo) days.add(day);
  }
  return [...days].sort((a, b) => b - a);
}
