import fc from "fast-check";
import type { FunctionSpec } from "../../../src/functions/define";
import { junkArgument, junkCell } from "./junk";
import { type Call, plausibleCall } from "./plausible";

type Range = readonly (readonly unknown[])[];

/** A plausible call with one or two arguments spoiled: swapped for junk, or a range with junk in some of its cells. */
export function spoiledCall(spec: FunctionSpec): fc.Arbitrary<Call> {
  const places = fc.uniqueArray(fc.nat({ max: spec.parameters.length - 1 }), { minLength: 1, maxLength: 2 });
  return fc.tuple(plausibleCall(spec), places).chain(([call, spoiled]) =>
    fc.tuple(
      ...call.map((argument, place) => {
        if (!spoiled.includes(place)) return fc.constant(argument);
        return isRange(argument)
          ? fc.oneof({ weight: 1, arbitrary: junkArgument }, { weight: 4, arbitrary: spoiledRange(argument) })
          : junkArgument;
      }),
    ),
  );
}

function isRange(argument: unknown): argument is Range {
  return Array.isArray(argument) && argument.length > 0 && argument.every((row) => Array.isArray(row));
}

function spoiledRange(range: Range): fc.Arbitrary<unknown> {
  const row = fc.nat({ max: range.length - 1 });
  const width = range[0]!.length;
  return fc.oneof(
    { weight: 5, arbitrary: withJunkCells(range) },
    // A heading, a row twice, a row too few, the columns in another order, the range laid across, a row too wide.
    { weight: 1, arbitrary: junkCell.map((cell) => [[cell, ...range[0]!.slice(1)], ...range.slice(1)]) },
    { weight: 1, arbitrary: row.map((at) => [...range, range[at]!]) },
    { weight: 1, arbitrary: row.map((at) => range.filter((_, index) => index !== at)) },
    { weight: 1, arbitrary: fc.constant(range.map((cells) => [...cells].reverse())) },
    { weight: 1, arbitrary: fc.constant(Array.from({ length: width }, (_, at) => range.map((cells) => cells[at]))) },
    {
      weight: 1,
      arbitrary: row.map((at) => range.map((cells, index) => (index === at ? [...cells, ...cells] : cells))),
    },
  );
}

function withJunkCells(range: Range): fc.Arbitrary<unknown> {
  const place = fc.tuple(
    fc.nat({ max: range.length - 1 }),
    fc.nat({ max: Math.max(0, range[0]!.length - 1) }),
    junkCell,
  );
  return fc.array(place, { minLength: 1, maxLength: 3 }).map((places) => {
    const rows = range.map((cells) => [...cells]);
    for (const [row, column, cell] of places) rows[row]![column] = cell;
    return rows;
  });
}
