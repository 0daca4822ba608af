/**
 * How sure a figure is.
 * - `read`: the number was read in the source named, or in its abstract.
 * - `memory`: the number is quoted from memory; the user should be able to change it.
 * - `common practice`: a habit of the trade without a source.
 * - `definition`: arithmetic or a definition, nothing measured.
 */
export type Standing = "read" | "memory" | "common practice" | "definition";

/** Where a figure comes from. */
export interface Source {
  /** Short name: author and year, or the standard's name. */
  readonly name: string;
  /** Full citation: authors, year, title, journal. */
  readonly citation: string;
  readonly standing: Standing;
}

/** A habit of the trade that has no source. */
export function commonPractice(fact: string): Source {
  return { name: "Common practice", citation: `Common practice, no source: ${fact}`, standing: "common practice" };
}

/** A definition or plain arithmetic. */
export function definition(text: string): Source {
  return { name: "Definition", citation: text, standing: "definition" };
}
