import fc from "fast-check";
import { FIRST_DAY, LAST_DAY } from "../../../src/core/shared/days";
import type { FunctionSpec } from "../../../src/functions/define";
import { junkCell } from "./junk";

export type Parameter = FunctionSpec["parameters"][number];
export type Call = readonly unknown[];

const treatments = ["block", "block 21 d, pain relief 3 d", "no block", "bandage 48 h", "topical spray", "trimmed"];
const ownSlopes = ["own 0.4/0.8", "own 0.5", "own 80/160", "own 0,3/0,6 kg"];
const lesions = ["DD", "SU", "WL", "WLA", "SH", "TU", "IP", "dd m2", "Sole ulcer", "none"];

/** A value inside the limits of a scalar kind, or of one row of a column kind. */
function plausibleCell({ kind, name }: Parameter): fc.Arbitrary<unknown> {
  const { choices } = kind.limits;
  const called = `${kind.name} ${name}`;
  if (kind.name === "model") return fc.constantFrom(...choices!, ...ownSlopes);
  if (choices !== undefined) return fc.constantFrom(...choices);
  if (/date/.test(kind.name)) return plausibleDay(name);
  if (/number|count/.test(kind.name)) return plausibleNumber(kind.limits);
  if (/lesion|code/i.test(called)) return fc.constantFrom(...lesions);
  if (/foot|feet/i.test(called)) return fc.constantFrom("LF", "RF", "LH", "RH");
  if (/cow/i.test(called)) return fc.oneof(fc.integer({ min: 1, max: 9 }), fc.constantFrom("A1", "a1", "114", "Ö"));
  if (/treatment/i.test(called)) return fc.constantFrom(...treatments);
  return junkCell;
}

/** Days of two years, what comes first in the life of a cow or a list most often in the first, and the calendar's ends. */
function plausibleDay(name: string): fc.Arbitrary<number> {
  const isEarly = /^(from|entered|treated|started|previous|seenLame|calved|last)/i.test(name);
  const isLate = /^(to$|today|upTo|left|closed|done|due|next)/i.test(name);
  const [min, max] = isEarly ? [45_000, 45_330] : isLate ? [45_300, 45_640] : [45_000, 45_600];
  return fc.oneof(
    { weight: 20, arbitrary: fc.integer({ min, max }) },
    { weight: 3, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(FIRST_DAY, FIRST_DAY + 1, LAST_DAY - 1, LAST_DAY) },
  );
}

/** Numbers near the lower limit, where figures of a farm lie, over the whole range, and at both ends. */
function plausibleNumber({ min = -1000, max, whole = false }: Parameter["kind"]["limits"]): fc.Arbitrary<number> {
  const highest = max ?? 1e12;
  const upTo = (high: number): fc.Arbitrary<number> => {
    const integers = fc.integer({ min: Math.ceil(min), max: Math.max(Math.ceil(min), Math.floor(high)) });
    return whole ? integers : fc.oneof(integers, fc.double({ min, max: Math.max(min, high), noNaN: true }));
  };
  return fc.oneof(
    { weight: 4, arbitrary: upTo(Math.min(highest, min + 20)) },
    { weight: 4, arbitrary: upTo(Math.min(highest, min + 600)) },
    { weight: 1, arbitrary: upTo(Math.min(highest, 1e9)) },
    { weight: 1, arbitrary: fc.constantFrom(min, highest) },
  );
}

const rowCounts = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: 1, max: 8 }) },
  { weight: 3, arbitrary: fc.integer({ min: 9, max: 40 }) },
  { weight: 1, arbitrary: fc.constant(300) },
);

/** Mostly plausible arguments for a spec: inside their limits, or near one of its examples. */
export function plausibleCall(spec: FunctionSpec): fc.Arbitrary<Call> {
  return fc.oneof({ weight: 2, arbitrary: callInLimits(spec) }, { weight: 1, arbitrary: callLikeExample(spec) });
}

/** Each argument inside its limits, now and then blank or left out. Columns of a call have equal length. */
function callInLimits(spec: FunctionSpec): fc.Arbitrary<Call> {
  return rowCounts.chain((rows) =>
    fc.tuple(
      ...spec.parameters.map((parameter, index): fc.Arbitrary<unknown> => {
        if (parameter.kind.shape === "table") return exampleTable(spec, index);
        const cell = plausibleCell(parameter);
        if (parameter.kind.shape === "scalar")
          return parameter.optional ? fc.option(cell, { nil: null, freq: 2 }) : cell;
        const column = fc.array(fc.tuple(fc.option(cell, { nil: null, freq: 9 })), {
          minLength: rows,
          maxLength: rows,
        });
        return parameter.optional ? fc.option(column, { nil: null, freq: 3 }) : column;
      }),
    ),
  );
}

function exampleTable(spec: FunctionSpec, index: number): fc.Arbitrary<unknown> {
  const tables = spec.examples.map((example) => example.arguments[index]).filter((table) => Array.isArray(table));
  return fc.constantFrom<unknown>(null, ...tables);
}

/** The rows of an example in another order and number, and now and then another single value. */
function callLikeExample(spec: FunctionSpec): fc.Arbitrary<Call> {
  return fc
    .tuple(fc.constantFrom(...spec.examples), fc.array(fc.nat({ max: 99 }), { minLength: 1, maxLength: 12 }))
    .chain(([example, rows]) =>
      fc.tuple(
        ...spec.parameters.map((parameter, index): fc.Arbitrary<unknown> => {
          const argument = example.arguments[index] ?? null;
          if (parameter.kind.shape === "scalar")
            return fc.oneof(
              { weight: 5, arbitrary: fc.constant(argument) },
              { weight: 1, arbitrary: plausibleCell(parameter) },
            );
          if (parameter.kind.shape === "table" || !Array.isArray(argument)) return fc.constant(argument);
          const column = argument as readonly unknown[];
          return fc.constant(rows.map((row) => column[row % column.length]));
        }),
      ),
    );
}
