import fc from "fast-check";
import type { FunctionSpec } from "../../src/functions/define";

type Parameter = FunctionSpec["parameters"][number];

/** Texts that cells hold in practice and that trip up readers. */
const texts = [
  "", " ", "-", "dry", "none", "DD", "SU", "WLD", "LH", "hard horn", "0-3", "1-5", "thousand", "cells/mL", "litres", "12", "12,5", "1e400",
  "2024-02-30", "31/12/2024", "=1+1", "+cmd", "@x", "#N/A", "#REF!", "NaN", "Infinity", "null", "TRUE", "ülcèr", "削蹄", "🐄", "\u0000", "\u00a0",
  "__proto__", "constructor", "toString", "hasOwnProperty", "x".repeat(300),
]; // prettier-ignore

const numbers = fc.oneof(
  fc.constantFrom(
    0,
    -0,
    1,
    -1,
    0.5,
    2,
    3,
    100,
    9999,
    45_000,
    45_366.75,
    200_000,
    1e15,
    -1e15,
    1e300,
    5e-324,
    Number.MAX_VALUE,
    NaN,
    Infinity,
  ),
  fc.integer({ min: -10, max: 60_000 }),
  fc.double({ noDefaultInfinity: false }),
);

/** Anything that a host may hand over for one cell. */
export const junkCell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: numbers },
  { weight: 4, arbitrary: fc.constantFrom(...texts) },
  { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 12 }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<unknown>(
      null,
      undefined,
      true,
      false,
      { type: "Error", basicValue: "#N/A" },
      { type: "Double", basicValue: 45_000 },
      {},
      [],
    ),
  },
);

/** A range of junk: ragged, empty, wide or tall. */
const junkRange = fc.array(fc.array(junkCell, { maxLength: 3 }), { maxLength: 6 });

export const junkArgument = fc.oneof(junkCell, junkRange);

/** A value inside the limits of a scalar kind, or of one row of a column kind. */
function plausibleCell({ kind, name }: Parameter): fc.Arbitrary<unknown> {
  const { choices, min, max, whole } = kind.limits;
  if (choices !== undefined) return fc.constantFrom(...choices);
  if (/date/.test(kind.name)) return fc.integer({ min: 45_000, max: 45_600 });
  if (/number|count/.test(kind.name)) {
    const low = min ?? -1000;
    const high = Math.min(max ?? low + 5000, low + 100_000);
    const inside = fc.integer({ min: Math.ceil(low), max: Math.max(Math.ceil(low), Math.floor(high)) });
    return whole ? inside : fc.oneof(inside, fc.double({ min: low, max: high, noNaN: true }));
  }
  if (/lesion|code/i.test(kind.name + name)) return fc.constantFrom("DD", "SU", "WL", "SH", "TU", "none", "IP");
  if (/foot|feet/i.test(kind.name + name)) return fc.constantFrom("LF", "RF", "LH", "RH");
  if (/cow/i.test(kind.name + name)) return fc.integer({ min: 1, max: 9 });
  return fc.constantFrom(...texts);
}

/** Mostly plausible arguments for a spec, each now and then blank or left out. Columns of a call have equal length. */
export function plausibleCall(spec: FunctionSpec): fc.Arbitrary<readonly unknown[]> {
  return fc.integer({ min: 1, max: 8 }).chain((rows) =>
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

/** A plausible call in which some arguments are swapped for junk. */
export function spoiledCall(spec: FunctionSpec): fc.Arbitrary<readonly unknown[]> {
  return plausibleCall(spec).chain((call) =>
    fc.tuple(
      ...call.map((argument) =>
        fc.oneof({ weight: 3, arbitrary: fc.constant(argument) }, { weight: 1, arbitrary: junkArgument }),
      ),
    ),
  );
}
