import { garwood1936 } from "../../core/reference/garwood-1936";
import { wilson1927 } from "../../core/reference/wilson-1927";
import { invalid } from "../../core/shared/domain-error";
import type { Interval } from "../../core/shared/statistics/interval";
import { poissonInterval } from "../../core/shared/statistics/poisson-interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import { defineFunction, type Example, type FunctionSpec, required } from "../define";
import { figure } from "../figure";
import { number } from "../scalars";
import { GROUP, levelParameter } from "./kinds-of-findings";

type Side = keyof Interval;
const words = { low: "Lower", high: "Upper" } as const;

/** More than any herd or register holds; the limits are computed in an instant up to here. */
const MOST = 10_000_000;
const reason = "more than any herd has";
const cases = number({ min: 0, max: MOST, whole: true, reason });

/** The lower or upper limit of a share. */
export function shareLimit(side: Side, examples: readonly Example[]): FunctionSpec {
  return defineFunction({
    id: `SHARE.${side.toUpperCase()}`,
    group: GROUP,
    summary: `${words[side]} confidence limit of a share, such as cows affected of cows examined.`,
    parameters: {
      cases: required(cases, "Number that has it"),
      of: required(number({ min: 1, max: MOST, whole: true, reason, zeroIsBlank: true }), "Number looked at"),
      level: levelParameter,
    },
    result: { shape: "scalar", type: "number", format: "0.0%" },
    sources: [wilson1927],
    limits: ["Takes the animals as independent; those of one herd are not, so the true limits are somewhat wider."],
    cautions: [],
    examples,
    compute({ cases, of, level }) {
      if (cases > of) throw invalid("cases", `at most ${of} (of)`, cases);
      return wilsonInterval(cases, of, level)[side];
    },
    steps: ({ cases, of, level }, limit) => [
      { label: "Share", working: `${cases} / ${of}`, value: `${figure((100 * cases) / of, 1)} %` },
      { label: `${words[side]} limit`, working: `Wilson, level ${level}`, value: `${figure(100 * Number(limit))} %` },
    ],
  });
}

/** The lower or upper limit of a rate. */
export function rateLimit(side: Side, examples: readonly Example[]): FunctionSpec {
  return defineFunction({
    id: `RATE.${side.toUpperCase()}`,
    group: GROUP,
    summary: `${words[side]} confidence limit of a rate, such as new cases over cow-years.`,
    parameters: {
      cases: required(cases, "Number of new cases"),
      atRisk: required(
        number({ min: 0, max: 1e9, exclusiveMin: true, reason: "time at risk", zeroIsBlank: true }),
        "Time at risk, in any unit: cow-years, cow-months, hundreds of cow-years",
      ),
      level: levelParameter,
    },
    result: { shape: "scalar", type: "number", unit: "cases per unit of atRisk", format: "0.000" },
    sources: [garwood1936],
    limits: ["Takes the cases as independent; an outbreak is not, so the true limits are then wider."],
    cautions: [],
    examples,
    compute: ({ cases, atRisk, level }) => poissonInterval(cases, level)[side] / atRisk,
    steps: ({ cases, atRisk, level }, limit) => [
      { label: "Rate", working: `${cases} / ${atRisk}`, value: figure(cases / atRisk, 4) },
      {
        label: `${words[side]} limit of the count`,
        working: `exact Poisson, level ${level}`,
        value: figure(poissonInterval(cases, level)[side], 3),
      },
      { label: `${words[side]} limit`, working: `divided by ${atRisk}`, value: figure(Number(limit), 4) },
    ],
  });
}
