import { BorderStyleTypes, type IBorderData, type IStyleData } from "@univerjs/core";
import type { BorderModel, CellStyle } from "../../xlsx/model";

/** Fonts with the same widths, tried where the workbook's own font is not installed. */
const STAND_INS: Readonly<Record<string, string>> = {
  Calibri: "Calibri, Carlito, Arial, sans-serif",
  Cambria: "Cambria, Caladea, serif",
  Aptos: "Aptos, Carlito, Arial, sans-serif",
};

const HORIZONTAL: Readonly<Record<string, number>> = { left: 1, center: 2, right: 3, justify: 4, centerContinuous: 2 };
const VERTICAL: Readonly<Record<string, number>> = { top: 1, center: 2, bottom: 3 };
/** The grid's code for text that goes on in the next line. */
const WRAP = 3;

const BORDERS: Readonly<Record<string, BorderStyleTypes>> = {
  thin: BorderStyleTypes.THIN,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  dashDot: BorderStyleTypes.DASH_DOT,
  dashDotDot: BorderStyleTypes.DASH_DOT_DOT,
  double: BorderStyleTypes.DOUBLE,
  medium: BorderStyleTypes.MEDIUM,
  mediumDashed: BorderStyleTypes.MEDIUM_DASHED,
  mediumDashDot: BorderStyleTypes.MEDIUM_DASH_DOT,
  mediumDashDotDot: BorderStyleTypes.MEDIUM_DASH_DOT_DOT,
  slantDashDot: BorderStyleTypes.SLANT_DASH_DOT,
  thick: BorderStyleTypes.THICK,
};

/** A style of the workbook as the grid writes it. */
export function gridStyle(style: CellStyle): IStyleData {
  const horizontal = HORIZONTAL[style.horizontal ?? ""];
  const vertical = VERTICAL[style.vertical ?? ""];
  return {
    ...(style.font === undefined ? {} : { ff: STAND_INS[style.font] ?? style.font }),
    ...(style.size === undefined ? {} : { fs: style.size }),
    ...(style.bold === true ? { bl: 1 } : {}),
    ...(style.italic === true ? { it: 1 } : {}),
    ...(style.underline === true ? { ul: { s: 1 } } : {}),
    ...(style.strike === true ? { st: { s: 1 } } : {}),
    ...(style.colour === undefined ? {} : { cl: { rgb: style.colour } }),
    ...(style.fill === undefined ? {} : { bg: { rgb: style.fill } }),
    ...(style.borders === undefined ? {} : { bd: gridBorders(style.borders) }),
    ...(horizontal === undefined ? {} : { ht: horizontal }),
    ...(vertical === undefined ? {} : { vt: vertical }),
    ...(style.wrap === true ? { tb: WRAP } : {}),
    ...(style.numberFormat === undefined ? {} : { n: { pattern: style.numberFormat } }),
  };
}

function gridBorders({ top, right, bottom, left }: NonNullable<CellStyle["borders"]>): IBorderData {
  const side = (border: BorderModel | undefined): { s: BorderStyleTypes; cl: { rgb: string } } | undefined =>
    border && { s: BORDERS[border.style] ?? BorderStyleTypes.THIN, cl: { rgb: border.colour } };
  const [t, r, b, l] = [side(top), side(right), side(bottom), side(left)];
  return { ...(t && { t }), ...(r && { r }), ...(b && { b }), ...(l && { l }) };
}
