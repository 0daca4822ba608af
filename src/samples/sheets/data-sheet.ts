import {
  type ColumnDefinition,
  inputColumns,
  numberFormatOf,
  type TableDefinition,
} from "../../workbook/table-definition";
import { FIRST_DAY, LAST_DAY } from "../../core/shared/days";
import { cellAddress } from "../../xlsx/address";
import type { CellStyle } from "../../xlsx/model";
import type { NewHighlight, NewSheet, NewValidation } from "../../xlsx/write-model";
import { FORMATS, STYLES, withFormat } from "../look";
import { ALIGNED, Page } from "../page";

/** Name of the cells that list the codes of the claw disorder key. */
export const LESION_CODES = "LesionCodes";
/** Name of the cells that list the usual treatments. */
export const TREATMENT_LIST = "TreatmentList";

/** Rows below a table in which typing is checked already. */
const ROWS_TO_COME = 500;
const HEADING_ROW = 4;
export const TABLE_STYLE = "TableStyleLight1";

interface DataSheet {
  readonly table: TableDefinition;
  readonly rows: readonly Readonly<Record<string, number | string | null>>[];
  readonly title: string;
  readonly tabColour: string;
  /** Width of each column by its key, where it is not the usual one; its heading may need more. */
  readonly widths: Readonly<Record<string, number>>;
  readonly frozenColumns: number;
  readonly landscape: boolean;
  /** Formulas are written for the first row of the table. */
  readonly highlights?: readonly Omit<NewHighlight, "area">[];
}

/** Room for a day such as 2026-09-01, and a little air. */
const USUAL_WIDTH = 12;
/** Room for the button beside each heading and for its bold letters, in characters of the usual kind. */
const BESIDE_HEADING = 5;

/** A sheet that holds one of our tables, with its headings frozen, its lists and its calculated columns. */
export function dataSheet({
  table,
  rows,
  title,
  tabColour,
  widths,
  frozenColumns,
  landscape,
  highlights = [],
}: DataSheet): NewSheet {
  const { columns } = table;
  const page = new Page(table.name, title, table.about);
  page.height(HEADING_ROW, 32);
  page.addTable({
    name: table.name,
    at: `A${HEADING_ROW}`,
    styleName: TABLE_STYLE,
    columns: columns.map((column) => ({
      heading: column.heading,
      headingStyle: headingStyleOf(column),
      style: cellStyleOf(column),
      ...(column.formula === undefined ? {} : { formula: column.formula }),
    })),
    rows: rows.map((row) => columns.map(({ key, formula }) => (formula === undefined ? (row[key] ?? null) : null))),
  });
  const lastRow = HEADING_ROW + rows.length;
  for (const column of inputColumns(table)) {
    const at = columns.indexOf(column);
    const rule = ruleOf(column);
    if (rule !== undefined) page.validate({ area: areaOf(at, lastRow + ROWS_TO_COME), ...rule });
  }
  const whole = `${cellAddress(HEADING_ROW, 0)}:${cellAddress(lastRow - 1, columns.length - 1)}`;
  for (const highlight of highlights) page.highlight({ area: whole, ...highlight });
  return page.sheet({
    tabColour,
    widths: columns.map(({ key, heading }) => Math.max(widths[key] ?? USUAL_WIDTH, leastWidth(heading))),
    frozenRows: HEADING_ROW,
    frozenColumns,
    print: { landscape, titleRows: `${HEADING_ROW}:${HEADING_ROW}` },
  });
}

/** A heading may stand in two lines, but none of its words. */
function leastWidth(heading: string): number {
  return Math.max(...heading.split(" ").map((word) => word.length)) + BESIDE_HEADING;
}

function areaOf(column: number, lastRow: number): string {
  return `${cellAddress(HEADING_ROW, column)}:${cellAddress(lastRow - 1, column)}`;
}

function cellStyleOf(column: ColumnDefinition): CellStyle {
  const style: CellStyle = column.formula === undefined ? { colour: STYLES.label.colour } : STYLES.computed;
  return { ...withFormat(style, numberFormatOf(column) ?? DECIMALS[column.key]), ...alignmentOf(column) };
}

function headingStyleOf(column: ColumnDefinition): CellStyle {
  const style = column.formula === undefined ? STYLES.heading : STYLES.computedHeading;
  return { ...style, ...alignmentOf(column), vertical: "middle" };
}

function alignmentOf({ holds }: ColumnDefinition): CellStyle {
  return holds === "number" || holds === "whole number" ? ALIGNED.number : ALIGNED.text;
}

const DECIMALS: Readonly<Record<string, string>> = {
  milkKg: FORMATS.one,
  cellScore: FORMATS.one,
  lossKg: FORMATS.two,
  count: FORMATS.whole,
  price: FORMATS.two,
};

/** What a column takes when it is typed into; nothing is checked where any text goes. */
function ruleOf({
  heading,
  holds,
  about,
  choices,
  limits,
  words = [],
}: ColumnDefinition): Omit<NewValidation, "area"> | undefined {
  const prompt = about;
  if (holds === "choice" && choices !== undefined) {
    const source = `"${choices.join(",")}"`;
    return { rule: { type: "list", source }, prompt, refusal: `${heading} must be one of: ${choices.join(", ")}.` };
  }
  if (holds === "lesion") {
    const refusal = "Lesion must be a code of the list on the Lists sheet, or none for a sound cow.";
    return { rule: { type: "list", source: LESION_CODES }, prompt, refusal };
  }
  if (choices !== undefined) {
    const refusal =
      "This is not one of the usual treatments. Dates follow from the words block, pain relief, bandage, topical.";
    return { rule: { type: "list", source: TREATMENT_LIST }, prompt, refusal, warnOnly: true };
  }
  if (holds === "day") {
    return { rule: { type: "date", from: FIRST_DAY, to: LAST_DAY }, refusal: `${heading} must be a date.` };
  }
  if (limits === undefined) return undefined;
  const [from, to] = limits;
  const type = holds === "whole number" ? "whole" : "decimal";
  const what = holds === "whole number" ? "a whole number" : "a number";
  return {
    rule: { type, from, to },
    prompt,
    refusal: `${heading} must be ${[`${what} from ${from} to ${to}`, ...words].join(", or ")}.`,
    warnOnly: true,
  };
}
