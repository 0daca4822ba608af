import { treatmentOf } from "../../../src/core/claws/treatment-words";

const asks = (text: string) =>
  Object.entries(treatmentOf(text))
    .filter(([, is]) => is)
    .map(([what]) => what);

test.each<[string, string[]]>([
  ["block", ["block"]],
  ["Blocked outer claw, NSAID 3 d", ["block", "painRelief"]],
  ["BLOCK + pain relief", ["block", "painRelief"]],
  ["painkillers", ["painRelief"]],
  ["anti-inflammatory", ["painRelief"]],
  ["spray and bandage", ["bandage", "topical"]],
  ["wrapped with salicylic paste", ["bandage", "topical"]],
  ["trimmed", []],
  ["", []],
  ["no block", []],
  ["no block, bandage", ["bandage"]],
  ["without a bandage", []],
  ["block not needed", []],
  ["gave pain relief, no bandage", ["painRelief"]],
  ["road block ahead? unblocked", ["block"]],
  ["powdered", ["topical"]],
])("%j asks for %j", (text, expected) => {
  expect(asks(text)).toEqual(expected);
});
