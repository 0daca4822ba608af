import { isoDate } from "../../../core/shared/days";
import { AS_PRESCRIBED, VETERINARIAN } from "../../../functions/cautions";
import type { CellBlock, NewTable } from "../../../workbook/table-port";
import { placeName } from "./grouping";
import type { DueLine } from "./line";

/** The list as a sheet of its own: its heading with the cautions, and a table below it. */
export interface WrittenList {
  readonly heading: CellBlock;
  readonly table: NewTable;
}

/** Rows above the table: the title and a line for each caution. */
const TITLE_ROWS = 4;

/** `attempt` 1 and more: the sheets and tables of earlier lists of the same day keep their names. */
export function writtenList(lines: readonly DueLine[], day: number, attempt: number): WrittenList {
  const on = isoDate(day);
  const again = attempt === 0 ? "" : ` ${attempt + 1}`;
  const sheet = `Due ${on}${again}`;
  return {
    heading: { sheet, address: "A1", cells: [[`Due on ${on}`], [VETERINARIAN], [AS_PRESCRIBED]] },
    table: {
      name: `Due_${on.replaceAll("-", "_")}${again.replace(" ", "_")}`,
      sheet,
      address: `A${TITLE_ROWS + 1}`,
      columns: ["Cow", "Group", "Foot", "Lesion", "What to do", "Due", "Days over", "Outcome", "Done by"].map(
        (heading) => ({ heading, ...(heading === "Due" ? { numberFormat: "yyyy-mm-dd" } : {}) }),
      ),
      rows: lines.map((line) => ({
        Cow: line.cow === "" ? "whole herd" : cowCell(line.cow),
        Group: placeName(line),
        Foot: line.finding?.foot || null,
        Lesion: line.finding?.lesion || null,
        "What to do": [line.what, ...line.remarks].join("; "),
        Due: { day: line.due },
        "Days over": day - line.due,
      })),
    },
  };
}

/** A cow's number as a number, as the other sheets hold it; "007" and "B7" stay text. */
function cowCell(name: string): string | number {
  const number = Number(name);
  return String(number) === name ? number : name;
}
