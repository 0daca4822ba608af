import { DAILY_MODELS } from "../../src/core/cells/loss-models";
import { dailyLossKg } from "../../src/core/cells/milk-loss";
import { recheckDate } from "../../src/core/claws/recheck-date";
import { defaultRecheckRules, ruleFor } from "../../src/core/claws/recheck-rules";
import { milkFromKg } from "../../src/core/shared/milk-units";
import { evaluate } from "../../src/functions/evaluate";
import { specOf } from "./call";
import { type Cost, costOfCalls, medianCost } from "./cost";
import { findings, milkTest } from "./herd-data";

/** Calls of a run: a workbook with as many formulas of a function is a large one. */
const CALLS = 10_000;
/** Runs before it counts, and runs that a sample adds up. */
const WARM_UP_RUNS = 60;
const RUNS_A_SAMPLE = 10;

/** A call of a function of single values, by the evaluator and by the core function alone; the cost of a call. */
export interface ScalarCalls {
  readonly id: string;
  readonly calls: number;
  readonly evaluatorMicroseconds: Cost;
  readonly coreMicroseconds: Cost;
  readonly overheadMicroseconds: Cost;
}

interface ScalarTask {
  readonly id: string;
  readonly rows: readonly (readonly unknown[])[];
  readonly core: (row: readonly unknown[]) => number;
}

/** Cells that hold a value, as the column of a table that calls the function row by row. */
function rowsOf(...columns: readonly (readonly unknown[])[]): unknown[][] {
  const rows: unknown[][] = [];
  for (let row = 0; rows.length < CALLS; row++) {
    const cells = columns.map((column) => column[row]);
    if (cells.every((cell) => cell !== null)) rows.push(cells);
  }
  return rows;
}

function tasks(): ScalarTask[] {
  const { dates } = findings(CALLS);
  const { counts, lactations } = milkTest(2 * CALLS);
  const codes = dates.map((_, row) => ["SU", "DD", "WLA", "SH", "IP"][row % 5]!);
  const [model] = DAILY_MODELS;
  return [
    {
      id: "RECHECK.DATE",
      rows: rowsOf(codes, dates),
      core: ([code, treatedOn]) => recheckDate(ruleFor(defaultRecheckRules, code as string)!, treatedOn as number, 1),
    },
    {
      id: "CELL.LOSS",
      rows: rowsOf(counts, lactations),
      core: ([count, lactation]) => milkFromKg(dailyLossKg(count as number, lactation as number, model), "litres"),
    },
  ];
}

function measure({ id, rows, core }: ScalarTask, samples: number): ScalarCalls {
  const spec = specOf(id);
  let sum = 0;
  const evaluator = (): void => {
    for (const row of rows) sum += evaluate(spec, row).value as number;
  };
  const bare = (): void => {
    for (const row of rows) sum += core(row);
  };
  costOfCalls(evaluator, WARM_UP_RUNS);
  costOfCalls(bare, WARM_UP_RUNS);
  const [byEvaluator, byCore, overhead]: [Cost[], Cost[], Cost[]] = [[], [], []];
  for (let sample = 0; sample < samples; sample++) {
    const whole = perCall(costOfCalls(evaluator, RUNS_A_SAMPLE));
    const alone = perCall(costOfCalls(bare, RUNS_A_SAMPLE));
    byEvaluator.push(whole);
    byCore.push(alone);
    overhead.push({ wallMs: whole.wallMs - alone.wallMs, cpuMs: whole.cpuMs - alone.cpuMs });
  }
  if (!Number.isFinite(sum)) throw new Error(`${id} gave no number`);
  return {
    id,
    calls: CALLS,
    evaluatorMicroseconds: medianCost(byEvaluator),
    coreMicroseconds: medianCost(byCore),
    overheadMicroseconds: medianCost(overhead),
  };
}

/** From milliseconds a run to microseconds a call. */
function perCall({ wallMs, cpuMs }: Cost): Cost {
  return { wallMs: (1000 * wallMs) / CALLS, cpuMs: (1000 * cpuMs) / CALLS };
}

process.send!(tasks().map((task) => measure(task, Number(process.argv[2]))));
