import type { Source } from "../shared/source";

export const dohooLeslie1991: Source = {
  name: "Dohoo & Leslie 1991",
  citation:
    "Dohoo IR, Leslie KE 1991. Evaluation of changes in somatic cell counts as indicators of new intramammary infections. " +
    "Prev Vet Med 10:225-237. The limit of 200,000 is quoted from memory.",
  standing: "memory",
};

/** Line between cows likely uninfected and likely infected, thousand cells/mL. */
export const INFECTION_LIMIT_THOUSAND = 200;
