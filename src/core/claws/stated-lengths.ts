import type { RecheckRule } from "./recheck-rules";

/** Lengths of aftercare that a treatment may state itself. */
export type StatedLengths = Pick<
  RecheckRule,
  "blockOffDays" | "painReliefDays" | "topicalRepeatDays" | "topicalTreatments" | "bandageOffHours"
>;

/** How a length is written beside its word, and the most that is taken for one: the limits of the rules table. */
const LENGTHS: readonly (readonly [keyof StatedLengths, RegExp, number])[] = [
  ["blockOffDays", /\bblock[^,;]*?\b(\d+) ?d(ays?)?\b/, 42],
  ["painReliefDays", /\bpain ?relief[^,;]*?\b(\d+) ?d(ays?)?\b/, 14],
  ["topicalRepeatDays", /\btopical[^,;]*?\bevery (\d+) ?d(ays?)?\b/, 365],
  ["topicalTreatments", /\btopical[^,;]*?\b(\d+) ?(times|x)\b/, 10],
  ["bandageOffHours", /\bbandage[^,;]*?\b(\d+) ?h(ours?)?\b/, 240],
];

/** The lengths that a treatment states: "pain relief 2 d, bandage 48 h" gives 2 days and 48 hours. */
export function statedLengths(treatment: string): StatedLengths {
  const words = treatment.toLowerCase();
  const stated: Partial<Record<keyof StatedLengths, number>> = {};
  for (const [key, pattern, most] of LENGTHS) {
    const length = Number(pattern.exec(words)?.[1] ?? 0);
    if (length >= 1 && length <= most) stated[key] = length;
  }
  return stated;
}
