import { DomainError } from "../../../core/shared/domain-error";
import type { Column } from "../../../functions/columns";
import type { FunctionSpec } from "../../../functions/define";
import { isBlankArgument } from "../../../functions/scalars";
import type { FunctionCall, PlainArgument } from "../../../workbook/port";
import { counted, dateText, plainNumber } from "../../format";

/** One argument of a call, as the pane tells it. */
export interface Input {
  readonly name: string;
  readonly description: string;
  /** As the formula writes it; absent where it was left out. */
  readonly text?: string;
  /** The value as read, or a column in a sentence; with its unit. */
  readonly value: string;
  /** Why it was refused. */
  readonly fault?: string;
}

type Parameter = FunctionSpec["parameters"][number];

/** Texts of a column that are quoted as samples. */
const SAMPLES = 3;

/** The arguments of a call, each read by itself, so that one bad argument does not hide the others. */
export function describeInputs(spec: FunctionSpec, call: FunctionCall): readonly Input[] {
  return spec.parameters.map((parameter, index) => {
    const text = call.argumentTexts[index]?.trim();
    return {
      name: parameter.name,
      description: parameter.description,
      ...(text === undefined || text === "" ? {} : { text }),
      ...readInput(parameter, text, call.rawArguments, index),
    };
  });
}

function readInput(
  parameter: Parameter,
  text: string | undefined,
  raw: readonly PlainArgument[] | undefined,
  index: number,
): Pick<Input, "value" | "fault"> {
  if (raw === undefined) return { value: text === undefined ? "left out" : "the host does not tell its value" };
  const given = raw[index];
  if (parameter.optional && isBlankArgument(given, parameter.kind))
    return { value: `left out: ${parameter.whenLeftOut ?? "not used"}` };
  try {
    return { value: describeValue(parameter, parameter.kind.read(given, parameter.name), given) };
  } catch (error) {
    if (error instanceof DomainError) return { value: describeRaw(given), fault: error.message };
    throw error;
  }
}

function describeValue(parameter: Parameter, value: unknown, raw: PlainArgument | undefined): string {
  const { kind } = parameter;
  if (kind.shape === "column") return describeColumn(value as Column<unknown>, isDates(kind.name), kind.unit);
  if (kind.shape === "table") return describeTable(value as readonly unknown[], raw);
  return withUnit(scalarText(value, isDates(kind.name)), typeof value === "number" ? kind.unit : undefined);
}

/** "140 rows: 132 with a value, 8 left out (5 blank, 3 with a note); from 12 to 840 thousand". */
function describeColumn(column: Column<unknown>, dates: boolean, unit: string | undefined): string {
  const rows = column.values.length;
  let used = 0;
  let low = Infinity;
  let high = -Infinity;
  const samples = new Set<string>();
  for (const value of column.values) {
    if (value === null) continue;
    used++;
    if (typeof value === "number") {
      if (value < low) low = value;
      if (value > high) high = value;
    } else if (samples.size < SAMPLES) samples.add(scalarText(value, dates));
  }
  const counts = `${counted(rows, "row")}: ${plainNumber(used)} with a value${leftOut(rows - used, column.noteRows)}`;
  if (low <= high)
    return `${counts}; ${withUnit(`from ${scalarText(low, dates)} to ${scalarText(high, dates)}`, unit)}`;
  return samples.size === 0 ? counts : `${counts}; such as ${[...samples].join(", ")}`;
}

function leftOut(rows: number, notes: number): string {
  if (rows === 0) return "";
  const parts = [
    ...(rows > notes ? [`${plainNumber(rows - notes)} blank`] : []),
    ...(notes > 0 ? [`${plainNumber(notes)} with a note`] : []),
  ];
  return `, ${plainNumber(rows)} left out (${parts.join(", ")})`;
}

function describeTable(rows: readonly unknown[], raw: PlainArgument | undefined): string {
  const headings = Array.isArray(raw) ? (raw as readonly (readonly unknown[])[])[0] : undefined;
  const named = headings?.filter((heading) => typeof heading === "string" && heading !== "").join(", ");
  return `${counted(rows.length, "row")}${named ? ` under ${named}` : ""}`;
}

/** A value that was refused, as it stands in the sheet. */
function describeRaw(raw: PlainArgument | undefined): string {
  if (raw === undefined || raw === null || raw === "") return "blank";
  if (!Array.isArray(raw)) return scalarText(raw, false);
  const rows = raw as readonly (readonly unknown[])[];
  const width = rows[0]?.length ?? 0;
  if (rows.length === 1 && width === 1) return describeRaw(rows[0]![0] as PlainArgument);
  return width > 1 ? `${counted(rows.length, "row")} by ${counted(width, "column")}` : counted(rows.length, "row");
}

function scalarText(value: unknown, dates: boolean): string {
  if (typeof value === "number") return dates ? dateText(value) : plainNumber(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string") return value;
  return value === null || value === undefined ? "blank" : JSON.stringify(value);
}

function withUnit(text: string, unit: string | undefined): string {
  return unit === undefined ? text : `${text} ${unit}`;
}

function isDates(kindName: string): boolean {
  return /\bdates?$/.test(kindName);
}
