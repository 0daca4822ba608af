import { invalid } from "../../core/shared/domain-error";
import type { FunctionSpec } from "../define";
import type { ScalarKind } from "../kind";
import { scalarKind } from "../scalars";

export const GROUP = "About";

/** A function of the catalogue, by its name: LESION.RATE, herd.lesion.rate, HERD.LESION.RATE(). */
export function functionKind(catalogue: readonly FunctionSpec[]): ScalarKind<FunctionSpec> {
  const byName = new Map(catalogue.map((spec) => [spec.id, spec]));
  const choices = [...byName.keys()];
  const must = `the name of a HERD function, such as ${choices[0]}`;
  return scalarKind({
    name: "function name",
    limits: { choices },
    must,
    readCell(cell, where) {
      const name = String(cell)
        .toUpperCase()
        .replace(/^=?HERD\./, "")
        .replace(/\(.*\)$/, "")
        .trim();
      const spec = typeof cell === "string" ? byName.get(name) : undefined;
      if (spec === undefined) throw invalid(where, must, cell);
      return spec;
    },
  });
}
