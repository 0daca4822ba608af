import { danish } from "./danish";
import { dutch } from "./dutch";
import { english } from "./english";
import { french } from "./french";
import { german } from "./german";
import { spanish } from "./spanish";
import type { TradeWords } from "./types";

export type { TradeWords };

/** The languages that headings and words are read in. */
export const languages = { English: english, French: french, German: german, Dutch: dutch, Spanish: spanish, Danish: danish } as const satisfies Record<string, TradeWords>; // oxfmt-ignore

export const allWords: readonly TradeWords[] = Object.values(languages);
