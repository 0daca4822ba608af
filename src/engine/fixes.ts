import type { EngineFunction } from "./engine-function";
import { anchorArrayFunction } from "./fixes/anchor-array";
import { edate } from "./fixes/edate";
import { fixHalfTypedBracket } from "./fixes/half-typed-bracket";
import { fixInvertedIndex } from "./fixes/inverted-index";
import { isoWeekNumber } from "./fixes/isoweeknum";
import { fixLetAndLambda } from "./fixes/let-and-lambda";
import { singleFunction } from "./fixes/single";
import { sort } from "./fixes/sort";
import { fixTableReferences } from "./fixes/table-references";

let areApplied = false;

/** Mends what the formula engine gets wrong. Call once, before an engine is made; further calls change nothing. */
export function applyFixes(): void {
  if (areApplied) return;
  areApplied = true;
  fixHalfTypedBracket();
  fixInvertedIndex();
  fixLetAndLambda();
  fixTableReferences();
}

/** Functions of the engine that are replaced or added. */
export const fixedFunctions: readonly EngineFunction[] = [
  anchorArrayFunction,
  edate,
  isoWeekNumber,
  singleFunction,
  sort,
];
