import { type RecheckRule, recheckDays } from "./recheck-rules";
import { standardCare } from "./standard-care";
import type { Treatment } from "./treatment-words";

export type AftercareKind = "recheck" | "block" | "pain relief" | "bandage" | "topical";

/** One thing to do on a day after treatment. */
export interface AftercareJob {
  readonly kind: AftercareKind;
  readonly what: string;
  /** Days after treatment. */
  readonly afterDays: number;
}

/** The work that ends a block. */
export const BLOCK_OFF = "take the block off";
const VISITS = ["first", "second", "third"] as const;
const HOURS_PER_DAY = 24;

/**
 * Everything to do after a treatment, the earliest first. A block, a bandage and a course of pain relief always get
 * their days: those of the rule, else those of standard care. Lengths that the treatment states itself belong into the
 * rule handed over.
 */
export function aftercareJobs(rule: Partial<RecheckRule> | undefined, treatment: Treatment): readonly AftercareJob[] {
  const jobs: AftercareJob[] = (rule === undefined ? [] : recheckDays(rule)).map((afterDays, visit) => ({
    kind: "recheck",
    what: `${VISITS[visit]} recheck`,
    afterDays,
  }));
  if (treatment.block) jobs.push(...blockJobs(rule));
  if (treatment.painRelief) {
    const days = rule?.painReliefDays ?? standardCare.painReliefDays;
    jobs.push({ kind: "pain relief", what: "last day of pain relief", afterDays: days - 1 });
  }
  if (treatment.bandage) {
    const afterDays = bandageDays(rule?.bandageOffHours ?? standardCare.bandageOffHours);
    jobs.push({ kind: "bandage", what: "take the bandage off", afterDays });
  }
  if (treatment.topical) jobs.push(...topicalJobs(rule));
  return jobs.sort((a, b) => a.afterDays - b.afterDays);
}

/** Whole days after which a bandage comes off, rounded down: earlier is the safe side. */
export function bandageDays(hours: number): number {
  return Math.floor(hours / HOURS_PER_DAY);
}

function blockJobs(rule: Partial<RecheckRule> | undefined): AftercareJob[] {
  const off = rule?.blockOffDays ?? Math.max(standardCare.blockOffDays, rule?.blockCheckDays ?? 0);
  const check = rule?.blockCheckDays ?? Math.min(standardCare.blockCheckDays, off);
  const takeOff: AftercareJob = { kind: "block", what: BLOCK_OFF, afterDays: off };
  return check < off ? [{ kind: "block", what: "look at the block", afterDays: check }, takeOff] : [takeOff];
}

function topicalJobs(rule: Partial<RecheckRule> | undefined): AftercareJob[] {
  const { topicalRepeatDays: every, topicalTreatments: times } = rule ?? {};
  if (every === undefined || times === undefined) return [];
  return Array.from({ length: times - 1 }, (_, index) => ({
    kind: "topical",
    what: `topical treatment ${index + 2} of ${times}`,
    afterDays: (index + 1) * every,
  }));
}
