import type { DaySerial } from "../shared/days";

/**
 * Days that a cow was in the herd between `from` and `to`, all four days included; `leftOn` NaN = still there.
 */
export function daysAtRisk(enteredOn: DaySerial, leftOn: DaySerial, from: DaySerial, to: DaySerial): number {
  const last = leftOn <= to ? leftOn : to;
  return Math.max(0, last - Math.max(enteredOn, from) + 1);
}
