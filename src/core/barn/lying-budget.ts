import { DomainError } from "../shared/domain-error";

const HOURS_PER_DAY = 24;
/** Cows rest 12 to 14 hours a day. Source: time budgets as published (Cornell). */
export const LYING_TARGET_HOURS = 12;

/** Hours of the day left for lying. */
export function lyingHours(milkingHours: number, eatingHours: number, otherHours: number): number {
  const left = HOURS_PER_DAY - milkingHours - eatingHours - otherHours;
  if (left >= 0) return left;
  throw new DomainError(
    "invalid",
    `milkingHours, eatingHours and otherHours must be at most ${HOURS_PER_DAY} together; got ${HOURS_PER_DAY - left}`,
  );
}
