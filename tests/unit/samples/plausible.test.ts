import { defaultRecheckRules } from "../../../src/core/claws/recheck-rules";
import { dateOf } from "../../../src/core/shared/days";
import { inventedHerd } from "../../../src/samples/herd/invented-herd";

/** The invented herd must look like one: its figures lie inside what has been published, and show its patterns. */
const herd = inventedHerd(defaultRecheckRules);

const share = <T>(rows: readonly T[], is: (row: T) => boolean): number => rows.filter(is).length / rows.length;
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function grouped<T, K>(rows: readonly T[], keyOf: (row: T) => K): T[][] {
  const groups = new Map<K, T[]>();
  for (const row of rows) {
    const key = keyOf(row);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()];
}

describe("milk tests", () => {
  const counted = herd.tests.flatMap((row) => (typeof row.count === "number" ? [{ ...row, count: row.count }] : []));
  const byTest = grouped(counted, ({ date }) => date);
  const scoreOf = (count: number): number => Math.log2(count / 100) + 3;

  test("scores spread within a test as in two open data sets (standard deviation 1.88 and 1.96), a third either way", () => {
    for (const rows of byTest) {
      const scores = rows.map(({ count }) => scoreOf(count));
      const average = mean(scores);
      const deviation = Math.sqrt(mean(scores.map((score) => (score - average) ** 2)));
      expect(deviation).toBeGreaterThan(1.3);
      expect(deviation).toBeLessThan(2.6);
    }
  });

  test("weighted over geometric mean lies by 2.06 to 3.9, the range of 23 tests of the same two sets", () => {
    const ratios = byTest.map((rows) => {
      const milk = rows.reduce((sum, row) => sum + Number(row.milkKg), 0);
      const cells = rows.reduce((sum, row) => sum + Number(row.milkKg) * row.count, 0);
      return cells / milk / (100 * 2 ** (mean(rows.map(({ count }) => scoreOf(count))) - 3));
    });
    expect(mean(ratios)).toBeGreaterThan(2.06);
    expect(mean(ratios)).toBeLessThan(3.9);
  });

  test("high cows: 0 to 56 % of a herd, mean 26 % (Deng et al. 2022, 131 herds)", () => {
    const shares = byTest.map((rows) => share(rows, ({ count }) => count >= 200));
    for (const one of shares) expect(one).toBeLessThan(0.56);
    expect(mean(shares)).toBeGreaterThan(0.15);
    expect(mean(shares)).toBeLessThan(0.35);
  });

  test("new and recovered a month near the means of Fauteux et al. 2014 (0.11 and 0.27), within twice or half", () => {
    const byCow = grouped(counted, ({ cow }) => cow);
    const pairs = byCow.flatMap((rows) =>
      rows.slice(1).flatMap((row, index) => {
        const before = rows[index]!;
        return before.lactation === row.lactation && row.date - before.date <= 40
          ? [[before.count, row.count] as const]
          : [];
      }),
    );
    const low = pairs.filter(([before]) => before < 200);
    const high = pairs.filter(([before]) => before >= 200);
    const fresh = share(low, ([, now]) => now >= 200);
    const recovered = share(high, ([, now]) => now < 200);
    expect(fresh).toBeGreaterThan(0.055);
    expect(fresh).toBeLessThan(0.22);
    expect(recovered).toBeGreaterThan(0.135);
    expect(recovered).toBeLessThan(0.54);
  });

  test("a few cows stay high through at least six tests in a row", () => {
    const lasting = grouped(counted, ({ cow }) => cow).filter((rows) => {
      let run = 0;
      return rows.some(({ count }) => (run = count >= 200 ? run + 1 : 0) >= 6);
    });
    expect(lasting.length).toBeGreaterThanOrEqual(3);
    expect(lasting.length).toBeLessThanOrEqual(15);
  });

  test("milk of a test day: 20 to 40 kg a cow, more in later lactations (common practice, no source)", () => {
    for (const rows of grouped(herd.tests, ({ date }) => date)) {
      const first = mean(rows.filter(({ lactation }) => lactation === 1).map(({ milkKg }) => Number(milkKg)));
      const later = mean(rows.filter(({ lactation }) => Number(lactation) > 1).map(({ milkKg }) => Number(milkKg)));
      expect(first).toBeGreaterThan(20);
      expect(later).toBeLessThan(40);
      expect(later).toBeGreaterThan(first);
    }
  });
});

describe("mobility scores", () => {
  test("lame cows at each scoring: 5.8 to 65.4 % of a herd (Griffiths et al. 2018, 61 herds)", () => {
    for (const rows of grouped(herd.scores, ({ date }) => date)) {
      const scored = rows.flatMap(({ score }) => (typeof score === "number" ? [score] : []));
      const lame = share(scored, (score) => score >= 2);
      expect(lame).toBeGreaterThan(0.058);
      expect(lame).toBeLessThan(0.654);
    }
  });
});

describe("claw findings", () => {
  const { findings } = herd;
  const lesions = findings.filter(({ lesion }) => lesion !== "none");
  const of = (...codes: readonly string[]) => findings.filter(({ lesion }) => codes.includes(lesion));

  /** Cows with a lesion among the cows examined in a year. */
  function shareOfCows(codes: readonly string[]): number {
    const year = findings.filter(({ date }) => date >= 45_901); // from 2025-09-01
    const examined = new Set(year.map(({ cow }) => cow));
    return new Set(year.filter(({ lesion }) => codes.includes(lesion)).map(({ cow }) => cow)).size / examined.size;
  }

  /**
   * A year's share of cows lies above the share found at one visit, and may be some three times as large. At one visit:
   * Solano et al. 2016 (dermatitis 15 %, sole ulcer 6 %, white line 4 %), Cramer et al. 2008, free stalls (dermatitis
   * 22.7 %, ulcer 9.2 %, haemorrhage 11.0 %).
   */
  test.each([
    ["DD", ["DD"], 0.15, 0.681],
    ["ulcer", ["SU", "TU", "BU"], 0.06, 0.276],
    ["white line", ["WLF", "WLA"], 0.04, 0.3],
    ["haemorrhage", ["SHD", "SHC"], 0.11, 0.33],
  ] as const)("cows with %s in a year", (_, codes, least, most) => {
    expect(shareOfCows(codes)).toBeGreaterThan(least);
    expect(shareOfCows(codes)).toBeLessThan(most);
  });

  test("digital dermatitis is a matter of heifers and of the housed months (first lactation 17.0 %, Gernand et al. 2013)", () => {
    const dermatitis = of("DD");
    expect(share(dermatitis, ({ lactation }) => lactation === 1)).toBeGreaterThan(0.4);
    const housed = share(dermatitis, ({ date }) => [11, 12, 1, 2, 3].includes(dateOf(date).month));
    expect(housed).toBeGreaterThan(5 / 14 + 0.1); // five of the fourteen months, were they all alike
  });

  test("sole ulcers are a matter of older cows in mid lactation (Barker et al. 2009: from the fourth lactation)", () => {
    const ulcers = of("SU");
    expect(share(ulcers, ({ lactation }) => Number(lactation) >= 3)).toBeGreaterThan(0.6);
    expect(share(ulcers, ({ daysInMilk }) => Number(daysInMilk) >= 60 && Number(daysInMilk) <= 160)).toBeGreaterThan(
      0.35,
    );
  });

  test("most lesions sit on hind feet, ulcers and white line on the outer claw there", () => {
    expect(share(lesions, ({ foot }) => String(foot).endsWith("H"))).toBeGreaterThan(0.8);
    const horn = of("SU", "WLA", "WLF").filter(({ foot }) => String(foot).endsWith("H"));
    expect(share(horn, ({ claw }) => claw === "outer")).toBeGreaterThan(0.7);
  });

  test("some cows come back: at least ten have four findings or more", () => {
    const often = grouped(lesions, ({ cow }) => cow).filter((rows) => rows.length >= 4);
    expect(often.length).toBeGreaterThanOrEqual(10);
  });

  test("toes are mostly long, some short; both landmarks occur", () => {
    const toes = findings.filter(({ toeMm }) => toeMm !== null);
    const hardHorn = toes.filter(({ measuredFrom }) => measuredFrom === "hard horn");
    expect(hardHorn.length).toBeLessThan(toes.length);
    const least = (lactation: unknown): number => (lactation === 1 ? 75 : 81);
    const short = share(hardHorn, ({ toeMm, lactation }) => Number(toeMm) < least(lactation) - 2);
    expect(short).toBeGreaterThan(0.01);
    expect(short).toBeLessThan(0.25);
  });
});
