import { biotinInWords } from "../../core/ration/biotin";
import { biotinTrials } from "../../core/reference/biotin-trials";
import { defineFunction, required } from "../define";
import { number } from "../scalars";

const dose = number({ unit: "mg a day", min: 0.1, max: 1000, reason: "milligrams a cow and day", zeroIsBlank: true });

export const rationBiotin = defineFunction({
  id: "RATION.BIOTIN",
  group: "Ration",
  summary: "Biotin fed a cow and day against the dose of the trials.",
  parameters: { mgPerDay: required(dose, "Biotin fed a cow and day") },
  result: { shape: "scalar", type: "text" },
  sources: [biotinTrials],
  limits: ["Horn grows slowly: the trials saw an effect after about six months or more. There is no set requirement."],
  cautions: [],
  examples: [
    {
      arguments: [20],
      result: "the 20 mg a day of the trials",
      origin: "printed",
      where: "Trials: 20 mg a cow and day",
    },
    { arguments: [10], result: "under the 20 mg a day of the trials", origin: "hand", where: "10 is under 20" },
  ],
  compute: ({ mgPerDay }) => biotinInWords(mgPerDay),
  steps: ({ mgPerDay }, result) => [{ label: "Dose", working: `${mgPerDay} mg a day`, value: String(result) }],
});
