import { day, type DaySerial } from "../../../core/shared/days";
import { DomainError } from "../../../core/shared/domain-error";

/** A number as typed, with a point or a comma; undefined where it is blank, NaN where it is no number. */
export function typedNumber(text: string): number | undefined {
  const trimmed = text.trim().replace(",", ".");
  if (trimmed === "") return undefined;
  return /^\d+(\.\d+)?$/.test(trimmed) ? Number(trimmed) : NaN;
}

/** A date as typed, 2024-02-29; undefined where it is none. */
export function typedDay(text: string): DaySerial | undefined {
  try {
    return day(text.trim());
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}
