/**
 * Colours of what this add-in writes into a workbook. The three of the charts differ in lightness as well as in hue,
 * so that they can be told apart without colour and on a grey print.
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

/** What a cell is for, so that whoever writes it can give it a look. */
export type Look = "title" | "note" | "label" | "input" | "figure" | "section" | "heading" | "computed" | "warning";

/** How a cell looks. Colours are #rrggbb. */
export interface CellLook {
  /** Points. */
  readonly size?: number;
  readonly bold?: true;
  readonly italic?: true;
  readonly colour?: string;
  readonly fill?: string;
  /** Thin lines. */
  readonly borders?: Readonly<Partial<Record<Side, { readonly style: "thin"; readonly colour: string }>>>;
  readonly horizontal?: "left" | "right";
  readonly vertical?: "middle";
  readonly wrap?: true;
}

export type Side = "top" | "right" | "bottom" | "left";

const line = (colour: string) => ({ style: "thin", colour }) as const;
const sandEdge = line(COLOURS.sandEdge);

export const LOOKS = {
  title: { size: 18, bold: true, colour: COLOURS.deep },
  note: { italic: true, colour: COLOURS.quiet, vertical: "middle" },
  label: { colour: COLOURS.ink, vertical: "middle" },
  /** A cell that is meant to be changed. */
  input: {
    fill: COLOURS.sand,
    borders: { top: sandEdge, right: sandEdge, bottom: sandEdge, left: sandEdge },
    colour: COLOURS.ink,
    horizontal: "left",
    vertical: "middle",
  },
  figure: { bold: true, colour: COLOURS.ink, horizontal: "left", vertical: "middle" },
  section: { size: 13, bold: true, colour: COLOURS.deep, borders: { bottom: line(COLOURS.line) } },
  /** Heading of a column that formulas fill. */
  heading: { bold: true, colour: COLOURS.deep, fill: COLOURS.pale, wrap: true, vertical: "middle" },
  computed: { colour: COLOURS.deep, vertical: "middle" },
  warning: { bold: true, colour: COLOURS.warnInk, fill: COLOURS.warnFill },
} as const satisfies Record<Look, CellLook>;

/** A width of so many characters in pixels. Source: ECMA-376 Part 1, 18.3.1.13 (col width). */
export function pixelsOf(characters: number): number {
  return characters * PIXELS_PER_CHARACTER;
}

/** In the usual font. */
const PIXELS_PER_CHARACTER = 7;
