import type { PlainCell } from "../../../workbook/port";
import { counted } from "../../format";
import type { MilkPrice } from "../cells/milk-price";
import { type CostFacts, currencyOf } from "./money-facts";

/** A row of HERD.COST.TABLE. */
export interface LesionCost {
  readonly name: string;
  readonly cases: number;
  /** undefined where the Costs table has no cost for it. */
  readonly perCase: number | undefined;
  readonly cost: number | undefined;
  readonly share: number | undefined;
}

export function lesionCosts(rows: readonly (readonly PlainCell[])[]): readonly LesionCost[] {
  const number = (cell: PlainCell | undefined): number | undefined => (typeof cell === "number" ? cell : undefined);
  return rows.map(([code, name, cases, perCase, cost, share]) => ({
    name: name === "" ? String(code) : String(name),
    cases: Number(cases),
    perCase: number(perCase),
    cost: number(cost),
    share: number(share),
  }));
}

/** The new cases of a period, as the blocks count them. */
export interface CaseCosts {
  /** New cases with a cost, and without one. */
  readonly priced: number;
  readonly unpriced: number;
}

/** Lesions without a cost that are named. */
const MOST_NAMED = 3;

/** How many cases stand behind a total, and which are not in it for want of a cost. */
export function caseWords({ priced, unpriced }: CaseCosts, costs: readonly LesionCost[]): string {
  if (priced + unpriced === 0) return "No new case in those days.";
  const inside = `For ${counted(priced, "new case")}.`;
  if (unpriced === 0) return inside;
  const without = costs.filter(({ cost }) => cost === undefined).sort((a, b) => b.cases - a.cases);
  const names = without.slice(0, MOST_NAMED).map(({ name, cases }) => `${name} ${cases}`);
  const more = without.length > names.length ? " and others" : "";
  const named = names.length === 0 ? "" : ` (${names.join(", ")}${more})`;
  return `${inside} ${counted(unpriced, "case")} without a cost left out${named}: give them one under Costs, or "none" to count them at nothing.`;
}

/** The same for a narrow column. */
export function shortCaseWords({ priced, unpriced }: CaseCosts): string {
  const left = unpriced === 0 ? "" : ` ${unpriced} without a cost left out.`;
  return priced + unpriced === 0 ? "No new case in those days." : `For ${counted(priced, "new case")}.${left}`;
}

/** Why the two bills cannot be laid over each other, in plain sentences. */
export function basisWords(facts: CostFacts | undefined, milk: MilkPrice): readonly string[] {
  const costs = currencyOf(facts);
  const words: string[] = [];
  if (facts !== undefined && facts.currencies.length > 1)
    words.push(
      `The Costs table holds several currencies (${facts.currencies.map((name) => name || "none").join(", ")}): nothing is added up until there is one.`,
    );
  if (costs !== undefined && milk.currency !== "" && costs !== milk.currency)
    words.push(
      `The two are in different currencies: ${costs} for lesions, ${milk.currency} for milk. Nothing is converted.`,
    );
  const years = [...new Set([...(facts?.years ?? []), ...(milk.year === undefined ? [] : [milk.year])])].sort();
  if (years.length > 1) words.push(`They are prices of different years (${years.join(", ")}), without inflation.`);
  return words;
}

/** One of the two bills: what is in it, what is not. */
export interface Bill {
  readonly title: string;
  /** undefined where there is none. */
  readonly amount: string | undefined;
  /** What the amount stands for, or why there is none. */
  readonly words: string;
  readonly inside: readonly string[];
  readonly outside: readonly string[];
}

/** Both bills side by side. They overlap in the milk of lame cows, so they have no sum. */
export function bills(
  lesions: Pick<Bill, "amount" | "words">,
  cells: Pick<Bill, "amount" | "words">,
  sources: readonly string[],
): readonly [Bill, Bill] {
  return [
    {
      title: "Claw lesions",
      ...lesions,
      inside: [
        `what the source of each cost holds${sources.length === 0 ? "" : ` (${sources.join("; ")})`}: most often treatment, lost milk, more days to the next calf, culling`,
      ],
      outside: [
        "lesions without a row under Costs",
        "cows that nobody examined",
        "unpaid labour",
        "the pain of the cow",
      ],
    },
    {
      title: "High cell counts",
      ...cells,
      inside: ["the milk that goes with high counts, gross"],
      outside: [
        "treatment and culling",
        "milk kept out of the tank",
        "bonus and penalty of the tank",
        "feed not eaten",
      ],
    },
  ];
}

export const NO_SUM =
  "Never add the two: the milk that a lame cow loses is in the first, and if her count is high it is in the second as well.";
