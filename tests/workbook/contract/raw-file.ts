import { type Cell, Workbook } from "@cj-tech-master/excelts";
import { cellPosition } from "../../../src/workbook/cell-address";
import type { PlainCell } from "../../../src/workbook/port";
import { readWorkbook } from "../../../src/xlsx/read";
import { saveEdits } from "../../../src/xlsx/save-edits";
import type { RawCell, RawLook } from "./test-book";

/** Reads a cell by another library than the one under test. */
export async function rawFileCell(bytes: Uint8Array, sheet: string, address: string): Promise<RawCell> {
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  const cell = workbook.getWorksheet(sheet)?.getCell(address);
  if (cell === undefined) return { value: null, hasFormula: false };
  const { value, formula, numFmt } = cell as { value: unknown; formula?: string; numFmt?: string };
  return {
    value: formula === undefined ? plain(value) : null,
    hasFormula: formula !== undefined,
    ...(numFmt === undefined ? {} : { numberFormat: numFmt }),
    look: lookOf(cell),
    width: workbook.getWorksheet(sheet)?.getColumn(cell.col).width ?? USUAL_WIDTH,
  };
}

const USUAL_WIDTH = 8;

function lookOf({ font, fill, alignment, border }: Pick<Cell, "font" | "fill" | "alignment" | "border">): RawLook {
  const colour = (argb: string | undefined): string | undefined => argb && `#${argb.slice(2)}`;
  const ink = colour(font?.color?.argb);
  const filling = fill?.type === "pattern" && fill.pattern === "solid" ? colour(fill.fgColor?.argb) : undefined;
  const line = border?.bottom?.style === "thin" ? colour(border.bottom.color?.argb) : undefined;
  return {
    ...(font?.bold === true ? { bold: true } : {}),
    ...(font?.italic === true ? { italic: true } : {}),
    ...(font?.size === undefined || font.size === USUAL_SIZE ? {} : { size: font.size }),
    ...(ink === undefined ? {} : { colour: ink }),
    ...(filling === undefined ? {} : { fill: filling }),
    ...(alignment?.horizontal === "right" ? { right: true } : {}),
    ...(line === undefined ? {} : { lineBelow: line }),
  };
}

const USUAL_SIZE = 11;

/** The library gives days as dates. Serial 25,569 is 1970-01-01. */
function plain(value: unknown): PlainCell {
  if (value instanceof Date) return value.getTime() / 86_400_000 + 25_569;
  if (value === undefined || value === "") return null;
  if (typeof value === "object" && value !== null && "richText" in value) return JSON.stringify(value);
  return value as PlainCell;
}

/** The file after someone changed it with another program. */
export async function editedFile(bytes: Uint8Array, change: (workbook: Workbook) => unknown): Promise<Uint8Array> {
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  await change(workbook);
  return new Uint8Array((await workbook.xlsx.writeBuffer()) as unknown as ArrayBuffer);
}

/** What someone types. The library above does not see tables that were added, so that it cannot be used for it. */
export function typedInto(bytes: Uint8Array, name: string, address: string, value: PlainCell): Uint8Array {
  return enteredInto(bytes, name, address, { value });
}

export function enteredInto(
  bytes: Uint8Array,
  name: string,
  address: string,
  entered: { readonly value: PlainCell; readonly formula?: string },
): Uint8Array {
  const model = readWorkbook(bytes, []);
  const sheet = model.sheets.find((known) => known.name === name)!;
  const place = cellPosition(address);
  const others = sheet.cells.filter(
    (cell) =>
      (cell.row !== place.row || cell.column !== place.column) && (cell.value !== null || cell.formula !== undefined),
  );
  const tables = sheet.tables.map((table) => ({ name: table.name, area: table.area }));
  const fresh = { name, cells: [], spills: [] };
  return saveEdits(bytes, model, [], [{ name, contents: [...others, { ...place, ...entered }], tables, fresh }]);
}
