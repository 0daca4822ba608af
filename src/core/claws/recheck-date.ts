import { addDays, type DaySerial } from "../shared/days";
import { unavailable } from "../shared/domain-error";
import { type RecheckRule, recheckDays } from "./recheck-rules";

/** Day of a recheck of a lesion treated on a day; `visit` 1 is the first. Throws `unavailable` where the rule has none. */
export function recheckDate(rule: RecheckRule, treatedOn: DaySerial, visit: number): DaySerial {
  const days = recheckDays(rule)[visit - 1];
  if (days === undefined) {
    const has = recheckDays(rule).length;
    throw unavailable(
      has === 0
        ? `the rule of ${rule.lesion} has no first recheck: nothing to recheck`
        : `visit must be at most ${has} for ${rule.lesion}, as its rule has no further recheck; got ${visit}`,
    );
  }
  return addDays(treatedOn, days);
}
