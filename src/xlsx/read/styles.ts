import type { CellStyle } from "../model";
import { attribute, childrenOf, descend, flag, numberAttribute, type XmlElement } from "../xml";
import { colourOf, type ColourReader } from "./colours";
import { BUILT_IN_NUMBER_FORMATS } from "./number-formats";

export interface Styles {
  /** Styles of cells, by the number that cells carry. */
  readonly cells: readonly CellStyle[];
  /** Styles of conditional formats, by the number that rules carry. */
  readonly conditional: readonly CellStyle[];
}

export function readStyles(root: XmlElement | undefined, colour: ColourReader): Styles {
  const list = (name: string, item: string): XmlElement[] => childrenOf(descend(root, name), item);
  const fonts = list("fonts", "font").map((font) => readFont(font, colour));
  const fills = list("fills", "fill").map((fill) => readFill(fill, colour));
  const borders = list("borders", "border").map((border) => readBorders(border, colour));
  const formats = new Map(
    list("numFmts", "numFmt").map((format) => [numberAttribute(format, "numFmtId"), formatCode(format)]),
  );
  const cells = list("cellXfs", "xf").map((xf): CellStyle => {
    const format = numberAttribute(xf, "numFmtId") ?? 0;
    return {
      ...fonts[numberAttribute(xf, "fontId") ?? 0],
      ...fills[numberAttribute(xf, "fillId") ?? 0],
      ...borders[numberAttribute(xf, "borderId") ?? 0],
      ...readAlignment(descend(xf, "alignment")),
      ...readNumberFormat(formats.get(format) ?? BUILT_IN_NUMBER_FORMATS[format]),
    };
  });
  const conditional = list("dxfs", "dxf").map((style): CellStyle => ({
    ...readFont(descend(style, "font"), colour),
    ...readFill(descend(style, "fill"), colour, "bgColor"),
    ...readBorders(descend(style, "border"), colour),
    ...readNumberFormat(formatCode(descend(style, "numFmt"))),
  }));
  return { cells: cells.length === 0 ? [{}] : cells, conditional };
}

function readFont(font: XmlElement | undefined, colour: ColourReader): CellStyle {
  const isOn = (name: string): boolean => {
    const element = descend(font, name);
    return element !== undefined && flag(element, "val", true);
  };
  const name = attribute(descend(font, "name"), "val");
  const size = numberAttribute(descend(font, "sz"), "val");
  const fontColour = colourOf(font, colour);
  const underline = descend(font, "u");
  return {
    ...(name === undefined ? {} : { font: name }),
    ...(size === undefined ? {} : { size }),
    ...(isOn("b") ? { bold: true } : {}),
    ...(isOn("i") ? { italic: true } : {}),
    ...(isOn("strike") ? { strike: true } : {}),
    ...(underline !== undefined && attribute(underline, "val") !== "none" ? { underline: true } : {}),
    ...(fontColour === undefined ? {} : { colour: fontColour }),
  };
}

/** Cells keep a solid fill in its foreground colour, conditional formats in its background colour. */
function readFill(fill: XmlElement | undefined, colour: ColourReader, place = "fgColor"): CellStyle {
  const pattern = descend(fill, "patternFill");
  const kind = attribute(pattern, "patternType") ?? (place === "bgColor" ? "solid" : "none");
  const found =
    kind === "none" ? undefined : (colourOf(pattern, colour, place) ?? colourOf(pattern, colour, "fgColor"));
  return found === undefined ? {} : { fill: found };
}

function readBorders(border: XmlElement | undefined, colour: ColourReader): CellStyle {
  const borders = Object.fromEntries(
    (["top", "right", "bottom", "left"] as const).flatMap((side) => {
      const element = descend(border, side);
      const style = attribute(element, "style");
      return style === undefined || style === "none"
        ? []
        : [[side, { style, colour: colourOf(element, colour) ?? "#000000" }]];
    }),
  ) as NonNullable<CellStyle["borders"]>;
  return Object.keys(borders).length === 0 ? {} : { borders };
}

function readAlignment(alignment: XmlElement | undefined): CellStyle {
  const horizontal = attribute(alignment, "horizontal");
  const vertical = attribute(alignment, "vertical");
  const indent = numberAttribute(alignment, "indent");
  return {
    ...(horizontal === undefined || horizontal === "general" ? {} : { horizontal }),
    ...(vertical === undefined ? {} : { vertical }),
    ...(flag(alignment, "wrapText") ? { wrap: true } : {}),
    ...(indent === undefined || indent === 0 ? {} : { indent }),
  };
}

function formatCode(format: XmlElement | undefined): string | undefined {
  return attribute(format, "formatCode");
}

function readNumberFormat(code: string | undefined): CellStyle {
  return code === undefined || /^general$/i.test(code) ? {} : { numberFormat: code };
}
