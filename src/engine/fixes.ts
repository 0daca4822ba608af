import type { EngineFunction } from "./engine-function";
import { anchorArrayFunction } from "./fixes/anchor-array";
import { fixBlankResult } from "./fixes/blank-result";
import { concat } from "./fixes/concat";
import { edate } from "./fixes/edate";
import { fixHalfTypedBracket } from "./fixes/half-typed-bracket";
import { fixHiddenRows } from "./fixes/hidden-rows";
import { fixInvertedIndex } from "./fixes/inverted-index";
import { ifFunction } from "./fixes/if";
import { image } from "./fixes/image";
import { isoWeekNumber } from "./fixes/isoweeknum";
import { fixKeptRanges } from "./fixes/kept-ranges";
import { fixKnownRanges } from "./fixes/known-ranges";
import { fixLetAndLambda } from "./fixes/let-and-lambda";
import { maxifs, minifs } from "./fixes/minifs";
import { fixOneSearch } from "./fixes/one-search";
import { fixOwnRow } from "./fixes/own-row";
import { fixPlainTexts } from "./fixes/plain-texts";
import { fixRangeUnion } from "./fixes/range-union";
import { fixResultPosition } from "./fixes/result-position";
import { fixRunsInTurn } from "./fixes/runs-in-turn";
import { search } from "./fixes/search";
import { fixSheetLimits } from "./fixes/sheet-limits";
import { singleFunction } from "./fixes/single";
import { sort } from "./fixes/sort";
import { fixSpillOrder } from "./fixes/spill-order";
import { fixTableReferences } from "./fixes/table-references";
import { take } from "./fixes/take";
import { fixThrowingFormula } from "./fixes/throwing-formula";
import { unique } from "./fixes/unique";

let areApplied = false;

/** Mends what the formula engine gets wrong. Call once, before an engine is made; further calls change nothing. */
export function applyFixes(): void {
  if (areApplied) return;
  areApplied = true;
  fixBlankResult();
  fixHalfTypedBracket();
  fixHiddenRows();
  fixInvertedIndex();
  fixKeptRanges();
  fixKnownRanges();
  fixLetAndLambda();
  fixTableReferences();
  fixOneSearch();
  fixOwnRow();
  fixPlainTexts();
  fixRangeUnion();
  fixResultPosition();
  fixRunsInTurn();
  fixSheetLimits();
  fixSpillOrder();
  // Last, so that it stands around all others.
  fixThrowingFormula();
}

/** Functions of the engine that are replaced or added. */
export const fixedFunctions: readonly EngineFunction[] = [
  anchorArrayFunction,
  concat,
  edate,
  ifFunction,
  image,
  isoWeekNumber,
  maxifs,
  minifs,
  search,
  singleFunction,
  sort,
  take,
  unique,
];
