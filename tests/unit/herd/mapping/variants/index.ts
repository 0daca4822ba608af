import { adviserFile, shortHand, testDayPounds, trimmersDiary } from "./english";
import { allgaeu, drenthe, jutland, toggenburg } from "./germanic";
import { galicia, hainaut, mayenne } from "./romance";
import type { Variant } from "./variant";

/** Eleven books of invented farms and advisers, written down before the guesser's word lists were. */
export const variants: readonly Variant[] = [
  trimmersDiary,
  testDayPounds,
  adviserFile,
  shortHand,
  allgaeu,
  toggenburg,
  drenthe,
  jutland,
  mayenne,
  hainaut,
  galicia,
];
