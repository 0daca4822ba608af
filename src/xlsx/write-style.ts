import type { Style } from "@cj-tech-master/excelts";
import type { CellStyle } from "./model";

/** A style as the library takes it. */
export function libraryStyle(style: CellStyle): Partial<Style> {
  const { fill, numberFormat } = style;
  return {
    ...present("font", fontOf(style)),
    ...present("alignment", alignmentOf(style)),
    ...present("border", bordersOf(style)),
    ...(fill === undefined ? {} : { fill: { type: "pattern", pattern: "solid", fgColor: { argb: argb(fill) } } }),
    ...(numberFormat === undefined ? {} : { numFmt: numberFormat }),
  };
}

/** A style of a highlight, in which a plain fill is a background. */
export function highlightStyle(style: CellStyle): Partial<Style> {
  const { fill } = style;
  return {
    ...present("font", fontOf(style, {})),
    ...(fill === undefined ? {} : { fill: { type: "pattern", pattern: "solid", bgColor: { argb: argb(fill) } } }),
  };
}

const USUAL_FONT = { name: "Calibri", size: 11 } as const;

function fontOf(style: CellStyle, usual: { readonly name?: string; readonly size?: number } = USUAL_FONT) {
  const { font, size, bold, italic, underline, colour } = style;
  if ([font, size, bold, italic, underline, colour].every((given) => given === undefined)) return {};
  return {
    ...usual,
    ...(font === undefined ? {} : { name: font }),
    ...(size === undefined ? {} : { size }),
    ...(bold === undefined ? {} : { bold }),
    ...(italic === undefined ? {} : { italic }),
    ...(underline === undefined ? {} : { underline }),
    ...(colour === undefined ? {} : { color: { argb: argb(colour) } }),
  };
}

function alignmentOf({ horizontal, vertical, wrap, indent }: CellStyle) {
  return {
    ...(horizontal === undefined ? {} : { horizontal }),
    ...(vertical === undefined ? {} : { vertical }),
    ...(wrap === undefined ? {} : { wrapText: wrap }),
    ...(indent === undefined ? {} : { indent }),
  };
}

function bordersOf({ borders = {} }: CellStyle) {
  return Object.fromEntries(
    Object.entries(borders).map(([side, { style, colour }]) => [side, { style, color: { argb: argb(colour) } }]),
  );
}

/** #rrggbb as the library takes it: opaque, without the sign. */
export function argb(colour: string): string {
  return `FF${colour.slice(1).toUpperCase()}`;
}

function present(key: string, part: object): object {
  return Object.keys(part).length === 0 ? {} : { [key]: part };
}
