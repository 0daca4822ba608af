import type { Source } from "../shared/source";

/** Two-test status with "200,000 or more" as high; mean new infection rate 0.11 and cure rate 0.27 a month. */
export const fauteux2014: Source = {
  name: "Fauteux 2014",
  citation:
    "Fauteux V, Roy J-P, Scholl DT, Bouchard É 2014. Benchmarks for evaluation and comparison of udder health status using monthly " +
    "individual somatic cell count. Can Vet J 55:741-748. Levels read; title and pages from memory.",
  standing: "read",
};

/** Printed mean rates a month in lactation, and benchmarks of the dry period, as shares. */
export const FAUTEUX_LEVELS = { newPerMonth: 0.11, curePerMonth: 0.27, dryHealthy: 0.7, dryLasting: 0.03 } as const;
