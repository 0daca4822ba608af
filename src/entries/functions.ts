import { DomainError } from "../core/shared/domain-error";
import type { CellValue } from "../functions/cell";
import type { FunctionSpec, Result, ResultValue } from "../functions/define";
import { evaluate } from "../functions/evaluate";
import { registry } from "../functions/registry";

/**
 * The worksheet functions in Excel. Nothing else runs before them: a function called before it is associated shows
 * #BUSY! until the page has loaded.
 */
for (const spec of registry) {
  const call = spec.id.startsWith("ABOUT.") ? answerFromTexts : answer;
  CustomFunctions.associate(spec.id, (...raw: unknown[]) => call(spec, raw));
}

/** Functions that tell of others need their texts, which no other function waits for. */
async function answerFromTexts({ id }: FunctionSpec, raw: readonly unknown[]): Promise<ExcelCell | ExcelCell[][]> {
  const { wholeRegistry } = await import(/* webpackChunkName: "texts" */ "../functions/whole-registry");
  const spec = wholeRegistry.find((candidate) => candidate.id === id);
  if (spec === undefined) throw excelError(new DomainError("unavailable", `HERD.${id} is not known`));
  return answer(spec, raw);
}

/** What one cell of a result is handed over as: a date brings its number format along. */
type ExcelCell = CellValue | { readonly type: "Double"; readonly basicValue: number; readonly numberFormat: string };

/** Excel hands over every argument of the metadata, null for one left out, and its own note on the call at the end. */
function answer(spec: FunctionSpec, raw: readonly unknown[]): ExcelCell | ExcelCell[][] {
  try {
    return withDates(spec.result, evaluate(spec, raw.slice(0, spec.parameters.length)).value);
  } catch (error) {
    throw excelError(error);
  }
}

function withDates(result: Result, value: ResultValue): ExcelCell | ExcelCell[][] {
  if (typeof value !== "object") return result.shape === "table" ? value : excelCell(dateFormat(result), value);
  const formats = result.shape === "table" ? result.columns.map(dateFormat) : [dateFormat(result)];
  return value.map((row) => row.map((cell, column) => excelCell(formats[column], cell)));
}

const DATE_FORMAT = "yyyy-mm-dd";

function dateFormat({ type, format }: { readonly type: string; readonly format?: string }): string | undefined {
  return type === "date" ? (format ?? DATE_FORMAT) : undefined;
}

function excelCell(numberFormat: string | undefined, value: CellValue): ExcelCell {
  if (numberFormat === undefined || typeof value !== "number") return value;
  return { type: "Double", basicValue: value, numberFormat };
}

/** Excel shows the message of these two errors alone. */
function excelError(error: unknown): CustomFunctions.Error {
  const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
  if (error instanceof DomainError) {
    return new CustomFunctions.Error(error.kind === "unavailable" ? notAvailable : invalidValue, error.message);
  }
  return new CustomFunctions.Error(invalidValue, `a defect of Evenfoot, please report it: ${String(error)}`);
}
