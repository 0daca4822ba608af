import type { DaySerial } from "../../core/shared/days";
import { type CowLife, lactationOn } from "./lives";
import type { Random } from "./random";

/** Length and landmark of the inner claw of a hind foot before trimming; mostly long, now and then short. */
export function toeMeasurement(
  life: CowLife,
  date: DaySerial,
  random: Random,
): { readonly toeMm: number; readonly measuredFrom: string } {
  const heifer = lactationOn(life, date)?.number === 1;
  if (random.chance(0.12))
    return { toeMm: Math.round(random.normal(heifer ? 91 : 95, 4)), measuredFrom: "skin-horn line" };
  return { toeMm: Math.round(random.normal(heifer ? 79 : 85, 4)), measuredFrom: "hard horn" };
}
