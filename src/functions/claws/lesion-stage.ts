import { stageMeaning, stageName, stageNames } from "../../core/claws/dermatitis-stage";
import { berry2012, doepfer1997 } from "../../core/reference/doepfer-1997";
import { invalid } from "../../core/shared/domain-error";
import { defineFunction, required } from "../define";
import { scalarKind } from "../scalars";
import { GROUP } from "./kinds-of-findings";

const MUST = `a stage of digital dermatitis (${stageNames.join(", ")})`;

/** M0 to M4.1; the number of the stage alone is understood, but a 0 may be a blank: M0 is written out. */
const stage = scalarKind<string>({
  name: "stage of digital dermatitis",
  limits: { choices: stageNames },
  must: MUST,
  zeroIsBlank: true,
  readCell(cell, where) {
    const name = typeof cell === "boolean" ? undefined : stageName(String(cell));
    if (name === undefined) throw invalid(where, MUST, cell);
    return name;
  },
});

export const lesionStage = defineFunction({
  id: "LESION.STAGE",
  group: GROUP,
  summary: "What an M-stage of digital dermatitis stands for: active, healing or chronic, or none.",
  parameters: { stage: required(stage, "M0, M1, M2, M3, M4 or M4.1") },
  result: { shape: "scalar", type: "text" },
  sources: [doepfer1997, berry2012],
  limits: ["The stages part M1 and M2 at 2 cm; a lesion of exactly 2 cm is in neither: record it as M2."],
  cautions: ["M1, M2 and M4.1 hurt and spread: treat them, as the herd's veterinarian advises."],
  examples: [
    { arguments: ["M2"], result: "active", origin: "printed", where: "Döpfer et al. 1997" },
    { arguments: ["M4"], result: "healing or chronic", origin: "printed", where: "Döpfer et al. 1997" },
    { arguments: [4.1], result: "active", origin: "printed", where: "Berry et al. 2012: M4 with a small M1 in it" },
    { arguments: ["M0"], result: "none", origin: "printed", where: "Döpfer et al. 1997: normal skin" },
  ],
  compute: ({ stage }) => stageMeaning(stage)!,
  steps: ({ stage }, meaning) => [{ label: "Stage", working: stage, value: String(meaning) }],
});
