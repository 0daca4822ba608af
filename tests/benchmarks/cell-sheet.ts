import { DAILY_MODELS, HIGHEST_DAILY, LOSS_BASE_THOUSAND, LOWEST_DAILY } from "../../src/core/cells/loss-models";
import { MILK_KG_PER_LITRE } from "../../src/core/shared/milk-units";
import { range } from "./call";
import type { MilkTest } from "./herd-data";
import { benchSheet, type BenchSheet, type Figures, type Spelling } from "./sheet";

export const LOSS_DAYS = 305;
const MILK_PRICE = 0.45;

export function herdLossArguments({ counts, lactations }: MilkTest): readonly unknown[] {
  return [range(counts), range(lactations), LOSS_DAYS];
}

export function summaryArguments({ counts, lactations, milk }: MilkTest): readonly unknown[] {
  return [range(counts), range(lactations), range(milk), LOSS_DAYS, MILK_PRICE];
}

export function topArguments({ cows, counts, lactations, milk }: MilkTest): readonly unknown[] {
  return [range(cows), range(counts), range(lactations), range(milk), 20, MILK_PRICE];
}

/** HERD.CELL.HERDLOSS as the one formula that a sheet can hold: blanks count as no loss. */
export function herdLossSheet({ counts, lactations }: MilkTest, spelling: Spelling): BenchSheet {
  return benchSheet({ count: counts, lactation: lactations }, ([count, lactation]) => {
    const { first, later } = DAILY_MODELS[0];
    const slope = `(${first}*(${lactation}=1)+${later}*(${lactation}>1))`;
    return [
      `SUMPRODUCT(${slope}*${spelling.logarithms(count!, LOSS_BASE_THOUSAND)})/LN(2)*${LOSS_DAYS}/${MILK_KG_PER_LITRE}`,
    ];
  });
}

export function herdLossFigures(value: unknown): Figures {
  return { loss: value as number };
}

/** The rows of HERD.CELL.SUMMARY that formulas compute, by their names there, in the order of the formulas. */
const SUMMARY_ROWS = [
  "cows listed",
  "cows with a count",
  "counts at the cap",
  "mean count",
  "geometric mean",
  "tank estimate",
  "high cows",
  "first lactation",
  "later lactations",
  "doublings of first lactations",
  "doublings of later lactations",
  "milk lost, low",
  "milk lost, central",
  "milk lost, high",
  "money lost, central",
];

/** HERD.CELL.SUMMARY as formulas of a sheet, without GEOMEAN, whose product grows too large in one engine. Both sums of logarithms are computed once for all models. */
export function summarySheet({ counts, lactations, milk }: MilkTest, spelling: Spelling): BenchSheet {
  const columns = { count: counts, lactation: lactations, milk };
  return benchSheet(columns, ([count, lactation, yielded], address) => {
    const cellOf = (name: string): string => address(SUMMARY_ROWS.indexOf(name));
    const logarithms = spelling.logarithms(count!, LOSS_BASE_THOUSAND);
    const doublings = (group: string): string => `SUMPRODUCT((${group})*${logarithms})/LN(2)`;
    const lost = ({ first, later }: { readonly first: number; readonly later: number }): string =>
      `(${first}*${cellOf("doublings of first lactations")}+${later}*${cellOf("doublings of later lactations")})*${LOSS_DAYS}/${MILK_KG_PER_LITRE}`;
    const formulas: Readonly<Record<string, string>> = {
      "cows listed": `SUMPRODUCT(--((${count}>0)+(${lactation}>0)+(${yielded}>0)>0))`,
      "cows with a count": `COUNT(${count})`,
      "counts at the cap": `COUNTIFS(${count},">=9999",${count},"<10000")`,
      "mean count": `AVERAGE(${count})`,
      "geometric mean": `EXP(SUMPRODUCT(${spelling.logarithms(count!, 1)})/COUNT(${count}))`,
      "tank estimate": `SUMPRODUCT(${count},${yielded})/SUMPRODUCT((${count}>0)*${yielded})`,
      "high cows": `COUNTIF(${count},">=200")`,
      "first lactation": `COUNTIFS(${count},">0",${lactation},1)`,
      "later lactations": `COUNTIFS(${count},">0",${lactation},">1")`,
      "doublings of first lactations": doublings(`${lactation}=1`),
      "doublings of later lactations": doublings(`${lactation}>1`),
      "milk lost, low": lost(LOWEST_DAILY),
      "milk lost, central": lost(DAILY_MODELS[0]),
      "milk lost, high": lost(HIGHEST_DAILY),
      "money lost, central": `${cellOf("milk lost, central")}*${MILK_PRICE}`,
    };
    return SUMMARY_ROWS.map((name) => formulas[name]!);
  });
}

export function summaryFigures(value: unknown): Figures {
  const rows = value as readonly (readonly unknown[])[];
  return Object.fromEntries(
    rows
      .filter(([name]) => SUMMARY_ROWS.includes(String(name)))
      .map(([name, figure]) => [String(name), Number(figure)]),
  );
}

export function figuresOfSummaryFormulas(values: readonly unknown[]): Figures {
  const computed = SUMMARY_ROWS.map((name, index) => [name, Number(values[index])] as const);
  return Object.fromEntries(computed.filter(([name]) => !name.startsWith("doublings")));
}
