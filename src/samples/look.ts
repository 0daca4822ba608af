import type { CellStyle } from "../xlsx/model";

/**
 * Colours of the sample workbook. The three of the charts differ in lightness as well as in hue, so that they can be
 * told apart without colour and on a grey print.
 */
export const COLOURS = {
  ink: "#1D2B34",
  quiet: "#5B6770",
  deep: "#1F5673",
  amber: "#E0962F",
  grey: "#9AA5AB",
  pale: "#E3ECEF",
  sand: "#FFF4D6",
  sandEdge: "#C9B98A",
  warnFill: "#FBE3D6",
  warnInk: "#8A2B06",
  white: "#FFFFFF",
  line: "#B8C4C9",
} as const;

/** Accents of the theme, used where someone adds a chart of their own. */
export const ACCENTS = [COLOURS.deep, COLOURS.amber, COLOURS.grey, "#4F8A8B", "#7A5C86", "#6B7F3A"];

const edge = (colour: string) => ({ style: "thin", colour });
const under = { bottom: edge(COLOURS.line) };
const around = (colour: string) => ({
  top: edge(colour),
  right: edge(colour),
  bottom: edge(colour),
  left: edge(colour),
});

export const STYLES = {
  title: { size: 18, bold: true, colour: COLOURS.deep },
  banner: { size: 12, bold: true, colour: COLOURS.warnInk, fill: COLOURS.warnFill, vertical: "middle", wrap: true },
  note: { italic: true, colour: COLOURS.quiet },
  text: { wrap: true, vertical: "top", colour: COLOURS.ink },
  section: { size: 13, bold: true, colour: COLOURS.deep, borders: under },
  label: { colour: COLOURS.ink, vertical: "middle" },
  link: { colour: COLOURS.deep, underline: true, bold: true, vertical: "top" },
  /** A cell that is meant to be changed. */
  input: {
    fill: COLOURS.sand,
    borders: around(COLOURS.sandEdge),
    colour: COLOURS.ink,
    horizontal: "left",
    vertical: "middle",
  },
  figure: { bold: true, colour: COLOURS.ink, horizontal: "left" },
  heading: { bold: true, colour: COLOURS.white, fill: COLOURS.deep, wrap: true, vertical: "middle" },
  /** Heading of a column or block that formulas fill. */
  computedHeading: { bold: true, colour: COLOURS.deep, fill: COLOURS.pale, wrap: true, vertical: "middle" },
  computed: { colour: COLOURS.deep },
  warn: { bold: true, colour: COLOURS.warnInk, fill: COLOURS.warnFill },
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
