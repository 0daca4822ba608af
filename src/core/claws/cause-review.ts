import { type CausePattern, causePatterns, type ReviewedFinding, ulcerByZone } from "./cause-patterns";
import { disorders } from "./disorder-key";
import { SOUND, UNKNOWN } from "./findings";
import { lactationGroup } from "./lesion-by-group";

/** Fewer findings than this say nothing about a cause. */
export const FEWEST_FOR_REVIEW = 10;

export interface FindingRows {
  /** Codes, SOUND, UNKNOWN, or null. */
  readonly lesions: readonly (string | null)[];
  /** Zones of the claw map; NaN where not given. */
  readonly zones: ArrayLike<number>;
  /** 0 for a heifer; NaN where not given. */
  readonly lactations: ArrayLike<number>;
  /** NaN where not given. */
  readonly daysInMilk: ArrayLike<number>;
}

/** A place to look at, with the findings that point there. */
export interface ReviewRow {
  readonly pattern: CausePattern;
  readonly cases: number;
  /** Part of all findings. */
  readonly share: number;
  /** "sole lesions: SU 12, SH 3; zone 4: 5; first lactation: 4". */
  readonly evidence: string;
}

/** Number of findings, and the places that they point to, most findings first. */
export function reviewCauses(rows: FindingRows): { readonly findings: number; readonly review: readonly ReviewRow[] } {
  const evidence = causePatterns.map((pattern) => new Evidence(pattern));
  let findings = 0;
  for (let row = 0; row < rows.lesions.length; row++) {
    const lesion = rows.lesions[row] ?? null;
    if (lesion === null || lesion === SOUND || lesion === UNKNOWN) continue;
    findings++;
    const zone = rows.zones[row]!;
    const finding: ReviewedFinding = {
      code: ulcerByZone(lesion, zone),
      lactation: rows.lactations[row]!,
      daysInMilk: rows.daysInMilk[row]!,
    };
    for (const part of evidence) part.add(finding, zone);
  }
  const review = evidence
    .filter(({ cases }) => cases > 0)
    .sort((a, b) => b.cases - a.cases)
    .map((part) => ({
      pattern: part.pattern,
      cases: part.cases,
      share: part.cases / findings,
      evidence: part.toString(),
    }));
  return { findings, review };
}

class Evidence {
  cases = 0;
  readonly #codes = new Map<string, number>();
  readonly #zones = new Map<string, number>();
  readonly #groups = new Map<string, number>();

  constructor(readonly pattern: CausePattern) {}

  add(finding: ReviewedFinding, zone: number): void {
    if (!this.pattern.matches(finding)) return;
    this.cases++;
    count(this.#codes, finding.code);
    if (!Number.isNaN(zone)) count(this.#zones, `zone ${zone}`);
    if (!Number.isNaN(finding.lactation)) count(this.#groups, lactationGroup(finding.lactation));
  }

  toString(): string {
    const codes = disorders.filter(({ code }) => this.#codes.has(code)).map(({ code }) => `${code} ${this.#codes.get(code)}`); // oxfmt-ignore
    return [`${this.pattern.pattern}: ${codes.join(", ")}`, ...listed(this.#zones), ...listed(this.#groups)].join("; ");
  }
}

function count(counts: Map<string, number>, key: string): void {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}

/** The two most frequent, which is what a reader takes in. */
const MOST_LISTED = 2;

function listed(counts: ReadonlyMap<string, number>): string[] {
  return [...counts]
    .sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1))
    .slice(0, MOST_LISTED)
    .map(([key, n]) => `${key}: ${n}`);
}
