import { COLOURS, LOOKS } from "../workbook/look";
import type { CellStyle } from "../xlsx/model";

export { COLOURS };

/** Accents of the theme, used where someone adds a chart of their own. */
export const ACCENTS = [COLOURS.deep, COLOURS.amber, COLOURS.grey, "#4F8A8B", "#7A5C86", "#6B7F3A"];

export const STYLES = {
  title: LOOKS.title,
  banner: { size: 12, bold: true, colour: COLOURS.warnInk, fill: COLOURS.warnFill, vertical: "middle", wrap: true },
  note: LOOKS.note,
  text: { wrap: true, vertical: "top", colour: COLOURS.ink },
  section: LOOKS.section,
  label: LOOKS.label,
  link: { colour: COLOURS.deep, underline: true, bold: true, vertical: "top" },
  input: LOOKS.input,
  figure: LOOKS.figure,
  heading: { bold: true, colour: COLOURS.white, fill: COLOURS.deep, wrap: true, vertical: "middle" },
  /** Heading of a column or block that formulas fill. */
  computedHeading: LOOKS.heading,
  computed: LOOKS.computed,
  warn: LOOKS.warning,
} as const satisfies Record<string, CellStyle>;

export const FORMATS = {
  day: "yyyy-mm-dd",
  dayOfYear: "d mmm",
  month: "mmm yy",
  whole: "#,##0",
  one: "0.0",
  two: "0.00",
  share: "0.0%",
  money: "#,##0.00",
} as const;

export function withFormat(style: CellStyle, numberFormat: string | undefined): CellStyle {
  return numberFormat === undefined ? style : { ...style, numberFormat };
}
