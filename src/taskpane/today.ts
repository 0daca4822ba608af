import { type DaySerial, serialOf } from "../core/shared/days";

/** The day it is where the user is. */
export function today(): DaySerial {
  const now = new Date();
  return serialOf({ year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() });
}
