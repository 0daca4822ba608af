import type { FunctionSpec } from "../../src/functions/define";
import { registry } from "../../src/functions/registry";
import { expectSound, outcome, refusal, replaced, replacedRow } from "./outcome";

type Parameter = FunctionSpec["parameters"][number];

/** Errors as the hosts hand them over. */
const errorValues: readonly (readonly [string, unknown])[] = [
  ["error text", "#N/A"],
  ["error object", { type: "Error", basicValue: "#DIV/0!", errorType: "Div0" }],
];
const blanks: readonly (readonly [string, unknown])[] = [
  ["null", null],
  ["empty text", ""],
  ["spaces", "  "],
  ["undefined", undefined],
];

const isNumeric = ({ kind }: Parameter): boolean => /number|date|count/.test(kind.name);
const rowsOf = (argument: unknown): number => (Array.isArray(argument) ? argument.length : 0);

/** The arguments of a working call. */
function base(spec: FunctionSpec): readonly unknown[] {
  return spec.examples[0]!.arguments;
}

/** Parameters of one shape with their places; the call is the first example that gives the argument. */
function places(spec: FunctionSpec, shape: string): (readonly [name: string, index: number, parameter: Parameter])[] {
  return spec.parameters
    .map((parameter, index) => [parameter.name, index, parameter] as const)
    .filter(([, , parameter]) => parameter.kind.shape === shape);
}

const specs = registry.map((spec) => [spec.id, spec] as const);

describe.each(specs)("HERD.%s, one cell an argument", (_, spec) => {
  const cells = places(spec, "scalar");
  if (cells.length === 0) {
    test("has no such argument", () => expect(spec.parameters.every(({ kind }) => kind.shape !== "scalar")).toBe(true));
    return;
  }

  test.each(cells)("%s: a blank is never a value", (name, index, parameter) => {
    for (const [, blank] of [...blanks, ...(parameter.kind.zeroIsBlank ? [["zero", 0] as const] : [])]) {
      const raw = replaced(base(spec), index, blank);
      if (parameter.optional) {
        expect(outcome(spec, raw)).toEqual(outcome(spec, replaced(base(spec), index, null)));
      } else {
        const { kind, message } = refusal(spec, raw);
        expect([kind, message]).toEqual(["unavailable", expect.stringContaining(name)]);
      }
    }
  });

  test.each(cells)("%s: an error cell is named", (name, index) => {
    for (const [, error] of errorValues) {
      expect(refusal(spec, replaced(base(spec), index, error)).message).toContain(name);
    }
  });

  test.each(cells)("%s: TRUE is refused by name", (name, index) => {
    const { message } = refusal(spec, replaced(base(spec), index, true));
    expect(message).toContain(name);
    expect(message).toContain("TRUE");
  });

  test.each(cells)("%s: text where a number or a date belongs is refused by name", (name, index, parameter) => {
    if (!isNumeric(parameter)) return;
    for (const text of ["12", "12,5", "2024-02-20", "20/02/2024", "abc", "2b"]) {
      const { message } = refusal(spec, replaced(base(spec), index, text));
      expect(message).toContain(name);
      expect(message).toContain(text);
    }
  });

  test.each(cells)("%s: a number beyond its limits is refused with limit and value", (name, index, { kind }) => {
    if (!isNumeric({ kind } as Parameter)) return;
    const { min, max } = kind.limits;
    for (const beyond of [
      ...(min === undefined ? [] : [min - 1.5]),
      ...(max === undefined ? [] : [max + 1.5, 1e300]),
    ]) {
      if (beyond === 0) continue;
      const { kind: errorKind, message } = refusal(spec, replaced(base(spec), index, beyond));
      expect(errorKind).toBe("invalid");
      expect(message).toContain(name);
      expect(message).toContain(String(beyond));
    }
  });

  test.each(cells)("%s: a word that is none of the choices is refused with the choices", (name, index, { kind }) => {
    if (kind.limits.choices === undefined) return;
    const { message } = refusal(spec, replaced(base(spec), index, "no such word"));
    expect(message).toContain(name);
    expect(message).toContain("no such word");
    expect(message).toContain(kind.limits.choices[0]);
  });

  test.each(cells)("%s: a range is refused; a one-cell range is that cell", (name, index) => {
    const value = base(spec)[index];
    expect(refusal(spec, replaced(base(spec), index, [[value ?? 1], [value ?? 1]])).message).toContain(name);
    if (value !== undefined) {
      expect(outcome(spec, replaced(base(spec), index, [[value]]))).toEqual(outcome(spec, base(spec)));
    }
  });
});

describe.each(specs)("HERD.%s, columns", (_, spec) => {
  const columns = places(spec, "column").filter(([, index]) => rowsOf(base(spec)[index]) > 0);
  if (columns.length === 0) {
    test("takes none, or none in its first example", () => {
      expect(places(spec, "column").every(([, , { optional }]) => optional)).toBe(true);
    });
    return;
  }

  test.each(columns)("%s: an error cell is named with its row", (name, index) => {
    const column = base(spec)[index];
    const last = rowsOf(column) - 1;
    for (const [, error] of errorValues) {
      const { message } = refusal(spec, replaced(base(spec), index, replacedRow(column, last, error)));
      expect(message).toContain(`${name} row ${last + 1}`);
    }
  });

  test.each(columns)("%s: TRUE is refused with its row", (name, index) => {
    const column = base(spec)[index];
    const { message } = refusal(spec, replaced(base(spec), index, replacedRow(column, 0, true)));
    expect(message).toContain(`${name} row 1`);
  });

  test.each(columns)("%s: number-like text is refused with its row", (name, index, parameter) => {
    if (!isNumeric(parameter)) return;
    const column = base(spec)[index];
    for (const text of ["200", "1,5", "2024-02-20"]) {
      const { message } = refusal(spec, replaced(base(spec), index, replacedRow(column, 0, text)));
      expect(message).toContain(`${name} row 1`);
      expect(message).toContain(text);
    }
  });

  test.each(columns)("%s: a number beyond its limits is refused with its row", (name, index, parameter) => {
    if (!isNumeric(parameter)) return;
    const { min, max } = parameter.kind.limits;
    for (const beyond of [...(min === undefined ? [] : [min - 1.5]), ...(max === undefined ? [] : [max + 1.5])]) {
      if (beyond === 0) continue;
      const raw = replaced(base(spec), index, replacedRow(base(spec)[index], 0, beyond));
      expect(refusal(spec, raw).message).toContain(`${name} row 1`);
    }
  });

  test.each(columns)("%s: a column of another length is refused", (_name, index) => {
    if (columns.length < 2) return;
    const column = base(spec)[index] as unknown[];
    const { message } = refusal(spec, replaced(base(spec), index, [...column, ...column]));
    expect(message).toMatch(/rows/);
    expect(columns.some(([other]) => message.includes(other))).toBe(true);
    expect(message).toContain(String(column.length));
  });

  test.each(columns)("%s: a heading over numbers is refused, never counted", (name, index, parameter) => {
    const column = base(spec)[index] as unknown[];
    if (!isNumeric(parameter) || !column.some((row) => typeof (row as unknown[])[0] === "number")) return;
    const raw = base(spec).map((argument, place) => {
      const shape = spec.parameters[place]!.kind.shape;
      if (shape !== "column" || !Array.isArray(argument)) return argument;
      return [[place === index ? "Heading" : null], ...(argument as unknown[])];
    });
    expect(refusal(spec, raw).message).toMatch(new RegExp(`${name} row 1.*heading`));
  });

  test.each(columns)("%s: blank rows at the end change nothing", (_name, index) => {
    if (spec.result.shape === "column" || index !== columns[0]![1]) return;
    const raw = base(spec).map((argument, place) =>
      spec.parameters[place]!.kind.shape === "column" && Array.isArray(argument)
        ? [...(argument as unknown[]), [null], [""], [null]]
        : argument,
    );
    expect(outcome(spec, raw)).toEqual(outcome(spec, base(spec)));
  });

  test.each(columns)("%s: one row, no row and all blank never give a number out of nothing", (name, index) => {
    const oneRow = base(spec).map((argument, place) =>
      spec.parameters[place]!.kind.shape === "column" && Array.isArray(argument) ? [argument[0] as unknown] : argument,
    );
    const end = outcome(spec, oneRow);
    if ("value" in end) expectSound(end.value, spec.result);
    for (const empty of [[[]], [[null]], [[""], [null]]]) {
      const raw = base(spec).map((argument, place) =>
        spec.parameters[place]!.kind.shape === "column" ? empty : argument,
      );
      const blankEnd = outcome(spec, raw);
      if (!("value" in blankEnd)) expect(blankEnd.message).not.toBe("");
      else if (spec.result.shape === "scalar")
        throw new Error(`${name}, argument ${index + 1}: ${JSON.stringify(blankEnd)}`);
      else expectSound(blankEnd.value, spec.result);
    }
  });

  test.each(columns)("%s: a block of two columns is refused", (name, index) => {
    const column = base(spec)[index] as unknown[][];
    const two = [...column, ...column].map((row) => [row[0], row[0]]);
    expect(refusal(spec, replaced(base(spec), index, two)).message).toContain(name);
  });
});

describe.each(specs)("HERD.%s, settings tables", (_, spec) => {
  const tables = places(spec, "table");
  if (tables.length === 0) {
    test("takes none", () => expect(tables).toEqual([]));
    return;
  }
  test.each(tables)("%s: without its headings, or only headings, it is refused by name", (name, index) => {
    for (const wrong of [
      [
        ["a", "b"],
        [1, 2],
      ],
      [["a", "b"]],
      "text",
      5,
      true,
    ]) {
      const { message } = refusal(spec, replaced(base(spec), index, wrong));
      expect(message).toContain(name);
    }
  });
});

test.each(specs)("HERD.%s: one argument too many is refused", (_, spec) => {
  const raw = [...replaced(base(spec), spec.parameters.length - 1, base(spec)[spec.parameters.length - 1]), 1];
  expect(refusal(spec, raw).message).toContain("at most");
});
