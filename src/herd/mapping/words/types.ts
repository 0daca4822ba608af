import type { Meaning } from "../targets";

/**
 * Words of the trade in one language. Common practice, no source. Headings are compared without case, accents and
 * punctuation.
 */
export interface TradeWords {
  /** Words that stand over a column of each meaning. */
  readonly headings: Readonly<Partial<Record<Meaning, readonly string[]>>>;
  readonly feet: {
    readonly left: readonly string[];
    readonly right: readonly string[];
    readonly front: readonly string[];
    readonly hind: readonly string[];
    /** Short forms that are no two of the words above: "LV" for linksvoor. */
    readonly short: Readonly<Record<string, string>>;
  };
  readonly claws: { readonly inner: readonly string[]; readonly outer: readonly string[] };
  readonly landmarks: { readonly hardHorn: readonly string[]; readonly skinHornLine: readonly string[] };
  readonly outcomes: Readonly<Partial<Record<"healed" | "better" | "same" | "worse" | "gone", readonly string[]>>>;
  readonly groups: Readonly<Partial<Record<"fresh" | "high" | "low" | "dry", readonly string[]>>>;
  /** Words that a treatment is recognised by. */
  readonly treatments: readonly string[];
}
