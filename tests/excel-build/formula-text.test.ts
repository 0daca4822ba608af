import { parse, tokenize } from "@borgar/fx";
import { day } from "../../src/core/shared/days";
import { columnOf } from "../../src/functions/columns";
import type { ExampleArgument, FunctionSpec } from "../../src/functions/define";
import { formulaText } from "../../src/functions/formula-text";
import { registry } from "../../src/functions/registry";
import { date, number, text } from "../../src/functions/scalars";

const kinds = {
  number: number(),
  text: text(),
  date: date(),
  dates: columnOf(date(), { notes: "leave out" }),
  numbers: columnOf(number(), { notes: "leave out" }),
};

function formula(...given: readonly (readonly [keyof typeof kinds, ExampleArgument])[]): string {
  const parameters = given.map(([kind], index) => ({ name: `a${index}`, kind: kinds[kind] }));
  const spec = { id: "TOE.CUT", parameters } as unknown as FunctionSpec;
  return formulaText(spec, { arguments: given.map(([, argument]) => argument) });
}

test.each([
  [formula(["number", 81], ["text", "hard horn"]), '=HERD.TOE.CUT(81,"hard horn")'],
  [formula(["text", 'a 5" hoof']), '=HERD.TOE.CUT("a 5"" hoof")'],
  [formula(["date", day("2024-02-20")]), "=HERD.TOE.CUT(DATE(2024,2,20))"],
  [formula(["number", null], ["number", -2.5], ["number", null]), "=HERD.TOE.CUT(,-2.5)"],
  [formula(["numbers", [[1], [2], [null]]]), '=HERD.TOE.CUT({1;2;""})'],
  [formula(["numbers", [[1, 2]]]), "=HERD.TOE.CUT({1,2})"],
  [
    formula(["dates", [[day("2024-02-20")], [null], [day("2024-03-01")]]]),
    '=HERD.TOE.CUT(VSTACK(DATE(2024,2,20),"",DATE(2024,3,1)))',
  ],
  [formula(["numbers", [["#N/A"], [true]]]), "=HERD.TOE.CUT({#N/A;TRUE})"],
  [formula(["number", 1e21]), "=HERD.TOE.CUT(1E+21)"],
  [formula(["number", null]), "=HERD.TOE.CUT()"],
])("%s", (written, expected) => {
  expect(written).toBe(expected);
});

/** Longest formula that a cell takes. Source: Excel specifications and limits. */
const LONGEST_FORMULA = 8192;

const examples = registry.flatMap((spec) => spec.examples.map((example) => [formulaText(spec, example)] as const));

test.each(examples)("%s is a formula that a cell takes", (written) => {
  expect(written.length).toBeLessThanOrEqual(LONGEST_FORMULA);
  expect(parse(tokenize(written)).type).toBe("CallExpression");
});
