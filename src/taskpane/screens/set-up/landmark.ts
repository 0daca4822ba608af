import { LANDMARKS } from "../../../workbook/tables";

/** The answer of someone who does not know where toes were measured from. */
export const NOT_KNOWN = "not known";
export const LANDMARK_ANSWERS: readonly string[] = [...LANDMARKS, NOT_KNOWN];

/** Toe lengths from the two landmarks are not comparable: one of them has to be said. */
export function needsLandmark({
  readAs,
  columns,
}: {
  readonly readAs: string;
  readonly columns: readonly { readonly key: string }[];
}): boolean {
  const has = (key: string): boolean => columns.some((column) => column.key === key);
  return readAs === "Findings" && has("toeMm") && !has("measuredFrom");
}
