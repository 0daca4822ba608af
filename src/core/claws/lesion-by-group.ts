import { affectedCows } from "./lesion-share";
import type { LesionSelection } from "./lesion-selection";

const lactationGroups = ["heifers", "first lactation", "second and later", "lactation not given"] as const;
export type LactationGroup = (typeof lactationGroups)[number];

/** Group of a lactation number; a heifer before calving is 0; NaN is not given. */
export function lactationGroup(lactation: number): LactationGroup {
  if (Number.isNaN(lactation)) return "lactation not given";
  return lactation === 0 ? "heifers" : lactation === 1 ? "first lactation" : "second and later";
}

export interface GroupShare {
  readonly group: LactationGroup;
  readonly affected: number;
  readonly examined: number;
}

/** Cows examined and affected by group; a cow with rows in two groups counts in both. */
export function affectedByGroup(
  cows: readonly (string | null)[],
  lesions: readonly (string | null)[],
  lactations: ArrayLike<number>,
  selection: LesionSelection,
): { readonly groups: readonly GroupShare[]; readonly sound: number; readonly leftOut: number } {
  const parts = lactationGroups.map((group) => {
    const rows: number[] = [];
    for (let row = 0; row < cows.length; row++) if (lactationGroup(lactations[row]!) === group) rows.push(row);
    const part = affectedCows(
      rows.map((row) => cows[row] ?? null),
      rows.map((row) => lesions[row] ?? null),
      selection,
    );
    return { group, ...part };
  });
  return {
    groups: parts.map(({ group, affected, examined }) => ({ group, affected, examined })),
    sound: parts.reduce((sum, part) => sum + part.sound, 0),
    leftOut: parts.reduce((sum, part) => sum + part.leftOut, 0),
  };
}
