import { ArrayValueObject, type BaseValueObject } from "@univerjs/engine-formula";

/** Rows of values as the engine holds them; they belong to no cells of a sheet. */
export function newArray(rows: (BaseValueObject | null)[][]): ArrayValueObject {
  return ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}
