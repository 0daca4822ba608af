import { atOnce, type InSteps } from "../core/shared/steps";
import type { PlainCell } from "../workbook/port";
import type { Block, Figure, Part, Series, Table } from "./block";
import type { BlockData } from "./data";
import { rowsOf, single } from "./expression/elementwise";
import { type Expression, literal } from "./expression/expression";
import type { Rows } from "./expression/values";
import { type ErrorCode, Fault, MissingData } from "./expression/fault";
import { cellOfSeries, columnOfSeries } from "./expression/places";
import { BlockRun, type SpecOf } from "./expression/run";
import { dayAbove, figuresOfDay } from "./series";

/** What the reader put into the inputs, by name; the others hold what is usual. */
export type InputValues = Readonly<Record<string, PlainCell>>;

/** A part that was computed. Its remarks say which rows were left out, and the like. */
export type ComputedPart =
  | { readonly kind: "figure"; readonly part: Figure; readonly value: PlainCell; readonly remarks: readonly string[] }
  | {
      readonly kind: "rows";
      readonly part: Table | Series;
      /** The headings, then the rows. Cells of a series may show an error; `problems` says why. */
      readonly rows: Rows;
      readonly remarks: readonly string[];
      readonly problems: readonly string[];
    }
  | {
      readonly kind: "refused";
      readonly part: Part;
      /** What its cell shows in the sheet. */
      readonly error: ErrorCode;
      /** Why, and what to do. */
      readonly sentence: string;
    };

export interface ComputedInput {
  readonly name: string;
  readonly value: PlainCell;
  /** Why its cell shows an error. */
  readonly problem?: string;
}

export interface ComputedBlock {
  readonly block: Block;
  readonly inputs: readonly ComputedInput[];
  readonly parts: readonly ComputedPart[];
}

/** The block computed at once: for tests, and where nobody is typing. */
export function computeBlock(block: Block, data: BlockData, specOf: SpecOf, given: InputValues = {}): ComputedBlock {
  return atOnce(computeInSteps(block, data, specOf, given));
}

/** The block computed step by step, so that the pane can listen to the keyboard between two. */
export function* computeInSteps(
  block: Block,
  data: BlockData,
  specOf: SpecOf,
  given: InputValues = {},
): InSteps<ComputedBlock> {
  const expressions = inputExpressions(block, given);
  const run = new BlockRun(data, specOf, expressions);
  const known = new Set<Expression>();
  const inputs: ComputedInput[] = [];
  for (const [name, expression] of expressions) {
    yield* computeLists(expression, run, known);
    inputs.push(computeInput(name, run));
  }
  const parts: ComputedPart[] = [];
  for (const part of block.parts) {
    yield;
    run.remarks.clear();
    if (part.kind === "series") parts.push(yield* computeSeries(part, run, known));
    else {
      yield* computeLists(part.value, run, known);
      parts.push(computePart(part, run));
    }
  }
  return { block, inputs, parts };
}

function inputExpressions({ inputs }: Block, given: InputValues): ReadonlyMap<string, Expression> {
  return new Map(inputs.map(({ name, usual }) => [name, name in given ? literal(given[name] ?? null) : usual]));
}

function computeInput(name: string, run: BlockRun): ComputedInput {
  try {
    return { name, value: single(run.input(name)) };
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    return { name, value: error.code, problem: error.sentence };
  }
}

/** The long lists behind a formula, one after the other; what keeps one from being told is said by the formula. */
function* computeLists(expression: Expression, run: BlockRun, known: Set<Expression>): InSteps<void> {
  const remarks = [...run.remarks];
  for (const step of expression.steps ?? []) {
    if (known.has(step)) continue;
    known.add(step);
    yield* computeLists(step, run, known);
    try {
      step.compute(run);
    } catch (error) {
      if (!(error instanceof Fault)) throw error;
    }
    yield;
  }
  // The formula itself brings along what its lists remark.
  run.remarks.clear();
  for (const remark of remarks) run.remarks.add(remark);
}

function computePart(part: Figure | Table, run: BlockRun): ComputedPart {
  try {
    run.refuseMissing(part.value);
    const value = part.value.compute(run);
    const remarks = [...run.remarks];
    if (part.kind === "table") return { kind: "rows", part, rows: rowsOf(value), remarks, problems: [] };
    const cell = single(value);
    run.setPart(part.id, cell);
    return { kind: "figure", part, value: cell, remarks };
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    run.setPart(part.id, error);
    return { kind: "refused", part, error: error.code, sentence: error.sentence };
  }
}

/** What the workbook lacks for the days before the last: a sheet could not hold their formula, whatever the last day. */
function missingBefore(part: Series, row: number, run: BlockRun): MissingData | undefined {
  try {
    run.refuseMissing(dayAbove(part, row));
  } catch (error) {
    if (error instanceof MissingData) return error;
    throw error;
  }
  return undefined;
}

/** From the last day upwards, as the cells refer to each other. */
function* computeSeries(part: Series, run: BlockRun, known: Set<Expression>): InSteps<ComputedPart> {
  const { id, length, columns, last } = part;
  const rows: PlainCell[][] = [];
  const problems = new Set<string>();
  /** Those of the last day: the days before have each their own. */
  let remarks: readonly string[] = [];
  const compute = (expression: Expression): PlainCell => {
    try {
      run.refuseMissing(expression);
      return single(expression.compute(run));
    } catch (error) {
      if (!(error instanceof Fault)) throw error;
      problems.add(error.sentence);
      return error.code;
    }
  };
  /** Parts below that take something from the series are refused with it. */
  const refused = (fault: Fault): ComputedPart => {
    columns.forEach((_, column) => run.setPart(columnOfSeries(id, column), fault));
    for (let row = 0; row < length; row++) run.setPart(cellOfSeries(id, row, 0), fault);
    return { kind: "refused", part, error: fault.code, sentence: fault.sentence };
  };
  for (let row = length - 1; row >= 0; row--) {
    const day = compute(row === length - 1 ? last : dayAbove(part, row + 1));
    if (problems.size > 0 && row === length - 1) return refused(new Fault(day as ErrorCode, [...problems][0]!));
    run.setPart(cellOfSeries(id, row, 0), day);
    const missing = row === length - 1 ? missingBefore(part, row, run) : undefined;
    if (missing !== undefined) return refused(missing);
    const cells: PlainCell[] = [day];
    for (const figure of figuresOfDay(part, row)) {
      if (day !== null && day !== "") yield* computeLists(figure, run, known);
      cells.push(day === null || day === "" ? "" : compute(figure));
    }
    rows.unshift(cells);
    if (row === length - 1) remarks = [...run.remarks];
    yield;
  }
  columns.forEach((_, column) =>
    run.setPart(
      columnOfSeries(id, column),
      rows.map((row) => [row[column] ?? null]),
    ),
  );
  const headings = columns.map(({ heading }) => heading);
  return { kind: "rows", part, rows: [headings, ...rows], remarks, problems: [...problems] };
}

/** The rows of a table or series that hold something, headings left out. */
export function filledRows({ rows }: Extract<ComputedPart, { kind: "rows" }>): Rows {
  return rows.slice(1).filter((row) => row[0] !== "" && row[0] !== null);
}
