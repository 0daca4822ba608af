import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";
import type { ExampleArgument, FunctionSpec } from "../functions/define";
import { registry } from "../functions/registry";
import { NAMESPACE } from "./register";

/** The texts that the grid shows while a function is typed. */
export function functionDescriptions(specs: readonly FunctionSpec[] = registry): IFunctionInfo[] {
  return specs.map((spec) => ({
    functionName: `${NAMESPACE}.${spec.id}`,
    functionType: FunctionType.User,
    description: spec.summary,
    abstract: spec.summary,
    functionParameter: spec.parameters.map(({ name, kind, description, optional, whenLeftOut }, index) => ({
      name,
      detail: [
        kind.unit === undefined ? description : `${description}, in ${kind.unit}`,
        optional && whenLeftOut !== undefined ? `Left out: ${whenLeftOut}` : "",
      ]
        .filter((text) => text !== "")
        .join(". "),
      example: exampleText(firstGiven(spec, index)),
      require: optional ? 0 : 1,
      repeat: 0,
    })),
  }));
}

/** The argument in the first example that has it. */
function firstGiven({ examples }: FunctionSpec, index: number): ExampleArgument | undefined {
  const given = examples.map((example) => example.arguments[index]);
  return given.find((argument) => argument !== undefined && argument !== null);
}

/** Rows of a range that still read well in the small box under the formula. */
const MOST_ROWS_SHOWN = 3;

function exampleText(argument: ExampleArgument | undefined): string {
  if (argument === undefined || argument === null) return "";
  if (typeof argument !== "object") return literal(argument);
  const rows = argument.slice(0, MOST_ROWS_SHOWN).map((row) => row.map(literal).join(","));
  return `{${rows.join(";")}${argument.length > MOST_ROWS_SHOWN ? ";…" : ""}}`;
}

function literal(value: number | string | boolean | null): string {
  if (value === null) return "";
  if (typeof value === "string") return `"${value.replaceAll('"', '""')}"`;
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
}
