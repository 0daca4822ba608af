import { type DaySerial, LAST_DAY } from "../shared/days";
import { DomainError } from "../shared/domain-error";

const SECONDS_PER_HOUR = 3600;
const SECONDS_PER_DAY = 24 * SECONDS_PER_HOUR;

/**
 * First day that lies wholly after a withdrawal period. `lastDose` is a serial, with its time of day where one is
 * known. A day without a time counts from its end, since the dose may have been given late.
 * Whole seconds are counted so that 08:00 and 16 hours make exactly one day.
 */
export function withdrawalClear(lastDose: number, hours: number): DaySerial {
  const from = Number.isInteger(lastDose) ? lastDose + 1 : lastDose;
  const seconds = Math.round(from * SECONDS_PER_DAY) + Math.round(hours * SECONDS_PER_HOUR);
  const clear = Math.ceil(seconds / SECONDS_PER_DAY);
  if (clear <= LAST_DAY) return clear;
  throw new DomainError(
    "invalid",
    "lastDose is so late that the day after the period is past the last day a sheet knows",
  );
}
