import { call, callFormula, range } from "./call";
import {
  figuresOfSummaryFormulas,
  herdLossArguments,
  herdLossFigures,
  herdLossSheet,
  summaryArguments,
  summaryFigures,
  summarySheet,
  topArguments,
} from "./cell-sheet";
import { herdLossLoop, herdLossLoopOfProducts, summaryLoop } from "./contenders/bare-loop";
import type { ContenderName } from "./contenders/contender";
import { findings, milkTest, TODAY } from "./herd-data";
import { figuresOfFormulas, lesionFigures, lesionSheet, lesionTableArguments } from "./lesion-sheet";
import { type BenchSheet, type Figures, type Spelling } from "./sheet";

/** A worksheet function over long columns, and what else computes the same. */
export interface Task {
  readonly id: string;
  /** What a row is. */
  readonly rows: "findings" | "cows";
  /** What the contenders compute, for readers of the results. */
  readonly about: string;
  readonly contenders: readonly ContenderName[];
  /** Another herd has other cells; formulas are computed for herd 0. */
  arguments(rows: number, herd: number): readonly unknown[];
  /** The figures of a result that other contenders must come to as well. */
  figures(value: unknown): Figures;
  /** The same with formulas that every spreadsheet has. */
  sheet(rows: number, spelling: Spelling): BenchSheet;
  figuresOfFormulas(values: readonly unknown[]): Figures;
  /** Plain loops over typed arrays. */
  readonly loops: Partial<Record<ContenderName, (rows: number, herd: number) => () => Figures>>;
}

const ENGINES: readonly ContenderName[] = [
  "formulas in the trial engine",
  "formulas in the library engine",
  "formulas in LibreOffice",
];

/** A function that nothing else here computes. */
function alone(id: string, rows: Task["rows"], about: string, args: Task["arguments"]): Task {
  const none = (): never => {
    throw new Error(`${id} is measured alone`);
  };
  return {
    id,
    rows,
    about,
    contenders: [],
    arguments: args,
    figures: () => ({}),
    sheet: none,
    figuresOfFormulas: none,
    loops: {},
  };
}

export const TASKS: readonly Task[] = [
  {
    id: "LESION.TABLE",
    rows: "findings",
    about:
      "The function reads cows, feet, lesions and dates, tells new cases from repeats, and gives by lesion new cases, repeats, cows, rate, exact limits. The formulas: 54 COUNTIFS of lesion, period and a column of new cases that stands ready, sums and rates by lesion; they leave out the telling of new cases, the cows and the limits.",
    contenders: ["function in the trial engine", ...ENGINES],
    arguments: (rows, herd) => lesionTableArguments(findings(rows, herd)),
    figures: lesionFigures,
    sheet: (rows) => lesionSheet(findings(rows)),
    figuresOfFormulas,
    loops: {},
  },
  {
    id: "CELL.HERDLOSS",
    rows: "cows",
    about:
      "The function reads and checks counts and lactations. The formula: one SUMPRODUCT with LN, which checks nothing and counts blanks as no loss.",
    contenders: ["bare loop", "bare loop, few logarithms", "function in the trial engine", ...ENGINES],
    arguments: (rows, herd) => herdLossArguments(milkTest(rows, herd)),
    figures: herdLossFigures,
    sheet: (rows, spelling) => herdLossSheet(milkTest(rows), spelling),
    figuresOfFormulas: ([loss]) => herdLossFigures(loss),
    loops: {
      "bare loop": (rows, herd) => asLoss(herdLossLoop(milkTest(rows, herd))),
      "bare loop, few logarithms": (rows, herd) => asLoss(herdLossLoopOfProducts(milkTest(rows, herd))),
    },
  },
  {
    id: "CELL.SUMMARY",
    rows: "cows",
    about:
      "The function reads and checks counts, lactations and milk. The formulas: COUNT, COUNTIFS, AVERAGE and six SUMPRODUCT, five of them with LN or comparisons.",
    contenders: ["bare loop", "function in the trial engine", ...ENGINES],
    arguments: (rows, herd) => summaryArguments(milkTest(rows, herd)),
    figures: summaryFigures,
    sheet: (rows, spelling) => summarySheet(milkTest(rows), spelling),
    figuresOfFormulas: figuresOfSummaryFormulas,
    loops: { "bare loop": (rows, herd) => summaryLoop(milkTest(rows, herd)) },
  },
  alone("LESION.NEWCASE", "findings", "A mark a row.", (rows, herd) =>
    lesionTableArguments(findings(rows, herd)).slice(0, 4),
  ),
  alone(
    "RECHECK.LIST",
    "findings",
    "Three years of findings; those of the last weeks are open, and one in a hundred that was forgotten.",
    (rows, herd) => {
      const { cows, feet, lesions, dates, treatments, closedOn } = findings(rows, herd);
      return [...[cows, feet, lesions, dates, treatments, closedOn].map(range), TODAY];
    },
  ),
  alone("CELL.TOP", "cows", "The 20 cows that lose most of as many cows as rows.", (rows, herd) =>
    topArguments(milkTest(rows, herd)),
  ),
];

function asLoss(loop: () => number): () => Figures {
  return () => herdLossFigures(loop());
}

export function taskOf(id: string): Task {
  return TASKS.find((task) => task.id === id)!;
}

/** The function itself as a formula in a sheet, over columns that hold the same cells. */
export function functionSheet(task: Task, rows: number): BenchSheet {
  return callFormula(task.id, task.arguments(rows, 0));
}

export function run(task: Task, args: readonly unknown[]): unknown {
  return call(task.id, args);
}
