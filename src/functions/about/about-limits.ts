import { definition } from "../../core/shared/source";
import { defineFunction, type FunctionSpec, required } from "../define";
import { functionKind, GROUP } from "./kinds";

/** Made of the other functions, whose limits and cautions it tells. */
export function aboutLimits(catalogue: readonly FunctionSpec[]): FunctionSpec {
  const described = functionKind(catalogue);
  return defineFunction({
    id: "ABOUT.LIMITS",
    group: GROUP,
    summary: "What a function cannot tell, and its cautions, for a report.",
    parameters: { function: required(described, "Name of the function, with or without HERD.") },
    result: { shape: "scalar", type: "text" },
    sources: [definition("The text is the one that the help page shows.")],
    limits: ["Tells what holds for every use; what a single figure left out stands in the pane under Explain."],
    cautions: [],
    examples: [
      {
        arguments: ["HERD.LESION.PARENT"],
        result: "A lesion that is no form of another is its own parent.",
        origin: "hand",
        where: "the function's entry on the help page",
      },
      {
        arguments: ["share.low"],
        result: "Takes the animals as independent; those of one herd are not, so the true limits are somewhat wider.",
        origin: "hand",
        where: "the function's entry on the help page",
      },
    ],
    compute: ({ function: spec }) => {
      const texts = [...spec.limits, ...spec.cautions.map((caution) => `Caution: ${caution}`)];
      return texts.length === 0 ? "None stated." : texts.join(" | ");
    },
    steps: ({ function: spec }, text) => [
      ...spec.limits.map((limit) => ({ label: "Limit", working: limit, value: "" })),
      ...spec.cautions.map((caution) => ({ label: "Caution", working: caution, value: "" })),
      {
        label: spec.id,
        working: spec.summary,
        value: String(text).length === 0 ? "" : `${spec.limits.length} limits, ${spec.cautions.length} cautions`,
      },
    ],
  });
}
