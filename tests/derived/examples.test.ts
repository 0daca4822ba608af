import { evaluate, explain } from "../../src/functions/evaluate";
import { registry } from "../../src/functions/registry";
import { expectResult } from "./expect-result";

describe.each(registry.map((spec) => [spec.id, spec] as const))("HERD.%s", (_, spec) => {
  test.each(spec.examples.map((example, index) => [index + 1, example.origin, example.where, example] as const))(
    "example %d (%s: %s)",
    (_index, _origin, _where, example) => {
      expectResult(evaluate(spec, example.arguments).value, example);
    },
  );

  test("shows its working for every example", () => {
    for (const example of spec.examples) {
      const { steps } = explain(spec, example.arguments);
      expect(steps.length).toBeGreaterThan(0);
      for (const step of steps) {
        expect(step.label).not.toBe("");
        expect(`${step.label} ${step.working} ${step.value}`).not.toMatch(/undefined|NaN|\[object/);
      }
    }
  });

  test("has the headings and the width that it declares", () => {
    for (const example of spec.examples) {
      const { value } = evaluate(spec, example.arguments);
      if (spec.result.shape === "scalar") expect(typeof value).not.toBe("object");
      if (spec.result.shape === "column") {
        const firstColumn = spec.parameters.findIndex(({ kind }) => kind.shape === "column");
        expect((value as unknown[]).length).toBe((example.arguments[firstColumn] as unknown[]).length);
      }
      if (spec.result.shape === "table") {
        expect((value as unknown[][])[0]).toEqual(spec.result.columns.map(({ heading }) => heading));
      }
    }
  });
});
