import type { DaySerial } from "../shared/days";
import { type RecheckRule, recheckDays } from "./recheck-rules";

/** How a foot was found when it was looked at again, or that the cow is no longer there. */
export const outcomes = ["healed", "better", "same", "worse", "gone"] as const;
export type Outcome = (typeof outcomes)[number];

/** An outcome after which the finding stays open. */
export type OpenOutcome = Exclude<Outcome, "healed" | "gone">;

interface Look {
  readonly treatedOn: DaySerial;
  readonly seenOn: DaySerial;
  /** The look that was due, where the foot was seen before its day. */
  readonly dueOn: DaySerial;
  readonly outcome: OpenOutcome;
}

/**
 * When a foot that is not healed is looked at next: at the rule's next recheck, or after the days to its first recheck
 * where none is left. A foot that is worse is seen after no more than the days to the first recheck.
 * Undefined without a rule that has rechecks. Common practice, no source.
 */
export function nextLook(
  rule: RecheckRule | undefined,
  { treatedOn, seenOn, dueOn, outcome }: Look,
): DaySerial | undefined {
  const days = rule === undefined ? [] : recheckDays(rule);
  const [first] = days;
  if (first === undefined) return undefined;
  const anew = seenOn + first;
  const planned = days.map((afterDays) => treatedOn + afterDays).find((day) => day > Math.max(seenOn, dueOn)) ?? anew;
  return outcome === "worse" ? Math.min(planned, anew) : planned;
}
