import { day } from "../core/shared/days";
import { cellAddress } from "../xlsx/address";
import type { NewSheet, NewWorkbook } from "../xlsx/write-model";
import { ACCENTS, COLOURS, FORMATS, STYLES } from "./look";
import type { FarmList, Planted } from "./own-headings/list";
import { type FarmLists, farmLists } from "./own-headings/lists";
import { plantMistakes } from "./own-headings/mistakes";
import { ALIGNED, Page } from "./page";
import { TABLE_STYLE } from "./sheets/data-sheet";

/** The day on which the book is looked at. */
const MADE = day("2026-09-01");

const INVENTED = "No such farm: every cow and every number in this book is invented, mistakes included.";

function bookLists(): FarmLists {
  const lists = farmLists();
  plantMistakes(lists);
  return lists;
}

/** Every mistake that was put into the book, list by list. */
export function plantedMistakes(): readonly Planted[] {
  const { cows, feet, milk, walking } = bookLists();
  return [cows, feet, milk, walking].flatMap(({ planted }) => planted);
}

/** A farm's own book: its own headings, words and units, one table and three plain ranges, and planted mistakes. */
export function ownHeadings(): NewWorkbook {
  const { cows, feet, milk, walking } = bookLists();
  return {
    title: "A farm's own book with headings of its own",
    description: "All data are invented, with planted mistakes.",
    author: "Evenfoot",
    made: MADE,
    accents: ACCENTS,
    names: [],
    sheets: [
      tableSheet(cows, "HerdList", "The herd"),
      rangeSheet(feet, "Feet", ["Write the day as day/month/year.", "Back feet only are measured."]),
      rangeSheet(milk, "Milk recording", []),
      rangeSheet(walking, "Walking out of the parlour", []),
    ],
  };
}

/** Headings under which real dates stand. */
const DAY_HEADINGS = ["DOB", "Last calving", "Dried off", "Came in", "Went", "Look again", "Test day", "Scored on"];

function styleOf(heading: string): { readonly numberFormat?: string; readonly horizontal: string } {
  const isText = ["Visit", "Leg", "What found", "Remarks", "Pen"].includes(heading);
  const format = DAY_HEADINGS.includes(heading) ? { numberFormat: FORMATS.day } : {};
  return { horizontal: isText ? ALIGNED.text.horizontal : ALIGNED.number.horizontal, ...format };
}

function tableSheet(list: FarmList, name: string, title: string): NewSheet {
  const page = new Page(list.sheet, title, INVENTED);
  page.addTable({
    name,
    at: cellAddress(list.headingRow, 0),
    styleName: TABLE_STYLE,
    columns: list.headings.map((heading) => ({ heading, headingStyle: STYLES.heading, style: styleOf(heading) })),
    rows: list.rows,
  });
  return laidOut(page, list);
}

function rangeSheet(list: FarmList, title: string, lines: readonly string[]): NewSheet {
  const page = new Page(list.sheet, title, INVENTED);
  lines.forEach((line, index) => page.put(cellAddress(2 + index, 0), line, STYLES.note));
  list.headings.forEach((heading, column) => page.put(cellAddress(list.headingRow, column), heading, { bold: true, borders: STYLES.section.borders })); // oxfmt-ignore
  list.rows.forEach((cells, row) =>
    cells.forEach((cell, column) => {
      if (cell === null) return;
      page.put(cellAddress(list.headingRow + 1 + row, column), cell, styleOf(list.headings[column]!));
    }),
  );
  return laidOut(page, list);
}

const WIDE = ["Remarks", "What done", "Medicine", "Withdrawal", "What found"];

function laidOut(page: Page, list: FarmList): NewSheet {
  return page.sheet({
    tabColour: COLOURS.grey,
    widths: list.headings.map((heading) => (WIDE.includes(heading) ? 22 : 13)),
    frozenRows: list.headingRow + 1,
    print: { landscape: list.headings.length > 8, titleRows: `${list.headingRow + 1}:${list.headingRow + 1}` },
  });
}
