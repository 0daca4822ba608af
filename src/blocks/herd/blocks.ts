import type { Block } from "../block";
import { againstBefore } from "./against-before";
import { byLactation } from "./by-lactation";
import { causes, causesOf } from "./causes";
import { coverage } from "./coverage";
import { cowGroups } from "./cows-looked-at";
import { hornAndInfectious, hornAndInfectiousOf } from "./horn-and-infectious";
import { lame } from "./lame";
import { lameToTreated } from "./lame-to-treated";
import { lesionRates, lesionRatesOf } from "./lesion-rates";
import { lesionShares, lesionSharesOf } from "./lesion-shares";
import { months, monthsOf } from "./months";
import { newAndRepeat, newAndRepeatOf } from "./new-and-repeat";

/** The blocks of claw health, in the order in which they are shown. */
export const herdBlocks: readonly Block[] = [
  coverage,
  lesionRates,
  lesionShares,
  againstBefore,
  byLactation,
  months,
  hornAndInfectious,
  newAndRepeat,
  lame,
  lameToTreated,
  causes,
];

/** Blocks about a group of cows alone, by the name of the group, in the order in which they are shown. */
export const groupBlocks: ReadonlyMap<string, readonly Block[]> = new Map(
  cowGroups.map((cows) => {
    const withDays = (block: Block): Block => ({ ...block, notes: [...block.notes, ...cows.notes] });
    const rates = lesionRatesOf(cows);
    const others = [
      lesionSharesOf(cows),
      monthsOf(cows),
      withDays(hornAndInfectiousOf(cows)),
      newAndRepeatOf(cows),
      causesOf(cows),
    ];
    return [cows.name, rates === undefined ? others : [withDays(rates), ...others]];
  }),
);
