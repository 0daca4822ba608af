import type { IRange } from "@univerjs/core";
import { type BaseReferenceObject, RangeReferenceObject } from "@univerjs/engine-formula";

/** Other cells of the sheet that a reference points to, as a function may give them back. */
export function referenceTo(range: IRange, reference: BaseReferenceObject): RangeReferenceObject {
  const other = new RangeReferenceObject(range);
  // The engine looks the sheet up by its name once more; a reference without a name keeps its default sheet.
  other.setDefaultUnitId(reference.getUnitId());
  other.setDefaultSheetId(reference.getSheetId());
  return other;
}
