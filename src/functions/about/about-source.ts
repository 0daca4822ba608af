import { definition } from "../../core/shared/source";
import { defineFunction, type FunctionSpec, required } from "../define";
import { functionKind, GROUP } from "./kinds";

/** Made of the other functions, whose sources it tells. */
export function aboutSource(catalogue: readonly FunctionSpec[]): FunctionSpec {
  const described = functionKind(catalogue);
  return defineFunction({
    id: "ABOUT.SOURCE",
    group: GROUP,
    summary: "The published sources of a function, for a report.",
    parameters: { function: required(described, "Name of the function, with or without HERD.") },
    result: { shape: "scalar", type: "text" },
    sources: [definition("The text is the one that the help page shows.")],
    limits: ["Sources quoted from memory are marked so: check them before you publish."],
    cautions: [],
    examples: [
      {
        arguments: ["CELL.SCORE"],
        result:
          "Ali AKA, Shook GE 1980. An optimum transformation for somatic cell concentration in milk. J Dairy Sci 63:487-490. (from memory)",
        origin: "printed",
        where: "the paper's own title page (from memory)",
      },
      {
        arguments: ["herd.share.low()"],
        result:
          "Wilson EB 1927. Probable inference, the law of succession, and statistical inference. J Am Stat Assoc 22:209-212. (from memory)",
        origin: "printed",
        where: "the paper's own title page (from memory)",
      },
    ],
    compute: ({ function: spec }) =>
      spec.sources
        .map(({ citation, standing }) => (standing === "memory" ? `${citation} (from memory)` : citation))
        .join(" | "),
    steps: ({ function: spec }) =>
      spec.sources.map(({ name, citation, standing }) => ({ label: name, working: citation, value: standing })),
  });
}
