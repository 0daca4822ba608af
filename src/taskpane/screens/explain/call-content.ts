import { DomainError } from "../../../core/shared/domain-error";
import type { Source, Standing } from "../../../core/shared/source";
import type { CellValue } from "../../../functions/cell";
import type { FunctionSpec, Result, ResultColumn, ResultValue, Step } from "../../../functions/define";
import { type Explanation, explain } from "../../../functions/evaluate";
import type { FunctionCall, SelectedCell } from "../../../workbook/port";
import { capitalised, counted, plainNumber, valueText } from "../../format";
import { describeInputs, type Input } from "./inputs";

/** How a call ended. */
export type Outcome =
  | { readonly kind: "value"; readonly text: string; readonly unit?: string; readonly details: readonly string[] }
  | {
      readonly kind: "refused";
      /** What the cell shows. */
      readonly error: "#VALUE!" | "#N/A";
      readonly message: string;
      /** The argument to mend, where the message names one. */
      readonly argument?: string;
    }
  | { readonly kind: "unknown"; readonly message: string };

export interface SourceText {
  readonly name: string;
  readonly citation: string;
  readonly standing: string;
}

/** All that the pane tells of one call. */
export interface CallContent {
  readonly functionName: string;
  readonly summary: string;
  readonly inputs: readonly Input[];
  readonly outcome: Outcome;
  readonly steps: readonly Step[];
  readonly remarks: readonly string[];
  readonly sources: readonly SourceText[];
  readonly limits: readonly string[];
  readonly cautions: readonly string[];
}

const STANDINGS: Readonly<Record<Standing, string>> = {
  read: "read in the source",
  memory: "quoted from memory",
  "common practice": "common practice, no source",
  definition: "definition",
};

/** Works a call out again, with its working. */
export function explainCall(spec: FunctionSpec, call: FunctionCall, cell: SelectedCell): CallContent {
  const run = rerun(spec, call);
  const inputs = describeInputs(spec, call);
  return {
    functionName: `HERD.${spec.id}`,
    summary: spec.summary,
    inputs: run.kind === "refused" ? withFault(inputs, run) : inputs,
    outcome:
      run.kind === "explained"
        ? valueOutcome(withUnits(spec.result, run.explanation), run.explanation.value, cell)
        : run,
    steps: run.kind === "explained" ? run.explanation.steps : [],
    remarks: run.kind === "explained" ? run.explanation.remarks : [],
    sources: spec.sources.map(sourceText),
    limits: spec.limits,
    cautions: spec.cautions,
  };
}

type Refused = Extract<Outcome, { kind: "refused" }>;
type Run =
  | { readonly kind: "explained"; readonly explanation: Explanation }
  | Exclude<Outcome, { readonly kind: "value" }>;

function rerun(spec: FunctionSpec, call: FunctionCall): Run {
  if (call.rawArguments === undefined) {
    return { kind: "unknown", message: call.errorMessage ?? "The values handed to the function are not known here." };
  }
  try {
    return { kind: "explained", explanation: explain(spec, call.rawArguments) };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const argument = spec.parameters.find(({ name }) => namesArgument(error.message, name))?.name;
    return {
      kind: "refused",
      error: error.kind === "unavailable" ? "#N/A" : "#VALUE!",
      message: error.message,
      ...(argument === undefined ? {} : { argument }),
    };
  }
}

/** Messages start with the argument they are about. */
function namesArgument(message: string, name: string): boolean {
  return message.startsWith(name) && !/^\w/.test(message.slice(name.length));
}

/** A unit may be chosen by an argument; then the result names that argument, such as "milkUnit" for "litres". */
function withUnits(result: Result, { arguments: given }: Explanation): Result {
  const chosen = <T extends { readonly unit?: string }>(part: T): T => {
    const unit = part.unit === undefined ? undefined : given[part.unit];
    return typeof unit === "string" ? { ...part, unit } : part;
  };
  return result.shape === "table" ? { ...result, columns: result.columns.map(chosen) } : chosen(result);
}

/** An argument can be sound by itself and refused beside the others: mark it too. */
function withFault(inputs: readonly Input[], { argument, message }: Refused): readonly Input[] {
  return inputs.map((input) => (input.name === argument && !input.fault ? { ...input, fault: message } : input));
}

function valueOutcome(result: Result, value: ResultValue, cell: SelectedCell): Outcome {
  if (typeof value !== "object") {
    const { type, format, unit } = result.shape === "table" ? { type: "text" as const } : result;
    return { kind: "value", text: valueText(value, type, format), ...unitOf(value, unit), details: [] };
  }
  const columns = value[0]?.length ?? 0;
  const headingRows = result.shape === "table" ? 1 : 0;
  const size = `${counted(value.length - headingRows, "row")}${columns > 1 ? ` by ${counted(columns, "column")}` : ""}`;
  return { kind: "value", text: size, details: spillDetails(result, value, cell) };
}

/** What the selected cell is within a result that fills several cells. */
function spillDetails(
  result: Result,
  value: readonly (readonly CellValue[])[],
  { spill, address }: SelectedCell,
): string[] {
  const row = spill?.row ?? 0;
  const column = spill?.column ?? 0;
  const cell = value[row]?.[column];
  const from = `Filled from ${spill?.anchor ?? address}.`;
  if (cell === undefined) return [from];
  const described = result.shape === "table" ? result.columns[column] : result.shape === "column" ? result : undefined;
  if (result.shape === "table" && row === 0) return [from, `This cell is the heading “${String(cell)}”.`];
  const shown = described ? withUnit(cell, described) : String(cell);
  const heading = described && "heading" in described ? `, “${described.heading}”` : "";
  const place = result.shape === "table" ? row : row + 1;
  return [from, `This cell is row ${plainNumber(place)}${heading}: ${shown}.`];
}

function withUnit(value: CellValue, { type, format, unit }: Omit<ResultColumn, "heading">): string {
  const text = valueText(value, type, format);
  return unit === undefined || typeof value !== "number" ? text : `${text} ${unit}`;
}

function unitOf(value: CellValue, unit: string | undefined): { readonly unit?: string } {
  return unit === undefined || typeof value !== "number" ? {} : { unit };
}

/** The standing is shown beside the name; a citation need not say it again. */
function sourceText({ name, citation, standing }: Source): SourceText {
  return {
    name,
    citation: capitalised(citation.replace(/^Common practice, no source: /, "")),
    standing: STANDINGS[standing],
  };
}
