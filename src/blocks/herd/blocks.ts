import type { Block } from "../block";
import { againstBefore } from "./against-before";
import { byLactation } from "./by-lactation";
import { causes } from "./causes";
import { coverage } from "./coverage";
import { hornAndInfectious } from "./horn-and-infectious";
import { lame } from "./lame";
import { lameToTreated } from "./lame-to-treated";
import { lesionRates } from "./lesion-rates";
import { months } from "./months";
import { newAndRepeat } from "./new-and-repeat";

/** The blocks of claw health, in the order in which they are shown. */
export const herdBlocks: readonly Block[] = [
  coverage,
  lesionRates,
  againstBefore,
  byLactation,
  months,
  hornAndInfectious,
  newAndRepeat,
  lame,
  lameToTreated,
  causes,
];
