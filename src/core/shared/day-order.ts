import type { DaySerial } from "./days";

/**
 * Places in the order of their days, those of a day as they are given. A worksheet's days are few enough to count the
 * places of each, which takes no more time a place however many there are.
 */
export function orderByDay(places: Int32Array, days: ArrayLike<DaySerial>): Int32Array {
  let [first, last] = [Infinity, -Infinity];
  for (let at = 0; at < places.length; at++) {
    const day = days[places[at]!]!;
    if (day < first) first = day;
    if (day > last) last = day;
  }
  if (first >= last) return places;
  /** How many places come before those of day n; as they are put in order, where the next of day n goes. */
  const before = new Int32Array(last - first + 2);
  for (let at = 0; at < places.length; at++) before[days[places[at]!]! - first + 1]!++;
  for (let day = 1; day < before.length; day++) before[day]! += before[day - 1]!;
  const order = new Int32Array(places.length);
  for (let at = 0; at < places.length; at++) order[before[days[places[at]!]! - first]!++] = places[at]!;
  return order;
}
