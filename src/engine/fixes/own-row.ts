import { parseStructRef, tokenize } from "@borgar/fx";
import { FormulaDependencyGenerator } from "@univerjs/engine-formula";
import type { DependencyGeneratorInternals } from "../internals";
import { tableIndex } from "./table-references";

/**
 * A reference to the formula's own row of a table, [@Cow], gave the cell in that row of the sheet even where the
 * table has no such row, or stands on another sheet. Source: Microsoft, "Using structured references with Excel
 * tables": #VALUE! outside of the table's rows.
 */
export function fixOwnRow(): void {
  const prototype = FormulaDependencyGenerator.prototype as unknown as DependencyGeneratorInternals;
  const create = prototype._createFDtree;
  prototype._createFDtree = function (this: unknown, unitId, sheetId, row, column, unitData, formulaDataItem) {
    const tree = create.call(
      this as DependencyGeneratorInternals,
      unitId,
      sheetId,
      row,
      column,
      unitData,
      formulaDataItem,
    );
    const isOutside = ownRowTables(tree.formula).some((name) => {
      const table = tableIndex.get(unitId, name);
      if (table === undefined) return false;
      return table.sheetId !== sheetId || row <= table.range.startRow || row > table.range.endRow;
    });
    if (isOutside) tree.formula = "=#VALUE!";
    return tree;
  };
}

const known = new Map<string, readonly string[]>();
/** A workbook has few different formulas that name their own row; the list is begun anew before it grows large. */
const MOST_KNOWN = 1000;

/** The tables of whose rows the formula means its own. */
function ownRowTables(formula: string): readonly string[] {
  if (!/@|#this row/i.test(formula) || !formula.includes("[")) return [];
  let tables = known.get(formula);
  if (tables === undefined) {
    tables = tokenize(formula).flatMap(({ type, value }) => {
      const reference = type === "structured" ? parseStructRef(value) : undefined;
      const isOwnRow = reference?.sections?.some((section) => section.toLowerCase() === "this row");
      return isOwnRow && reference?.table ? [reference.table] : [];
    });
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(formula, tables);
  }
  return tables;
}
