import type { LesionCases, LesionTable } from "../../../../src/taskpane/screens/herd/lesions";

/** A lesion with so many new cases; what a test does not ask for is 0. */
export function lesion(code: string, name: string, newCases: number, more: Partial<LesionCases> = {}): LesionCases {
  return { code, name, newCases, repeats: 0, cows: 0, rate: 0, low: 0, high: 0, target: undefined, against: "", note: "", ...more }; // oxfmt-ignore
}

/** A table of lesions; all together are their sum, forms left out. */
export function tableOf(
  lesions: readonly LesionCases[],
  all: number,
  groups: readonly LesionCases[] = [],
): LesionTable {
  return { lesions, groups, all: lesion("all", "All lesions", all) };
}
