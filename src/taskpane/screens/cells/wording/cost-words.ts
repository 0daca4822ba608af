import { counted } from "../../../format";
import type { Figure } from "../summary";
import { milkText, moneyText } from "./money";

/** The levels of HERD.CELL.SUMMARY, from the lowest published model to the highest. */
export const LEVELS = ["low", "central", "high"] as const;
export type Level = (typeof LEVELS)[number];

/** What a level of the loss stands for. */
export interface LossLevel {
  readonly level: Level;
  readonly milk: number;
  readonly money: number | undefined;
  /** The published model that gives it. */
  readonly model: string;
}

export interface CostWords {
  /** "About 34,280 USD in 365 days: 74,520 litres of milk." */
  readonly headline: string;
  readonly levels: readonly LossLevel[];
  /** Part of the central figure by lactation. */
  readonly parts: readonly { readonly name: string; readonly cows: number; readonly milk: number }[];
  readonly unit: string;
  /** What a reader must know beside it, in plain sentences. */
  readonly said: readonly string[];
}

export type Figures = ReadonlyMap<string, Figure>;

/** Days from which on dry cows matter, as HERD.CELL.SUMMARY says it. */
const DAYS_REMARK = "days";

/** The loss of a year in words; undefined with the reason where there is none. */
export function costWords(figures: Figures, currency: string): CostWords | { readonly reason: string } {
  const central = figures.get("milk lost, central");
  if (central?.value === undefined) return { reason: lactationMissing(central?.note) };
  const levels = LEVELS.map((level): LossLevel => {
    const milk = figures.get(`milk lost, ${level}`)!;
    return { level, milk: milk.value!, money: figures.get(`money lost, ${level}`)?.value, model: milk.note };
  });
  const days = valueOf(figures, "days");
  const { milk, money } = levels[1]!;
  return {
    headline: `About ${money === undefined ? "" : `${moneyText(money, currency)}: `}${milkText(milk, central.unit)} in ${counted(days, "day")}.`,
    levels,
    parts: (["first", "later"] as const).map((part) => ({
      name: part === "first" ? "First lactation" : "Later lactations",
      cows: valueOf(figures, part === "first" ? "first lactation" : "later lactations"),
      milk: valueOf(figures, `of it ${part} lactation${part === "first" ? "" : "s"}`),
    })),
    unit: central.unit,
    said: saidOf(figures),
  };
}

function valueOf(figures: Figures, name: string): number {
  return figures.get(name)?.value ?? 0;
}

function saidOf(figures: Figures): string[] {
  const said = [`${counted(valueOf(figures, "cows with a count"), "cow")} with a count.`];
  const leftOut = valueOf(figures, "left out");
  if (leftOut > 0) said.push(`${counted(leftOut, "cow")} left out: no count. What they lose is not in the figure.`);
  const capped = valueOf(figures, "counts at the cap");
  if (capped > 0) {
    said.push(`${counted(capped, "count")} at the laboratory's cap (9,999 thousand): the true loss is that or more.`);
  }
  const remark = figures.get(DAYS_REMARK)?.note ?? "";
  if (remark !== "") said.push(`${counted(valueOf(figures, "days"), "day")}: ${remark}.`);
  return said;
}

function lactationMissing(note: string | undefined): string {
  const rows = /rows? [\d, .]+/.exec(note ?? "")?.[0];
  const where = rows === undefined ? "" : ` (${rows} of the test)`;
  return `A cow with a count has no lactation number${where}: a total without her would be too low. Enter it in the Tests table.`;
}

/** What the figure is and is not; it stands wherever the loss stands. */
export const NO_PROMISE =
  "Milk that goes with high counts, not milk that is sure to come back: part of it is dilution in cows that give less. Feed saved, milk bonus, treatment and culling are not in it.";
