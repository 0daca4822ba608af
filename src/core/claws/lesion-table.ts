import { DomainError } from "../shared/domain-error";
import type { CaseTally } from "./case-tally";
import { disorders } from "./disorder-key";
import { type AgainstTarget, againstTarget, casesPer100CowYears, rateInterval } from "./lesion-rate";
import { groupWords, type LesionSelection, lesionSelectionOf } from "./lesion-selection";

/** New cases per 100 cow-years not to be exceeded; undefined where the table of targets leaves it open. */
export interface Target {
  readonly lesion: LesionSelection;
  readonly per100CowYears: number | undefined;
}

/** One lesion of the table. */
export interface LesionRow {
  readonly lesion: LesionSelection;
  readonly newCases: number;
  readonly repeats: number;
  readonly cows: number;
  readonly rate: number;
  readonly low: number;
  readonly high: number;
  readonly target?: number;
  readonly against?: AgainstTarget;
}

const all = lesionSelectionOf("all")!;
/** Every row that the table can have, in its order: each parent before its forms, then the groups, then all. */
const order: readonly LesionSelection[] = [
  ...disorders.map(({ code }) => code),
  ...groupWords.filter((word) => word !== all.name),
  all.name,
].map((name) => lesionSelectionOf(name)!);
const parents = new Set(disorders.filter(({ parent }) => parent === undefined).map(({ code }) => code));

/**
 * Cases by lesion: each parent with a case in the period, every lesion or group that has a target, and all lesions
 * last. Refuses a lesion with two targets.
 */
export function lesionTable(tally: CaseTally, cowDays: number, level: number, targets: readonly Target[]): LesionRow[] {
  const targetOf = new Map<string, number>();
  for (const { lesion, per100CowYears } of targets) {
    if (per100CowYears === undefined) continue;
    if (targetOf.has(lesion.name)) {
      throw new DomainError("invalid", `targets must name each lesion once; got ${lesion.name} twice`);
    }
    targetOf.set(lesion.name, per100CowYears);
  }
  const rows: LesionRow[] = [];
  for (const lesion of order) {
    const target = targetOf.get(lesion.name);
    const isAsked = target !== undefined || lesion === order.at(-1);
    if (!isAsked && !(parents.has(lesion.name) && tally.has(lesion))) continue;
    const count = tally.of(lesion);
    const interval = rateInterval(count.newCases, cowDays, level);
    rows.push({
      lesion,
      ...count,
      rate: casesPer100CowYears(count.newCases, cowDays),
      ...interval,
      ...(target === undefined ? {} : { target, against: againstTarget(interval, target) }),
    });
  }
  return rows;
}
