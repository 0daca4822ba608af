// Written by `npm run generate` from the files of this folder. Do not edit.
import { cellScore } from "./cells/cell-score";
import type { FunctionSpec } from "./define";

const described: readonly FunctionSpec[] = [cellScore];

/** Every worksheet function. */
export const registry: readonly FunctionSpec[] = described;
