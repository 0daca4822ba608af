import type { Block } from "../block";
import { lesionCosts } from "./lesion-costs";
import { sideBySide } from "./side-by-side";

/** The blocks of money, in the order in which they are shown. */
export const costBlocks: readonly Block[] = [lesionCosts, sideBySide];
