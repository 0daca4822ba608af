import { runInNewContext } from "node:vm";
import { day } from "../../src/core/shared/days";
import type { FunctionSpec } from "../../src/functions/define";
import { explain } from "../../src/functions/evaluate";
import { registry } from "../../src/functions/registry";

type Step = ReturnType<typeof explain>["steps"][number];

/** Lines that tell a rule or a limit in words and have no value of their own. */
const IN_WORDS = /^(Rule|Limit)$/;
/** A working shows its figures rounded: so much of the value may come from that. */
const ROUNDING = 0.005;
const DAYS_ON = /^(\d{4}-\d\d-\d\d) \+ (\d+) days?$/;
/** Numbers and what is done with them, once units and words are taken out. */
const NUMBERS_ALONE = /^\(*\d[\d.]*\)*(?: ?(?:\*\*|[-+*/]) ?\(*\d[\d.]*\)*)*$/;

/** The value of "12 cows / 85 × 100" or "2^(4 - 3)"; undefined where a working is not made of numbers alone. */
function workedOut(working: string): number | undefined {
  const sum = working
    .replace(/(\d),(\d{3})/g, "$1$2")
    .replace(/, rounded (up|down)$/, "")
    .replace(/log2\(([\d.]+) \/ ([\d.]+)\)/g, (_, a: string, b: string) => String(Math.log2(Number(a) / Number(b))))
    .replace(/([\d.]+) ?%/g, (_, percent: string) => String(Number(percent) / 100))
    .replace(/([\d.]+)²/g, "($1*$1)")
    .replace(/\^/g, "**")
    .replace(/×/g, "*")
    .replace(/−/g, "-")
    .replace(/ [a-z]+( [a-z]+)*(?= |$|\))/gi, "");
  if (!/ [-+−×/] |\^|log2/.test(working) || !NUMBERS_ALONE.test(sum)) return undefined;
  const exact = runInNewContext(sum) as number;
  if (working.endsWith("rounded up")) return Math.ceil(exact);
  return working.endsWith("rounded down") ? Math.floor(exact) : exact;
}

/** The number with which a value begins, and half of its last place: "25 % (4.6 % to 69.9 %)" is 0.25. */
function shownNumber(value: string): { readonly number: number; readonly halfPlace: number } | undefined {
  const parts = /^(-?\d+(?:\.(\d+))?)( %)?/.exec(value);
  if (parts === null) return undefined;
  const unit = parts[3] === undefined ? 1 : 0.01;
  return { number: Number(parts[1]) * unit, halfPlace: 0.5 * 10 ** -(parts[2]?.length ?? 0) * unit };
}

/** True where the working gives the value, false where it gives another, undefined where it is told in words. */
function givesItsValue({ working, value }: Step): boolean | undefined {
  const date = DAYS_ON.exec(working);
  if (date !== null) return day(date[1]!) + Number(date[2]) === day(value);
  const [sum, shown] = [workedOut(working), shownNumber(value)];
  if (sum === undefined || shown === undefined) return undefined;
  return Math.abs(sum - shown.number) <= shown.halfPlace + ROUNDING * Math.abs(sum);
}

const stepsOf = (spec: FunctionSpec): Step[] => spec.examples.flatMap((example) => [...explain(spec, example.arguments).steps]); // oxfmt-ignore

describe.each(registry.map((spec) => [spec.id, spec] as const))("HERD.%s, its working", (_, spec) => {
  test("has in every line how, and what it gives", () => {
    const isBlank = ({ label, working, value }: Step): boolean =>
      working.trim() === "" || (value.trim() === "" && !IN_WORDS.test(label));
    expect(stepsOf(spec).filter(isBlank)).toEqual([]);
  });

  test("worked out by itself gives the value beside it", () => {
    expect(stepsOf(spec).filter((step) => givesItsValue(step) === false)).toEqual([]);
  });
});

test.each(registry.map((spec) => [spec.id, spec] as const))(
  "HERD.%s: limits shown stand in order, shares among them up to 100 %",
  (_, spec) => {
    const limits = stepsOf(spec).map(({ value }) => /([\d.]+)(?: %)? to ([\d.]+)( %)?/.exec(value)).filter((found) => found !== null); // oxfmt-ignore
    const isWrong = ([, low, high, percent]: RegExpExecArray): boolean =>
      Number(low) > Number(high) || (percent !== undefined && Number(high) > 100);
    expect(limits.filter(isWrong).map(([shown]) => shown)).toEqual([]);
  },
);

test("most functions show a working that can be worked out", () => {
  const shown = registry.filter((spec) => stepsOf(spec).some((step) => givesItsValue(step) === true));
  expect(shown.length).toBeGreaterThan(registry.length / 2);
});
