import type { IMutationInfo } from "@univerjs/core";

/** Changes of the grid's data, and those that take them back in the order in which they are to run. */
export interface Mutations {
  readonly redos: IMutationInfo[];
  readonly undos: IMutationInfo[];
}

export const NO_MUTATIONS: Mutations = { redos: [], undos: [] };

/** Several changes after each other. */
export function inSequence(steps: readonly Mutations[]): Mutations {
  return {
    redos: steps.flatMap(({ redos }) => redos),
    undos: [...steps].reverse().flatMap(({ undos }) => undos),
  };
}

/** The sheet that a change is made in. */
export interface SheetPlace {
  readonly unitId: string;
  readonly subUnitId: string;
}
