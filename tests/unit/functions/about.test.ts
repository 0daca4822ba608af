import { DomainError } from "../../../src/core/shared/domain-error";
import { aboutLimits } from "../../../src/functions/about/about-limits";
import { aboutSource } from "../../../src/functions/about/about-source";
import { lameState } from "../../../src/functions/claws/lame-state";
import { evaluate } from "../../../src/functions/evaluate";

const source = aboutSource([lameState]);
const limits = aboutLimits([lameState]);

test.each(["LAME.STATE", "herd.lame.state", '=HERD.LAME.STATE(A1,"0-3")', " Lame.State "])("%s is found", (name) => {
  expect(evaluate(source, [name]).value).toMatch(/Reader JD.* \| Sprecher DJ.* \| Flower FC.*\(from memory\)$/);
});

test("cautions are told with the limits", () => {
  expect(evaluate(limits, ["LAME.STATE"]).value).toMatch(/ \| Caution: A cow that bears no weight/);
});

test.each(["LAME", "SUM", 5])("%p is refused", (name) => {
  expect(() => evaluate(source, [name])).toThrow(DomainError);
});

test("no text of the catalogue can become a formula", () => {
  for (const spec of [source, limits]) expect(evaluate(spec, ["LAME.STATE"]).value).toMatch(/^[A-Z"]/);
});
