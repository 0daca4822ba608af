import { attribute, childrenOf, descend, numberAttribute, type XmlElement } from "../xml";

/** Turns the ways in which the file format names a colour into #rrggbb. */
export type ColourReader = (element: XmlElement | undefined) => string | undefined;

/** Colours of the theme, in the order in which styles number them. Source: ECMA-376 Part 1, 18.8.3 (theme). */
const THEME_ORDER = ["lt1", "dk1", "lt2", "dk2", "accent1", "accent2", "accent3", "accent4", "accent5", "accent6"];

/** The palette that indexed colours refer to. Source: ECMA-376 Part 1, 18.8.27 (indexedColors). */
const INDEXED = (
  "000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF 000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF " +
  "800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF " +
  "000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 " +
  "3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333"
).split(" ");

/** `theme` is the root of the theme part; a workbook may have none. */
export function colourReader(theme: XmlElement | undefined): ColourReader {
  const scheme = descend(theme, "themeElements", "clrScheme");
  const themeColours = THEME_ORDER.map((name) => {
    const colour = descend(scheme, name);
    return attribute(descend(colour, "srgbClr"), "val") ?? attribute(descend(colour, "sysClr"), "lastClr");
  });
  return (element) => {
    if (element === undefined) return undefined;
    const theme = numberAttribute(element, "theme");
    const indexed = numberAttribute(element, "indexed");
    const hex =
      attribute(element, "rgb")?.slice(-6) ??
      (theme === undefined ? undefined : themeColours[theme]) ??
      (indexed === undefined ? undefined : INDEXED[indexed]);
    if (hex === undefined || !/^[0-9a-f]{6}$/i.test(hex)) return undefined;
    return tinted(hex, Math.max(-1, Math.min(1, numberAttribute(element, "tint") ?? 0)));
  };
}

/**
 * A colour made lighter (tint above 0) or darker (below 0). Source: ECMA-376 Part 1, 18.8.19 (color), which tints the
 * luminance; mixing with white or black gives the same luminance.
 */
function tinted(hex: string, tint: number): string {
  const mixed = [0, 2, 4].map((at) => {
    const part = parseInt(hex.slice(at, at + 2), 16);
    return Math.round(tint < 0 ? part * (1 + tint) : part + (255 - part) * tint);
  });
  return `#${mixed.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}

/** The colour child of an element: its `color`, or the one named. */
export function colourOf(element: XmlElement | undefined, read: ColourReader, name = "color"): string | undefined {
  return read(childrenOf(element, name)[0]);
}
