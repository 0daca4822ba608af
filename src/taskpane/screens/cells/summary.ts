import type { Rows } from "../../../blocks/expression/values";

/** A table that a function spills: its headings, then its rows. */
export type Spilled = Rows;

/** One figure of a table of figures. */
export interface Figure {
  /** undefined where the function could not compute it; the note then says why. */
  readonly value: number | undefined;
  readonly unit: string;
  readonly note: string;
}

/** The figures of HERD.CELL.SUMMARY by name. */
export function figuresOf([, ...rows]: Spilled): ReadonlyMap<string, Figure> {
  return new Map(
    rows.map(([name, value, unit, note]) => [
      String(name),
      { value: typeof value === "number" ? value : undefined, unit: String(unit), note: String(note) },
    ]),
  );
}
