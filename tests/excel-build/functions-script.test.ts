import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { registry } from "../../src/functions/registry";
import { bareValues, expectResult } from "../derived/expect-result";
import { buildInto } from "./build-into";

/** What Excel offers to a script of functions; a stand-in written from the documentation of custom functions. */
class CustomFunctionsError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

type Associated = (...args: unknown[]) => unknown;

/** The least of a page that is needed to load a further script of ours. */
function pageLoading(run: (file: string) => void): object {
  interface Script {
    src: string;
    onload?: (event: { type: string }) => void;
  }
  return {
    getElementsByTagName: () => [],
    createElement: () => ({ setAttribute: () => undefined }),
    head: {
      appendChild(script: Script) {
        run(script.src);
        script.onload?.({ type: "load" });
      },
    },
  };
}

function load(folder: string): Map<string, Associated> {
  const associated = new Map<string, Associated>();
  const CustomFunctions = {
    associate: (id: string, action: Associated) => {
      if (associated.has(id)) throw new Error(`${id} is associated twice`);
      associated.set(id, action);
    },
    Error: CustomFunctionsError,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
  };
  // Nothing else is there while the script runs: one that touched the page or Office would fail.
  const context = createContext({ CustomFunctions });
  runInContext("globalThis.self = globalThis", context);
  const run = (file: string): unknown => runInContext(readFileSync(join(folder, file), "utf8"), context);
  run("functions.js");
  Object.assign(context, { document: pageLoading(run), setTimeout, clearTimeout });
  return associated;
}

const folder = mkdtempSync(join(tmpdir(), "evenfoot-"));
let functions: Map<string, Associated>;

beforeAll(() => {
  expect(buildInto(folder)).toMatchObject({ status: 0 });
  functions = load(folder);
}, 120_000);

afterAll(() => rmSync(folder, { recursive: true }));

/** Excel's note on the call, which it adds behind the arguments. */
const INVOCATION = { functionName: "X" };

/** A call as Excel makes it: null for what is left out, its own note at the end. */
function call(id: string, given: readonly unknown[]): unknown {
  const { parameters } = registry.find((spec) => spec.id === id)!;
  const args = parameters.map((_, index) => given[index] ?? null);
  return functions.get(id)!(...args, INVOCATION);
}

function errorOf(id: string, given: readonly unknown[]): CustomFunctionsError {
  try {
    call(id, given);
  } catch (error) {
    if (error instanceof CustomFunctionsError) return error;
    throw error;
  }
  throw new Error(`${id} gave no error`);
}

test("every function of the registry is associated, and nothing else", () => {
  expect([...functions.keys()].sort()).toEqual(registry.map(({ id }) => id).sort());
});

const examples = registry.flatMap((spec) =>
  spec.examples.map((example, index) => [spec.id, index, spec, example] as const),
);

test.each(examples)("%s gives the result of its example %d", async (id, _, spec, example) => {
  const value = await call(id, example.arguments);
  expectResult(bareValues(value), example);
  expect(Array.isArray(value)).toBe(spec.result.shape !== "scalar");
});

test.each(examples)(
  "%s example %d hands over its dates with their format, and nothing else",
  async (id, _, spec, example) => {
    const value = await call(id, example.arguments);
    const rows = Array.isArray(value) ? (value as unknown[][]) : [[value]];
    const types = spec.result.shape === "table" ? spec.result.columns.map(({ type }) => type) : [spec.result.type];
    for (const row of rows) {
      row.forEach((cell, column) => {
        const isDate = types[column] === "date" && typeof bareValues(cell) === "number";
        if (isDate)
          expect(cell).toEqual({
            type: "Double",
            basicValue: bareValues(cell),
            numberFormat: expect.stringMatching(/^yyyy-mm(-dd)?$/),
          });
        else expect(["number", "string", "boolean"]).toContain(typeof cell);
      });
    }
  },
);

describe("what Excel hands over", () => {
  test("a wrong value gives #VALUE! with its message", () => {
    expect(errorOf("CELL.SCORE", ["high"])).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^count must be a number .*; got "high"$/),
    });
  });

  test.each([[null], [""], [0], [{ type: "Empty", basicType: "Empty", basicValue: "" }]])(
    "a blank cell, %j, gives #N/A and says what to enter",
    (blank) => {
      expect(errorOf("CELL.SCORE", [blank])).toMatchObject({
        code: "#N/A",
        message: expect.stringMatching(/^count is blank: enter a number/),
      });
    },
  );

  test.each([[null], [""], [{ type: "Empty", basicType: "Empty", basicValue: "" }]])(
    "an optional argument that is blank, %j, has its default",
    (blank) => expect(call("CELL.SCORE", [200, blank])).toBeCloseTo(4, 12),
  );

  test.each([
    [{ type: "Error", basicType: "Error", basicValue: "#DIV/0!" }, "#DIV/0!"],
    [new CustomFunctionsError("#REF!"), "#REF!"],
    ["#N/A", "#N/A"],
  ])("an error in a cell, %j, is named", (error, name) => {
    expect(errorOf("CELL.SCORE", [error])).toMatchObject({
      code: "#VALUE!",
      message: `count holds the error ${name}: mend that cell first`,
    });
  });

  test("a number with a format is its number", () => {
    const formatted = { type: "Double", basicType: "Double", basicValue: 200, numberFormat: "0" };
    expect(call("CELL.SCORE", [formatted])).toBeCloseTo(4, 12);
    expect(call("CELL.SCORE", [[[formatted]]])).toBeCloseTo(4, 12);
  });
});

/** The functions of which the catalogue is built at first, and those it grows to; gzip. */
const BUDGETS = [
  { functions: 60, bytes: 40 * 1024 },
  { functions: Infinity, bytes: 60 * 1024 },
];

test("what Excel must load before the first function answers, Office.js aside, stays small", () => {
  const sizeOf = (file: string): number => gzipSync(readFileSync(join(folder, file)), { level: 9 }).length;
  // The page holds these two scripts and no others; the pane comes later.
  const bytes = sizeOf("functions.js") + sizeOf("taskpane.js");
  expect(bytes).toBeLessThan(BUDGETS.find(({ functions: most }) => registry.length <= most)!.bytes);
});

test("the script of the functions carries no worked examples and no citations", () => {
  const script = readFileSync(join(folder, "functions.js"), "utf8");
  const carried = registry.flatMap(({ examples }) => examples.filter(({ where }) => script.includes(where)));
  expect(carried).toEqual([]);
});
