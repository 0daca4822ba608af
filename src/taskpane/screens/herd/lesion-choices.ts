import { disorders } from "../../../core/claws/disorder-key";

/** The lesion that the block shows without being asked. */
export const USUAL_LESION = "DD";

/** Lesions and groups that can be looked at by lactation, with the words for them. */
export const LESION_CHOICES: readonly (readonly [string, string])[] = [
  [USUAL_LESION, "none"],
  ["all", "All lesions"],
  ["horn", "Claw horn lesions"],
  ["infectious", "Infectious lesions"],
  ...disorders
    .filter(({ code, parent }) => parent === undefined && code !== USUAL_LESION)
    .map(({ code, name }): readonly [string, string] => [code, name]),
];
