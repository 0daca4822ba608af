import type { Source } from "../shared/source";

export const koldeweij1999: Source = {
  name: "Koldeweij 1999",
  citation:
    "Koldeweij E, Emanuelson U, Janson L 1999. Relation of milk production loss to milk somatic cell count. " +
    "Acta Vet Scand 40:47-56. 18,131 weekly tests of 274 cows: 1.29 (first lactation) and 2.04 kg a day for each unit of log10.",
  standing: "read",
};

/** kg of milk a day for each unit of the common logarithm of the count: first lactation and later ones. */
export const KOLDEWEIJ_KG_PER_LOG10 = { first: 1.29, later: 2.04 } as const;
