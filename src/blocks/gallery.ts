import type { Block, BlockScreen } from "./block";
import { cellBlocks } from "./cells/blocks";
import { costBlocks } from "./costs/blocks";
import { herdBlocks } from "./herd/blocks";

/** Every block, in the order of the screens and of their parts. */
export const gallery: readonly Block[] = [...herdBlocks, ...cellBlocks, ...costBlocks];

export function blocksOf(screen: BlockScreen): readonly Block[] {
  return gallery.filter((block) => block.screen === screen);
}

export function blockOf(id: string): Block {
  const found = gallery.find((block) => block.id === id);
  if (found === undefined) throw new Error(`there is no block ${id}`);
  return found;
}
