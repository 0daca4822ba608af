import { cramer2025, MID_LACTATION_DAYS_IN_MILK } from "../reference/cramer-2025";
import { addDays, type DaySerial, isoDate } from "../shared/days";
import { invalid, unavailable } from "../shared/domain-error";
import { commonPractice, type Source } from "../shared/source";

/** What a trim rule counts its days from; "between trims" is the least number of days after the last trim. */
export const trimOccasions = ["days in milk", "before dry-off", "after last trim", "between trims"] as const;
export type TrimOccasion = (typeof trimOccasions)[number];

export interface TrimRule {
  readonly when: TrimOccasion;
  readonly days: number;
}

export const dryOffTrimPractice: Source = commonPractice(
  "cows are trimmed two to three weeks before dry-off, so that what is found can be seen again while they are milked",
);
export const trimGapPractice: Source = commonPractice("a cow trimmed within the last two months is not trimmed again");

/** The built-in rules. */
export const defaultTrimRules: readonly (TrimRule & { readonly source: Source })[] = [
  { when: "days in milk", days: MID_LACTATION_DAYS_IN_MILK, source: cramer2025 },
  { when: "before dry-off", days: 21, source: dryOffTrimPractice },
  { when: "between trims", days: 60, source: trimGapPractice },
];

export interface CowDates {
  readonly lastTrim?: DaySerial | undefined;
  readonly calvedOn?: DaySerial | undefined;
  readonly dryOffOn?: DaySerial | undefined;
}

export interface NextTrim {
  readonly due: DaySerial;
  readonly rule: TrimRule;
}

/**
 * The next routine trim: the earliest day of the rules that the last trim does not cover. A trim covers a day that
 * it falls on or after, or from which it is fewer days than the least number between trims.
 * Throws `unavailable` where no rule has its date or the last trim covers them all.
 */
export function nextTrim(cow: CowDates, rules: readonly TrimRule[]): NextTrim {
  const { lastTrim, calvedOn, dryOffOn } = cow;
  if (calvedOn !== undefined && dryOffOn !== undefined && dryOffOn <= calvedOn)
    throw invalid(
      "dryOffOn",
      `after calvedOn (${isoDate(calvedOn)}), as the dry-off that ends this lactation`,
      isoDate(dryOffOn),
    );
  const gap = daysBetweenTrims(rules);
  const dated = rules
    .map((rule) => ({ rule, due: dueDay(rule, cow) }))
    .filter((next): next is NextTrim => next.due !== undefined);
  if (dated.length === 0) throw unavailable("no rule has its date: enter calvedOn, dryOffOn or lastTrim");
  const left = dated.filter(
    ({ due, rule }) =>
      rule.when === "after last trim" || lastTrim === undefined || (lastTrim < due && lastTrim <= due - gap),
  );
  if (left.length === 0)
    throw unavailable(
      `no routine trim is left before the next calving: the last trim (${isoDate(lastTrim!)}) covers the rules`,
    );
  return left.reduce((earliest, next) => (next.due < earliest.due ? next : earliest));
}

/** The least number of days between two trims by the rules, 0 where none says it. */
export function daysBetweenTrims(rules: readonly TrimRule[]): number {
  return rules.reduce((most, { when, days }) => (when === "between trims" ? Math.max(most, days) : most), 0);
}

function dueDay({ when, days }: TrimRule, { lastTrim, calvedOn, dryOffOn }: CowDates): DaySerial | undefined {
  switch (when) {
    case "days in milk":
      return calvedOn === undefined ? undefined : addDays(calvedOn, days);
    case "before dry-off":
      return dryOffOn === undefined ? undefined : addDays(dryOffOn, -days);
    case "after last trim":
      return lastTrim === undefined ? undefined : addDays(lastTrim, days);
    case "between trims":
      return undefined;
  }
}
