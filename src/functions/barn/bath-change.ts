import { milkingsUntilChange } from "../../core/barn/footbath";
import { cook2012 } from "../../core/reference/cook-2012";
import { solano2017 } from "../../core/reference/solano-2017";
import { defineFunction, required, withDefault } from "../define";
import { counted } from "../figure";
import { number } from "../scalars";
import { someCows } from "./kinds";

const passesKind = number({
  unit: "cow passes",
  min: 20,
  max: 1000,
  whole: true,
  reason: "guides change a bath after 150 to 350 passes",
  zeroIsBlank: true,
});
const milkingsKind = number({ min: 0, max: 100, whole: true, reason: "milkings since the last change" });

export const bathChange = defineFunction({
  id: "BATH.CHANGE",
  group: "Barn and footbath",
  summary: "Whole milkings that are left before a footbath is changed.",
  parameters: {
    cows: required(someCows, "Cows that pass at a milking"),
    passesLimit: required(passesKind, "Cow passes after which the bath is changed: 200 in the trial"),
    milkings: withDefault(milkingsKind, "Milkings since the last change", 0, "0, a fresh bath"),
  },
  result: { shape: "scalar", type: "number", unit: "milkings", format: "0" },
  sources: [solano2017, cook2012],
  limits: [
    "Dirty legs use a bath up sooner: 150 passes, against 300 to 350 with clean legs. A 0 means before the next milking.",
  ],
  cautions: ["A spent bath spreads what it should prevent. Dispose of it as the label and local codes say."],
  examples: [
    {
      arguments: [65, 200, 0],
      result: 3,
      origin: "hand",
      where: "Solano et al. 2017, 200 passes: 3 × 65 = 195, a fourth makes 260",
    },
    { arguments: [100, 200, 1], result: 1, origin: "hand", where: "200 / 100 = 2 milkings, 1 done" },
  ],
  compute({ cows, passesLimit, milkings }, remarks) {
    if (cows > passesLimit)
      remarks.add(`one milking of ${cows} cows passes the limit of ${passesLimit}: change the bath within the milking`);
    return milkingsUntilChange(cows, passesLimit, milkings);
  },
  steps: ({ cows, passesLimit, milkings }, result) => [
    {
      label: "Milkings a fill",
      working: `${passesLimit} passes / ${counted(cows, "cow")}, rounded down`,
      value: String(Math.floor(passesLimit / cows)),
    },
    {
      label: "Left",
      working: `${Math.floor(passesLimit / cows)} − ${milkings} done, not under 0`,
      value: String(result),
    },
  ],
});
