import type { Block } from "../../../blocks/block";
import { groupBlocks } from "../../../blocks/herd/blocks";
import { blocksOf } from "../../../blocks/gallery";
import type { CowGroup } from "./choices";

const whole = blocksOf("herd");

/** The blocks about the cows chosen, in the order of the screen. */
export function blocksAbout(group: CowGroup): readonly Block[] {
  return group === "all" ? whole : (groupBlocks.get(group) ?? []);
}

/** Every block that the screen may show. */
export const allBlocks: readonly Block[] = [...whole, ...[...groupBlocks.values()].flat()];

/** The kind of a block, whatever cows it is about: "lesion-rates" of "lesion-rates-first". */
export function kindOf({ id }: Block): string {
  return id.replace(/-(?:heifers|first|later)$/, "");
}
