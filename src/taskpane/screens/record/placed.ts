import type { TableContent, TypedValue } from "../../../workbook/table-port";
import { type FindingKey, headingOf, placeUnder } from "./places";

/** Values of a row by key. */
export type Values = Readonly<Record<string, TypedValue>>;

/** What a value is called in the note. */
const IN_NOTE: ReadonlyMap<string, string> = new Map<FindingKey, string>([
  ["foot", "foot "],
  ["claw", "claw "],
  ["zone", "zone "],
  ["stage", "stage "],
  ["severity", "severity "],
  ["measuredFrom", "toe measured from "],
  ["treatment", "treatment: "],
]);

/** Where there is no note either, these are left out: the screen asks for them all the same and says so beside them. */
const LEFT_OUT: ReadonlySet<string> = new Set<FindingKey>(["foot", "claw", "zone"]);

/** Parts the values of a finding into those of its row and those that go into the note. */
export function placed(
  content: TableContent,
  values: Values,
): { readonly cells: Values; readonly notes: readonly string[] } {
  const cells: [string, TypedValue][] = [];
  const notes: string[] = [];
  for (const [key, value] of Object.entries(values)) {
    const words = IN_NOTE.get(key);
    const place = words === undefined ? "column" : placeUnder(content, headingOf(key as FindingKey));
    if (place === "note" && value !== null) notes.push(`${words}${String(value)}`);
    // The rest stays in the row: saving refuses it by name.
    if (place === "column" || (place === "nowhere" && !LEFT_OUT.has(key))) cells.push([key, value]);
  }
  return { cells: Object.fromEntries(cells), notes };
}
