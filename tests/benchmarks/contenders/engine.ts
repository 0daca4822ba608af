import { type Cost, costOf, medianCost } from "../cost";
import type { BenchSheet, Figures, OpenSheet } from "../sheet";
import type { Contender } from "./contender";

/** Several times the resolution of the processors' clock. */
const SHORTEST_MS = 30;
/** Runs of which the last few tell the base: by then compilers have settled. */
const BASE_RUNS = 12;
const BASE_RUNS_USED = 5;
const BASE_MS = 10_000;

/**
 * A formula engine in this process. What it does at every calculation whatever the formulas, such as reading the sheet
 * or waiting, is measured on the same cells with one small formula, and taken off.
 */
export async function engineContender(
  open: (sheet: BenchSheet) => Promise<OpenSheet>,
  sheet: BenchSheet,
  figures: (values: readonly unknown[]) => Figures | undefined,
): Promise<Contender> {
  const bare = await open({ ...sheet, formulas: ["1+1"] });
  const costs: Cost[] = [];
  for (let run = 0; run < BASE_RUNS && totalMs(costs) < BASE_MS; run++)
    costs.push(await costOf(() => bare.recalculate(), 1));
  await bare.close();
  const opened = await open(sheet);
  return {
    shortestMs: SHORTEST_MS,
    base: medianCost(costs.slice(-BASE_RUNS_USED)),
    measure: (times) => costOf(() => opened.recalculate(), times),
    figures: () => figures(opened.values()),
    close: () => opened.close(),
  };
}

function totalMs(costs: readonly Cost[]): number {
  return costs.reduce((sum, { wallMs }) => sum + wallMs, 0);
}
