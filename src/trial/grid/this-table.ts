import { ICommandService, type Injector, ObjectMatrix } from "@univerjs/core";
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from "@univerjs/sheets";
import { type ITableRange, TableManager } from "@univerjs/sheets-table";
import { parseStructRef, stringifyStructRef, tokenize } from "@borgar/fx";

/**
 * Within a table one types [@Lesion] for a cell of the same row. The grid's engine knows such a reference only with
 * the table's name before it: Findings[[#This Row],[Lesion]].
 */
export function nameTheTable(formula: string, tableName: string): string {
  if (!formula.includes("[")) return formula;
  return tokenize(formula, { mergeRefs: true })
    .map(({ type, value }) => {
      const reference = type === "structured" ? parseStructRef(value) : undefined;
      if (!reference || reference.table) return value;
      return stringifyStructRef({ ...reference, table: tableName }, { thisRow: true });
    })
    .join("");
}

/** Names the table in every formula that is written into one, before it is taken in. */
export function nameTablesInFormulas(injector: Injector): void {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== SetRangeValuesMutation.id) return;
    const { unitId, subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
    const tables = injector.get(TableManager).getTablesBySubunitId(unitId, subUnitId);
    if (tables.length === 0) return;
    new ObjectMatrix(cellValue).forValue((row, column, cell) => {
      if (typeof cell?.f !== "string" || !cell.f.includes("[")) return;
      const table = tables.find((candidate) => takesIn(candidate.getRangeInfo(), row, column));
      if (table) cell.f = nameTheTable(cell.f, table.getDisplayName());
    });
  });
}

/** A row right below the table will be part of it in a moment. */
function takesIn({ startRow, endRow, startColumn, endColumn }: ITableRange, row: number, column: number): boolean {
  return row >= startRow && row <= endRow + 1 && column >= startColumn && column <= endColumn;
}
