import type { CellValueInput } from "@cj-tech-master/excelts";
import { areaAddress, parseArea } from "./address";
import type { CellContent } from "./model";
import type { ComputedValues, NewContent, NewFormula } from "./write-model";

export interface Spelling {
  /** A formula as the file stores it; `ownTable` is the table in which it stands. */
  stored(formula: string, ownTable?: string): string;
}

/** The library takes days as Dates in a few places. Serial 25569 is 1970-01-01. */
export function dateOfSerial(serial: number): Date {
  return new Date((serial - 25_569) * 86_400_000);
}

export function isFormula(content: NewContent): content is NewFormula {
  return typeof content === "object" && content !== null && "formula" in content;
}

/** Calls of add-in functions are saved as dynamic arrays of one cell, as Excel saves them. */
function isArrayFormula({ formula, fills }: NewFormula): boolean {
  return fills === true || /\bHERD\./i.test(formula);
}

export interface CellPlace {
  readonly sheet: string;
  readonly address: string;
  readonly ownTable?: string;
}

/** A formula as the library takes it, with the value that is saved beside it. */
export function formulaValue(
  formula: NewFormula,
  place: CellPlace,
  spelling: Spelling,
  computed: ComputedValues | undefined,
): CellValueInput {
  const text = spelling.stored(formula.formula, place.ownTable);
  const content = computed?.value(place.sheet, place.address);
  const result = content === undefined ? {} : { result: resultOf(content) };
  if (!isArrayFormula(formula)) return { formula: text, ...result };
  const ref = computed?.filled(place.sheet, place.address) ?? place.address;
  return { formula: text, shareType: "array", ref, isDynamicArray: true, ...result };
}

type Result = number | string | boolean | { error: "#N/A" };

/** A formula whose value is blank shows 0. */
function resultOf(content: CellContent): Result {
  if (content === null) return 0;
  return typeof content === "object" ? { error: content.error as "#N/A" } : content;
}

/** The values that a filling formula put into the cells around it, without its own. */
export function filledCells(
  sheet: string,
  address: string,
  computed: ComputedValues | undefined,
): { readonly address: string; readonly value: Result }[] {
  const area = parseArea(computed?.filled(sheet, address) ?? address);
  const cells: { address: string; value: Result }[] = [];
  if (area === undefined) return cells;
  for (let row = area.firstRow; row <= area.lastRow; row++) {
    for (let column = area.firstColumn; column <= area.lastColumn; column++) {
      const at = areaAddress({ firstRow: row, lastRow: row, firstColumn: column, lastColumn: column });
      const content = computed?.value(sheet, at);
      if (at !== address && content !== undefined) cells.push({ address: at, value: resultOf(content) });
    }
  }
  return cells;
}
