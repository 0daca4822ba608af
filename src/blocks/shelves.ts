import type { Block } from "./block";
import { cellBlocks } from "./cells/blocks";
import { costBlocks } from "./costs/blocks";
import { groupBlocks, herdBlocks } from "./herd/blocks";
import { cowGroups } from "./herd/cows-looked-at";
import { visitReport } from "./report/visit-report";

/** Blocks that stand together where one is chosen. */
export interface Shelf {
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** Whatever the screens show of whole herds, then of groups of cows: nothing is shown that cannot be put into a sheet. */
export const shelves: readonly Shelf[] = [
  { title: "Claw health", blocks: herdBlocks },
  { title: "Cell counts", blocks: cellBlocks },
  { title: "Costs", blocks: costBlocks },
  { title: "Visit report", blocks: [visitReport] },
  ...cowGroups.map(({ name, title }) => ({ title: `Claw health of ${title}`, blocks: groupBlocks.get(name) ?? [] })),
];

export const everyBlock: readonly Block[] = shelves.flatMap(({ blocks }) => blocks);
