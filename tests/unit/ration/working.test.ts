import type { FunctionSpec } from "../../../src/functions/define";
import { rationBiotin } from "../../../src/functions/ration/ration-biotin";
import { rationCheck } from "../../../src/functions/ration/ration-check";
import { rationNeed } from "../../../src/functions/ration/ration-need";
import { rationSupply } from "../../../src/functions/ration/ration-supply";
import { refusal, told } from "../cells/call";

type Case = readonly [spec: FunctionSpec, args: readonly unknown[], steps: string[][]];

const cases: readonly Case[] = [
  // 0.0145 × 640 = 9.28; 0.04 × 40 = 1.6; 10.88 / 0.05 = 217.6; / 25 = 8.704
  [
    rationNeed,
    ["copper", 640, 40, 25],
    [
      ["Maintenance", "640 kg, eating 25 kg", "9.28 mg absorbed"],
      ["Milk", "40 kg", "1.6 mg absorbed"],
      ["Pregnancy", "0 days", "0 mg absorbed"],
      ["Fed", "together / 0.05 absorbed, NASEM 2021", "217.6 mg a day"],
      ["In the dry matter", "/ 25 kg", "8.7 mg/kg"],
    ],
  ],
  // 0.0145 × 700 = 10.15; 0.0023 × 700 = 1.61; 11.76 / 0.05 = 235.2; / 13 = 18.09
  [
    rationNeed,
    ["copper", 700, "dry", 13, "NASEM 2021", 250],
    [
      ["Maintenance", "700 kg, eating 13 kg", "10.15 mg absorbed"],
      ["Milk", "0 kg", "0 mg absorbed"],
      ["Pregnancy", "250 days", "1.61 mg absorbed"],
      ["Fed", "together / 0.05 absorbed, NASEM 2021", "235.2 mg a day"],
      ["In the dry matter", "/ 13 kg", "18.1 mg/kg"],
    ],
  ],
  // 0.002 × 650 = 1.3; 0.03 × 40 = 1.2; 2.5 / 0.0075 = 333.33; / 25 = 13.33
  [
    rationNeed,
    ["manganese", 650, 40, 25, "NRC 2001"],
    [
      ["Maintenance", "650 kg, eating 25 kg", "1.3 mg absorbed"],
      ["Milk", "40 kg", "1.2 mg absorbed"],
      ["Pregnancy", "0 days", "0 mg absorbed"],
      ["Fed", "together / 0.0075 absorbed, NRC 2001", "333.3 mg a day"],
      ["In the dry matter", "/ 25 kg", "13.3 mg/kg"],
    ],
  ],
  // 142.5 / 1425 = 10 %; 110.25 / 220.5 = 50 %
  [
    rationCheck,
    ["zinc", 1282.5, 1425],
    [
      ["Supply less need", "1282.5 - 1425 mg a day", "-142.5 mg a day"],
      ["Meaning", "zinc", "10 % short: ask the nutritionist"],
    ],
  ],
  [
    rationCheck,
    ["copper", 330.75, 220.5],
    [
      ["Supply less need", "330.75 - 220.5 mg a day", "110.25 mg a day"],
      ["Meaning", "copper", "copper 50 % over the need: toxic in excess, ask the nutritionist"],
    ],
  ],
  // 22.5 × 12.4 = 279
  [rationSupply, [22.5, 12.4], [["Supply", "22.5 kg × 12.4 mg/kg", "279 mg a day"]]],
  [rationBiotin, [19], [["Dose", "19 mg a day", "under the 20 mg a day of the trials"]]],
  [rationBiotin, [20], [["Dose", "20 mg a day", "the 20 mg a day of the trials"]]],
  [rationBiotin, [21], [["Dose", "21 mg a day", "over the 20 mg a day of the trials: no gain shown"]]],
];

test.each(cases.map((one) => [one[0].id, one] as const))("the working of %s", (_, [spec, args, steps]) => {
  expect(told(spec, ...args)).toEqual({ steps, remarks: [] });
});

test("milk that is no number is told that dry is a word for none", () => {
  expect(refusal(rationNeed, "copper", 640, "dries off", 25)).toEqual({
    kind: "invalid",
    message: 'milkKg must be a number from 0.1 to 90 kg, or "dry"; got "dries off"',
  });
});
