import type { Rows } from "../../../blocks/expression/values";
import { numberIn, recordsIn, textIn } from "./rows";

/** Cows with a lesion among the cows examined. */
export interface LesionShare {
  readonly name: string;
  readonly cows: number;
  readonly examined: number;
  readonly share: number | undefined;
  readonly low: number | undefined;
  readonly high: number | undefined;
}

/** HERD.LESION.SHARES: the lesions, the most frequent first, and the cows with any. */
export function lesionSharesIn(rows: Rows): {
  readonly lesions: readonly LesionShare[];
  readonly all: LesionShare | undefined;
} {
  const found = recordsIn(rows).map((row) => ({
    code: textIn(row, "Code"),
    name: textIn(row, "Lesion"),
    cows: numberIn(row, "Cows") ?? 0,
    examined: numberIn(row, "Examined") ?? 0,
    share: numberIn(row, "Share"),
    low: numberIn(row, "Low"),
    high: numberIn(row, "High"),
  }));
  return {
    lesions: found.filter(({ code, cows }) => code !== "all" && cows > 0).sort((a, b) => b.cows - a.cows),
    all: found.find(({ code }) => code === "all"),
  };
}
