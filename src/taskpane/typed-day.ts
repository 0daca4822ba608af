import { day, type DaySerial } from "../core/shared/days";
import { DomainError } from "../core/shared/domain-error";

/** A date as typed, 2024-02-29; undefined where it is none. */
export function typedDay(text: string): DaySerial | undefined {
  try {
    return day(text.trim());
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}
