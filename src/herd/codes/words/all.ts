import { danish } from "./danish";
import { dutch } from "./dutch";
import { english } from "./english";
import { french } from "./french";
import { german } from "./german";
import { spanish } from "./spanish";
import type { LesionWords } from "./types";

export const lesionLanguages = { English: english, French: french, German: german, Dutch: dutch, Spanish: spanish, Danish: danish } as const satisfies Record<string, LesionWords>; // oxfmt-ignore
