import { withdrawalClear } from "../../../core/claws/withdrawal";
import { addDays, type DaySerial, isoDate } from "../../../core/shared/days";
import { namesDrug } from "./care";
import type { Care } from "./fields";
import { typedNumber } from "./typed-text";

const HOURS_PER_DAY = 24;

export interface ClearDay {
  readonly of: "milk" | "meat";
  /** The period as the label has it: "72 h", "nil". */
  readonly period: string;
  /** First day after the period; undefined for a period of nil. */
  readonly clear: DaySerial | undefined;
}

/** The last day on which the drug is given: the last of the course of pain relief, else the day itself. */
function lastDoseOn(care: Care, date: DaySerial): DaySerial {
  const days = care.painRelief ? typedNumber(care.painReliefDays) : undefined;
  return days !== undefined && days >= 1 ? addDays(date, Math.floor(days) - 1) : date;
}

/** The clear days of the periods that were typed. A period that was not typed has none: there is no default. */
export function clearDays(care: Care, date: DaySerial): readonly ClearDay[] {
  if (!namesDrug(care)) return [];
  const dose = lastDoseOn(care, date);
  const one = (of: "milk" | "meat", text: string, unit: "h" | "d", hours: number): ClearDay[] => {
    const period = typedNumber(text);
    if (period === undefined || Number.isNaN(period)) return [];
    if (period === 0) return [{ of, period: "nil", clear: undefined }];
    return [{ of, period: `${period} ${unit}`, clear: withdrawalClear(dose, period * hours) }];
  };
  return [...one("milk", care.milkHours, "h", 1), ...one("meat", care.meatDays, "d", HOURS_PER_DAY)];
}

/** The drug and its withdrawal as a note; says so where a period was not entered. */
export function withdrawalNote(care: Care, date: DaySerial): string {
  if (!namesDrug(care)) return "";
  const known = clearDays(care, date);
  const parts = known.map(({ of, period, clear }) => {
    return clear === undefined ? `${of} withdrawal nil` : `${of} withdrawal ${period}, clear ${isoDate(clear)}`;
  });
  const absent = (["milk", "meat"] as const).filter((of) => !known.some((day) => day.of === of));
  return [
    care.drug.trim() === "" ? "" : `drug ${care.drug.trim()}`,
    ...parts,
    absent.length === 0 ? "" : `${absent.join(" and ")} withdrawal not entered`,
  ]
    .filter((part) => part !== "")
    .join("; ");
}
