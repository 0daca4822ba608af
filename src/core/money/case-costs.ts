import { DomainError, shown } from "../shared/domain-error";

/** What one case of a lesion costs, as the farm's table says. */
export interface CaseCost {
  readonly lesion: string;
  readonly cost: number;
  readonly currency?: string | undefined;
  readonly year?: number | undefined;
  readonly source?: string | undefined;
}

/** Refuses a lesion in two rows and rows in different currencies: such costs are never added. */
export function checkCaseCosts(costs: readonly CaseCost[]): void {
  const seen = new Set<string>();
  const [first] = costs;
  for (const { lesion, currency } of costs) {
    if (seen.has(lesion)) throw new DomainError("invalid", `costs: ${lesion} stands in two rows`);
    seen.add(lesion);
    if (currency !== first?.currency) {
      throw new DomainError(
        "invalid",
        `costs must be in one currency; got ${shown(first?.currency)} for ${first?.lesion} and ${shown(currency)} for ${lesion}`,
      );
    }
  }
}

/** What makes the rows of a table hard to add, in words: more than one year, or more than one source. */
export function mixedBasis(costs: readonly CaseCost[]): string[] {
  const years = new Set(costs.map(({ year }) => year));
  const sources = new Set(costs.map(({ source }) => source));
  return [
    ...(years.size > 1 ? ["costs of different years are added without inflation"] : []),
    ...(sources.size > 1 ? ["costs of different sources are added; each counts other things"] : []),
  ];
}

export interface LesionCost {
  readonly lesion: string;
  readonly cases: number;
  /** Undefined for a lesion without a cost. */
  readonly costPerCase: number | undefined;
}

/** Cases by lesion with their cost, the dearest first, those without a cost last. */
export function costByLesion(
  lesions: readonly (string | null)[],
  costOf: (lesion: string) => number | undefined,
): readonly LesionCost[] {
  const cases = new Map<string, number>();
  for (const lesion of lesions) if (lesion !== null) cases.set(lesion, (cases.get(lesion) ?? 0) + 1);
  const total = ({ cases: count, costPerCase }: LesionCost) => (costPerCase === undefined ? -1 : count * costPerCase);
  return [...cases]
    .map(([lesion, count]) => ({ lesion, cases: count, costPerCase: costOf(lesion) }))
    .sort((a, b) => total(b) - total(a));
}

/** Cost of the lesions that have one. */
export function totalCost(rows: readonly LesionCost[]): number {
  return rows.reduce((sum, { cases, costPerCase = 0 }) => sum + cases * costPerCase, 0);
}
