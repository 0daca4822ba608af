import { BorderStyleTypes } from "@univerjs/core";
import type { IRangeThemeStyleJSON } from "@univerjs/sheets";

const LINE = { s: BorderStyleTypes.THIN, cl: { rgb: "#cfc2ab" } };

/** How tables look in the grid: headings on straw, every other row on oat. */
export const strawTable: { name: string; style: Omit<IRangeThemeStyleJSON, "name"> } = {
  name: "straw",
  style: {
    headerRowStyle: { bg: { rgb: "#e9dcc3" }, cl: { rgb: "#2a2520" }, bl: 1, bd: { t: LINE, b: LINE } },
    headerColumnStyle: { bd: { l: LINE } },
    firstRowStyle: { bg: { rgb: "#ffffff" } },
    secondRowStyle: { bg: { rgb: "#faf6ee" } },
    lastRowStyle: { bd: { b: LINE } },
    lastColumnStyle: { bd: { r: LINE } },
  },
};
