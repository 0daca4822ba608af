import type { Block } from "../block";
import { byTest } from "./by-test";
import { changes } from "./changes";
import { dryPeriod } from "./dry-period";
import { lameAndHigh } from "./lame-and-high";
import { legalLimit } from "./legal-limit";
import { tank } from "./tank";
import { topCows } from "./top-cows";
import { whatIf } from "./what-if";
import { yearlyBill } from "./yearly-bill";

/** The blocks of milk quality, in the order in which they are shown. */
export const cellBlocks: readonly Block[] = [
  yearlyBill,
  topCows,
  whatIf,
  tank,
  byTest,
  changes,
  dryPeriod,
  lameAndHigh,
  legalLimit,
];
