import type { IBorderData, ICellData, IStyleData, Nullable, Workbook } from "@univerjs/core";
import { gridStyle } from "../engine/snapshot/styles";
import { styleNumber } from "../engine/snapshot/sheet";
import { hasFormula, shownValue } from "../workbook/grid/tables/cells";
import { needsTextMark } from "../workbook/plain-text";
import type { CellMark } from "../xlsx/edit/mark-cells";
import type { CellModel, CellStyle, WorkbookModel } from "../xlsx/model";

/** The cells that look otherwise in the grid than in the file that was opened, and how. */
export function styledCells(workbook: Workbook, { sheets, styles }: WorkbookModel): CellMark[] {
  return workbook.getSheets().flatMap((sheet) => {
    const name = sheet.getName();
    const present = sheets.find((known) => known.name === name)?.cells ?? [];
    const places = new Map(present.map((cell) => [`${cell.row},${cell.column}`, cell]));
    const marks: CellMark[] = [];
    sheet.getCellMatrix().forValue((row, column, cell) => {
      if (cell == null) return;
      const known = places.get(`${row},${column}`);
      const asText = isNewText(cell, known) ? { asText: true } : {};
      const number = typeof cell.s === "string" ? styleNumber(cell.s) : undefined;
      const style = number ?? known?.style ?? 0;
      const own = workbook.getStyles().getStyleByCell(cell) ?? {};
      const isStyled = cell.s != null && number === undefined;
      const mark = { ...(isStyled ? differences(own, gridStyle(styles[style] ?? {})) : {}), ...asText };
      if (Object.keys(mark).length > 0) marks.push({ sheet: name, row, column, style, ...mark });
    });
    return marks;
  });
}

/** Text that was put in since the file was opened and that looks like something else. */
function isNewText(cell: ICellData, known: CellModel | undefined): boolean {
  if (hasFormula(cell)) return false;
  const text = shownValue(cell);
  return typeof text === "string" && text !== known?.value && needsTextMark(text);
}

const HORIZONTAL: Readonly<Record<number, string>> = { 1: "left", 2: "center", 3: "right" };
const VERTICAL: Readonly<Record<number, string>> = { 1: "top", 2: "center", 3: "bottom" };
/** The grid's code for text that goes on in the next line. */
const WRAP = 3;

/** What a style of the grid says otherwise than that of the file. What it leaves out stays as the file has it. */
function differences(own: IStyleData, file: IStyleData): Pick<CellMark, "numberFormat" | "look"> {
  const changed = Object.fromEntries(
    Object.entries(own).filter(
      ([name, value]) => JSON.stringify(value) !== JSON.stringify(file[name as keyof IStyleData]),
    ),
  ) as IStyleData;
  const { fs: size, bl, it, cl, bg, ht, vt, tb, bd, n } = changed;
  const [colour, fill, numberFormat] = [rgb(cl), rgb(bg), n?.pattern];
  const [horizontal, vertical] = [HORIZONTAL[ht ?? 0], VERTICAL[vt ?? 0]];
  const look: CellStyle = {
    ...(size == null ? {} : { size }),
    ...(bl === 1 ? { bold: true } : {}),
    ...(it === 1 ? { italic: true } : {}),
    ...(colour === undefined ? {} : { colour }),
    ...(fill === undefined ? {} : { fill }),
    ...(horizontal === undefined ? {} : { horizontal }),
    ...(vertical === undefined ? {} : { vertical }),
    ...(tb === WRAP ? { wrap: true } : {}),
    ...(bd == null ? {} : { borders: bordersOf(bd) }),
  };
  return {
    ...(numberFormat === undefined ? {} : { numberFormat }),
    ...(Object.keys(look).length === 0 ? {} : { look }),
  };
}

function bordersOf({ t, r, b, l }: IBorderData): NonNullable<CellStyle["borders"]> {
  const sides = { top: t, right: r, bottom: b, left: l };
  return Object.fromEntries(
    Object.entries(sides).flatMap(([side, border]) => {
      const colour = rgb(border?.cl);
      return colour === undefined ? [] : [[side, { style: "thin", colour }]];
    }),
  );
}

/** Colours that the grid keeps otherwise than as #rrggbb are those of a theme, which the pane never gives. */
function rgb(colour: Nullable<{ rgb?: Nullable<string> }>): string | undefined {
  const text = colour?.rgb;
  return text != null && /^#[0-9a-f]{6}$/i.test(text) ? text : undefined;
}
