import type { DaySerial } from "../shared/days";

const HOURS_A_DAY = 24;

/**
 * Whether a cow seen lame on one day was treated within so many hours. Whole days count: the next day is 24 hours on.
 * An untreated cow (NaN) was not. Leach et al. 2012 treated within 48 hours.
 */
export function treatedWithin(seenLameOn: DaySerial, treatedOn: DaySerial, hours: number): boolean {
  return (treatedOn - seenLameOn) * HOURS_A_DAY <= hours;
}
