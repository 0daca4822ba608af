import { LONGER_PER_YEAR_MM, SKIN_HORN_MINIMUM_MM } from "../reference/archer-2015";
import { DUTCH_TOE_LENGTH_MM } from "../reference/toussaint-raven-1985";
import { commonPractice, type Source } from "../shared/source";

/** From where a toe is measured: where the horn turns hard, or the line where skin meets horn, which lies higher. */
export type Landmark = "hard horn" | "skin-horn line";

/** Common practice, no source. */
const COW_HARD_HORN_MM = 81;
/** Last lactation for which a cow counts as a heifer here. */
const HEIFER_LACTATION = 1;

export const cowLengthPractice: Source = commonPractice(
  `the toe of the inner hind claw is kept at about ${COW_HARD_HORN_MM} mm from where the horn turns hard, down to ${DUTCH_TOE_LENGTH_MM} mm in a heifer`,
);
export const measuringPractice: Source = commonPractice("a toe measured twice by hand differs by about 2 mm");

/** Inside this difference two lengths measured by hand are the same. Common practice, no source. */
export const MEASURING_ERROR_MM = 2;

/** Without a lactation a cow is taken for grown. */
export function isHeifer(lactation: number | undefined): boolean {
  return lactation !== undefined && lactation <= HEIFER_LACTATION;
}

/**
 * Length under which the toe of a hind claw is not cut, mm, from the landmark named. Without a lactation it is
 * that of a cow: the longer minimum is the safe one. An age adds Archer's 1 mm a year.
 */
export function toeMinimumMm(landmark: Landmark, lactation?: number, ageYears = 0): number {
  const hardHornMm = isHeifer(lactation) ? DUTCH_TOE_LENGTH_MM : COW_HARD_HORN_MM;
  return (landmark === "hard horn" ? hardHornMm : SKIN_HORN_MINIMUM_MM) + LONGER_PER_YEAR_MM * ageYears;
}

export type ToeAdvice = { readonly kind: "leave" | "short" } | { readonly kind: "shorten"; readonly mm: number };

/** Whether to cut a toe, in whole mm and never below the minimum. Inside the measuring error it is left. */
export function toeAdvice(lengthMm: number, minimumMm: number): ToeAdvice {
  const over = lengthMm - minimumMm;
  if (Math.abs(over) <= MEASURING_ERROR_MM) return { kind: "leave" };
  return over > 0 ? { kind: "shorten", mm: Math.floor(over) } : { kind: "short" };
}

export function toeAdviceText(advice: ToeAdvice): string {
  if (advice.kind === "shorten") return `shorten ${advice.mm} mm`;
  return advice.kind === "short" ? "short: do not cut" : "leave";
}

/** Millimetres to take off a toe; 0 where it is left. */
export function toeCutMm(advice: ToeAdvice): number {
  return advice.kind === "shorten" ? advice.mm : 0;
}
