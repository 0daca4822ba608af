import { bathChange } from "../../../src/functions/barn/bath-change";
import { bathCopper } from "../../../src/functions/barn/bath-copper";
import { bathDays } from "../../../src/functions/barn/bath-days";
import { bathProduct } from "../../../src/functions/barn/bath-product";
import { bathVolume } from "../../../src/functions/barn/bath-volume";
import { bunkSpace } from "../../../src/functions/barn/bunk-space";
import { lyingBudget } from "../../../src/functions/barn/lying-budget";
import { stallComfort } from "../../../src/functions/barn/stall-comfort";
import { stallPerching } from "../../../src/functions/barn/stall-perching";
import { stallStanding } from "../../../src/functions/barn/stall-standing";
import { stallStocking } from "../../../src/functions/barn/stall-stocking";
import { stallUse } from "../../../src/functions/barn/stall-use";
import type { FunctionSpec } from "../../../src/functions/define";
import { told } from "../cells/call";

type Told = ReturnType<typeof told>;
type Case = readonly [spec: FunctionSpec, args: readonly unknown[], steps: Told["steps"], remarks?: Told["remarks"]];

const COPPER_BASIS = "w/v: kg of copper sulphate pentahydrate in 100 L of bath";
const FORMALIN_BASIS = "v/v: litres of formalin stock (37 % formaldehyde) in 100 L of bath";
const TOUCHING = ["Touching a stall", "60 + 4 + 8 cows", "72"];
const LYING_TARGET = "cows want 12 hours or more";

const cases: readonly Case[] = [
  // 200 / 65 = 3.08
  [
    bathChange,
    [65, 200, 1],
    [
      ["Milkings a fill", "200 passes / 65 cows, rounded down", "3"],
      ["Left", "3 − 1 done, not under 0", "2"],
    ],
  ],
  [
    bathChange,
    [1, 200, 100],
    [
      ["Milkings a fill", "200 passes / 1 cow, rounded down", "200"],
      ["Left", "200 − 100 done, not under 0", "100"],
    ],
  ],
  [
    bathChange,
    [200, 200, 2],
    [
      ["Milkings a fill", "200 passes / 200 cows, rounded down", "1"],
      ["Left", "1 − 2 done, not under 0", "0"],
    ],
  ],
  [
    bathChange,
    [201, 200],
    [
      ["Milkings a fill", "200 passes / 201 cows, rounded down", "0"],
      ["Left", "0 − 0 done, not under 0", "0"],
    ],
    ["one milking of 201 cows passes the limit of 200: change the bath within the milking"],
  ],
  // 10 × 63.546 / 249.68 = 2.545
  [bathCopper, [10], [["Copper", "10 kg × 25.45 %", "2.55 kg"]]],
  [bathDays, [0.249], [["Footbath", "24.9 % with 3 or 4; as needed under 25 %", "as needed"]]],
  [bathDays, [0.25], [["Footbath", "25 % with 3 or 4; as needed under 25 %", "2 days a week"]]],
  [bathDays, [0.5], [["Footbath", "50 % with 3 or 4; as needed under 25 %", "2 days a week"]]],
  [bathDays, [0.75], [["Footbath", "75 % with 3 or 4; as needed under 25 %", "5 days a week"]]],
  [bathDays, [0.751], [["Footbath", "75.1 % with 3 or 4; as needed under 25 %", "7 days a week"]]],
  [
    bathProduct,
    [225, 5, "copper sulphate"],
    [
      ["Basis", "copper sulphate", COPPER_BASIS],
      ["Product", "225 L × 5 / 100", "11.25 kg"],
    ],
    [COPPER_BASIS],
  ],
  // 4 % of stock that holds 37 %: 1.48 %
  [
    bathProduct,
    [225, 4, "formalin"],
    [
      ["Basis", "formalin", FORMALIN_BASIS],
      ["Product", "225 L × 4 / 100", "9 L"],
      ["Formaldehyde", "4 % × 0.37", "1.48 %"],
    ],
    [FORMALIN_BASIS],
  ],
  [bathVolume, [3, 0.5, 0.15], [["Volume", "3 × 0.5 × 0.15 m × 1000", "225 litres"]]],
  // 6,100 cm / 90 = 67.78
  [bunkSpace, [61, 90], [["Space", "61 m × 100 / 90 cows", "67.8 cm"]]],
  [bunkSpace, [2, 1], [["Space", "2 m × 100 / 1 cow", "200 cm"]]],
  [
    lyingBudget,
    [3.5, 8.5, 0],
    [
      ["Left for lying", "24 - 3.5 - 8.5 - 0 hours", "12 hours"],
      ["Meaning", LYING_TARGET, "enough"],
    ],
  ],
  [
    lyingBudget,
    [4, 5, 3.25],
    [
      ["Left for lying", "24 - 4 - 5 - 3.25 hours", "11.75 hours"],
      ["Meaning", LYING_TARGET, "too few"],
    ],
    ["under the 12 hours that cows want to lie"],
  ],
  // 60 / 72 = 0.8333, 8 / 72 = 0.1111, 12 / 72 = 0.1667
  [
    stallComfort,
    [60, 4, 8],
    [
      TOUCHING,
      ["Index", "60 lying / 72", "0.833"],
      ["Published threshold", "one hour after the return from the morning milking", "over 0.85"],
    ],
  ],
  [stallPerching, [60, 4, 8], [TOUCHING, ["Index", "8 perching / 72", "0.111"]]],
  [
    stallStanding,
    [60, 4, 8],
    [TOUCHING, ["Index", "(4 + 8) / 72", "0.167"], ["Published threshold", "two hours before milking", "under 0.2"]],
  ],
  [stallStocking, [120, 110], [["Stocking", "120 cows / 110 stalls", "109.1 %"]]],
  [stallStocking, [1, 1], [["Stocking", "1 cow / 1 stall", "100 %"]]],
  [
    stallUse,
    [60, 70],
    [
      ["Index", "60 lying / 70 not eating", "0.857"],
      ["Published threshold", "Overton et al. 2003", "over 0.75"],
    ],
  ],
];

test.each(cases.map((one) => [one[0].id, one] as const))(
  "the working of %s",
  (_, [spec, args, steps, remarks = []]) => {
    expect(told(spec, ...args)).toEqual({ steps, remarks });
  },
);
