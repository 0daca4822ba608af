import { printedRecheckRules } from "../../functions/claws/kinds-of-care";
import { printedTrimRules } from "../../functions/claws/kinds-of-trimming";
import type { CellValue } from "../../functions/cell";
import type { CellStyle } from "../../xlsx/model";
import type { NewSheet } from "../../xlsx/write-model";
import { pricesTable } from "../../workbook/tables";
import { COLOURS, FORMATS, STYLES } from "../look";
import { Page } from "../page";
import { dataSheet, TABLE_STYLE } from "./data-sheet";

const SETTINGS_TAB = COLOURS.sandEdge;

/** A table of settings with its headings in the first row; its cells look like cells to be changed, but for the last column. */
export function settings(
  page: Page,
  name: string,
  at: string,
  [headings = [], ...rows]: readonly (readonly CellValue[])[],
): void {
  page.addTable({
    name,
    at,
    styleName: TABLE_STYLE,
    columns: headings.map((heading, column) => ({
      heading: String(heading),
      headingStyle: STYLES.heading,
      style: (column === headings.length - 1 ? STYLES.label : STYLES.input) satisfies CellStyle,
    })),
    rows: rows.map((row) => row.map((value) => (value === "" ? null : (value as number | string)))),
  });
}

/** When a treated foot is looked at again, and when a cow is trimmed. */
export function rulesSheet(): NewSheet {
  const page = new Page(
    "Rules",
    "Rules",
    "Days from the treatment to each look, lesion by lesion. Change a number: dates on Findings and Due follow.",
  );
  settings(page, "Rules", "A4", printedRecheckRules());
  page.section("A14", "Routine trims", 11);
  settings(page, "TrimRules", "A15", printedTrimRules());
  page.height(4, 46);
  const lines = [
    "A parent code covers its forms: U covers SU, TU and BU; WL covers WLF and WLA; SH covers SHD and SHC.",
    "A lesion without a row has no recheck date. Add a row below the table for one that the farm wants to see again.",
    "The days are aids to memory. Diagnosis, medicines and courses of treatment are the veterinarian's.",
  ];
  lines.forEach((line, index) => page.put(`A${22 + index}`, line, STYLES.note));
  return page.sheet({
    tabColour: SETTINGS_TAB,
    widths: [17, 10, 10, 10, 10, 10, 10, 10, 11, 10, 40],
    frozenRows: 4,
    print: { landscape: true, pagesDown: 1 },
  });
}

/** Published rates to measure the herd against until the farm has its own targets. */
export function targetsSheet(): NewSheet {
  const page = new Page(
    "Targets",
    "Targets",
    "New cases per 100 cow-years that the herd should not exceed. Put the farm's own numbers here.",
  );
  const basis = "Mean of five herds: Hedges et al. 2001, J Dairy Sci 84:1969. Lame cows only, so a strict target.";
  settings(page, "Targets", "A4", [
    ["Lesion", "Target per 100 cow-years", "Basis"],
    ["SU", 13.8, basis],
    ["WL", 12.7, basis],
    ["DD", 12, basis],
    ["IP", 7.1, basis],
    ["infectious", "", "No target set: write one in to see a row for the whole group."],
    ["horn", "", "No target set: write one in to see a row for the whole group."],
  ]);
  page.height(4, 46);
  return page.sheet({
    tabColour: SETTINGS_TAB,
    widths: [14, 16, 90],
    frozenRows: 4,
    print: { landscape: true, pagesDown: 1 },
  });
}

export function pricesSheet(): NewSheet {
  const sheet = dataSheet({
    table: pricesTable,
    rows: [
      {
        item: "Milk",
        price: 0.46,
        per: "litre",
        currency: "USD",
        year: 2026,
        note: "invented; change it to the farm's own price",
      },
    ],
    title: "Prices",
    tabColour: SETTINGS_TAB,
    widths: { item: 16, note: 46 },
    frozenColumns: 0,
    landscape: false,
  });
  return {
    ...sheet,
    tables: sheet.tables.map((table) => ({
      ...table,
      columns: table.columns.map((column) =>
        column.heading === "Price" ? { ...column, style: { ...STYLES.input, numberFormat: FORMATS.two } } : column,
      ),
    })),
  };
}
