import type { FunctionSpec } from "../../src/functions/define";
import { evaluate } from "../../src/functions/evaluate";
import { registry } from "../../src/functions/registry";
import type { ColumnOfCells } from "./herd-data";
import { benchSheet, type BenchSheet } from "./sheet";

export function specOf(id: string): FunctionSpec {
  const spec = registry.find((candidate) => candidate.id === id);
  if (spec === undefined) throw new Error(`there is no function ${id}`);
  return spec;
}

/** A call of a worksheet function on raw arguments, as every host makes it. */
export function call(id: string, raw: readonly unknown[]): unknown {
  return evaluate(specOf(id), raw).value;
}

/** A column as a host hands it over: rows of one cell. */
export function range(column: ColumnOfCells): unknown[][] {
  return column.map((cell) => [cell]);
}

/** The same call as a formula in a sheet that holds the columns. */
export function callFormula(id: string, raw: readonly unknown[]): BenchSheet {
  const columns = raw.flatMap((argument, index) =>
    Array.isArray(argument)
      ? [[`argument ${index + 1}`, (argument as ColumnOfCells[]).map(([cell]) => cell!)] as const]
      : [],
  );
  return benchSheet(Object.fromEntries(columns), (ranges) => {
    const left = [...ranges];
    const written = raw.map((argument) => (Array.isArray(argument) ? left.shift()! : String(argument)));
    return [`HERD.${id}(${written.join(",")})`];
  });
}
