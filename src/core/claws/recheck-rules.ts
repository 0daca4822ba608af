import { dermatitisProtocol, klawitter2019 } from "../reference/klawitter-2019";
import { clawHornProtocol, thomas2015 } from "../reference/thomas-2015";
import { DomainError } from "../shared/domain-error";
import { commonPractice, type Source } from "../shared/source";
import { parentCode } from "./disorder-key";
import { standardCare } from "./standard-care";

/** When a treated lesion is looked at again, and what its aftercare asks for. Days count from the day of treatment. */
export interface RecheckRule {
  /** Code of the disorder; a parent covers its forms. */
  readonly lesion: string;
  readonly firstRecheckDays?: number | undefined;
  readonly secondRecheckDays?: number | undefined;
  readonly thirdRecheckDays?: number | undefined;
  /** Look at the block: replace a lost one, take off one that hurts. */
  readonly blockCheckDays?: number | undefined;
  readonly blockOffDays?: number | undefined;
  /** Length of the course, its first day included. */
  readonly painReliefDays?: number | undefined;
  readonly topicalRepeatDays?: number | undefined;
  /** Topical treatments in all, the first included. */
  readonly topicalTreatments?: number | undefined;
  readonly bandageOffHours?: number | undefined;
}

export interface SourcedRecheckRule extends RecheckRule {
  readonly source: Source;
}

/** Seven days lie inside the window of the first recheck of Thomas et al. 2015 (5 to 11 days). */
const CLAW_HORN_FIRST_RECHECK_DAYS = 7;
const PHLEGMON_FIRST_RECHECK_DAYS = 3;
const TOPICAL_TREATMENTS = 3;

const clawHorn = {
  firstRecheckDays: CLAW_HORN_FIRST_RECHECK_DAYS,
  secondRecheckDays: standardCare.blockOffDays,
  thirdRecheckDays: clawHornProtocol.outcomeDays,
  blockCheckDays: standardCare.blockCheckDays,
  blockOffDays: standardCare.blockOffDays,
  painReliefDays: standardCare.painReliefDays,
} as const;

export const phlegmonPractice: Source = commonPractice(
  "interdigital phlegmon is looked at 3 to 5 days after treatment; one that has not answered goes to the veterinarian",
);

/** The built-in rules: only lesions behind which a source or a stated habit of the trade stands. */
export const defaultRecheckRules: readonly SourcedRecheckRule[] = [
  ...clawHornProtocol.lesions.map((lesion) => ({ lesion, ...clawHorn, source: thomas2015 })),
  {
    lesion: "DD",
    firstRecheckDays: dermatitisProtocol.repeatDays,
    secondRecheckDays: 2 * dermatitisProtocol.repeatDays,
    thirdRecheckDays: 3 * dermatitisProtocol.repeatDays,
    topicalRepeatDays: dermatitisProtocol.repeatDays,
    topicalTreatments: TOPICAL_TREATMENTS,
    bandageOffHours: standardCare.bandageOffHours,
    source: klawitter2019,
  },
  { lesion: "IP", firstRecheckDays: PHLEGMON_FIRST_RECHECK_DAYS, source: phlegmonPractice },
];

/** Days of the rechecks in order. */
export function recheckDays(rule: Partial<RecheckRule>): readonly number[] {
  return [rule.firstRecheckDays, rule.secondRecheckDays, rule.thirdRecheckDays].filter((days) => days !== undefined);
}

/** The rule of a lesion: its own row, else the row of the disorder of which it is a form. */
export function ruleFor<Rule extends RecheckRule>(rules: readonly Rule[], code: string): Rule | undefined {
  return rules.find(({ lesion }) => lesion === code) ?? rules.find(({ lesion }) => lesion === parentCode(code));
}

/** Refuses rules that contradict themselves: a lesion twice, rechecks out of order, a block off before it is looked at. */
export function checkRecheckRules(rules: readonly RecheckRule[]): void {
  const seen = new Set<string>();
  for (const rule of rules) {
    if (seen.has(rule.lesion)) throw refused(rule, "stands in two rows");
    seen.add(rule.lesion);
    inOrder(rule, [
      ["first recheck", rule.firstRecheckDays],
      ["second recheck", rule.secondRecheckDays],
      ["third recheck", rule.thirdRecheckDays],
    ]);
    const { blockCheckDays, blockOffDays } = rule;
    if (blockCheckDays !== undefined && blockOffDays !== undefined && blockCheckDays > blockOffDays)
      throw refused(rule, `has its block off (${blockOffDays} d) before its block check (${blockCheckDays} d)`);
  }
}

type NamedDays = readonly [name: string, days: number | undefined];

function inOrder(rule: RecheckRule, visits: readonly NamedDays[]): void {
  visits.slice(1).forEach(([name, days], index) => {
    if (days === undefined) return;
    const [beforeName, beforeDays] = visits[index]!;
    if (beforeDays === undefined) throw refused(rule, `has a ${name} but no ${beforeName}`);
    if (days <= beforeDays)
      throw refused(rule, `must have its ${name} (${days} d) after its ${beforeName} (${beforeDays} d)`);
  });
}

function refused({ lesion }: RecheckRule, what: string): DomainError {
  return new DomainError("invalid", `rules: ${lesion} ${what}`);
}
