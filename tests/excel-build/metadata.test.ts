import { readFileSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod";
import { functionsMetadata, LONGEST_DESCRIPTION } from "../../src/functions/metadata";
import { registry } from "../../src/functions/registry";

/**
 * The published format. Sources: "Manually create JSON metadata for custom functions" and "Custom functions naming"
 * (Microsoft Learn); lengths of id and name from the checks of Microsoft's own generator (custom-functions-metadata,
 * parseTree.ts: validateId, validateName); 255 characters of description from Excel's registration of functions
 * (xlfRegister, from memory).
 */
const name = z.string().regex(/^[A-Z][A-Z0-9.]{2,127}$/);
const description = z.string().min(1).max(255);
const dimensionality = z.enum(["scalar", "matrix"]);
const metadata = z.strictObject({
  allowCustomDataForDataTypeAny: z.literal(true),
  allowErrorForDataTypeAny: z.literal(true),
  functions: z
    .array(
      z.strictObject({
        id: name,
        name,
        description,
        helpUrl: z.string().regex(/^\{\{address\}\}\/help\/functions\.html#[a-z0-9-]+$/),
        parameters: z.array(
          z.strictObject({
            name: z.string().regex(/^[a-z][A-Za-z0-9]*$/),
            description,
            type: z.literal("any"),
            dimensionality,
            optional: z.literal(true).optional(),
          }),
        ),
        result: z.strictObject({ type: z.literal("any"), dimensionality }),
      }),
    )
    .min(1),
});

const { functions } = metadata.parse(
  JSON.parse(readFileSync(join(__dirname, "../../manifest/functions.json"), "utf8")),
);

/** Cells of a sheet: A1 to XFD1048576, and R1C1 references. */
const LOOKS_LIKE_CELL = /^([A-Z]{1,3}\d{1,7}|R\d*C\d*)$/;

describe("functions.json", () => {
  test("lists every function of the registry", () => {
    expect(functions.map(({ id }) => id)).toEqual(registry.map(({ id }) => id));
  });

  test("gives no id, name or help anchor twice, nor two ids that a file cannot tell apart", () => {
    for (const key of ["id", "name", "helpUrl"] as const) {
      expect(new Set(functions.map((entry) => entry[key])).size).toBe(functions.length);
    }
    // In a file a dot of the name stands as an underscore.
    expect(new Set(functions.map(({ id }) => id.replaceAll(".", "_"))).size).toBe(functions.length);
  });

  test.each(functions.map((entry) => [entry.id, entry] as const))("%s is as Excel needs it", (id, entry) => {
    expect(entry.name).toBe(id);
    expect(id).not.toMatch(LOOKS_LIKE_CELL);
    expect(new Set(entry.parameters.map((parameter) => parameter.name.toLowerCase())).size).toBe(
      entry.parameters.length,
    );
    const optional = entry.parameters.map((parameter) => parameter.optional === true);
    expect(optional).toEqual([...optional].sort((a, b) => Number(a) - Number(b)));
  });

  test.each(registry.map((spec) => [spec.id, spec] as const))(
    "%s has its shapes and optional arguments",
    (id, spec) => {
      const entry = functions.find((candidate) => candidate.id === id)!;
      expect(entry.result.dimensionality).toBe(spec.result.shape === "scalar" ? "scalar" : "matrix");
      spec.parameters.forEach(({ kind, optional, name: parameterName }, index) => {
        expect(entry.parameters[index]).toMatchObject({
          name: parameterName,
          dimensionality: kind.shape === "scalar" ? "scalar" : "matrix",
        });
        expect(entry.parameters[index]!.optional === true).toBe(optional);
      });
    },
  );

  test.each(registry.map((spec) => [spec.id, spec] as const))("%s is described in full", (id, spec) => {
    const entry = functions.find((candidate) => candidate.id === id)!;
    expect(entry.description).toBe(spec.summary);
    spec.parameters.forEach((parameter, index) => {
      expect(entry.parameters[index]!.description).toContain(parameter.description);
    });
  });
});

describe("a description that does not fit", () => {
  const [spec] = registry;
  const described = (summary: string, must: string): string[] => {
    const [first] = spec!.parameters;
    const parameters = [{ ...first!, description: "What it is", kind: { ...first!.kind, must } }];
    const [entry] = functionsMetadata([{ ...spec!, summary, parameters }]).functions;
    return [entry!.description, entry!.parameters[0]!.description];
  };

  test("is cut at a word", () => {
    const [summary] = described("word ".repeat(100), "a number");
    expect(summary!.length).toBeLessThanOrEqual(LONGEST_DESCRIPTION);
    expect(summary).toMatch(/word…$/);
  });

  test("loses its limits before its words", () => {
    expect(described("x", "m".repeat(300))[1]).toBe("What it is");
    expect(described("x", "a number")[1]).toBe("What it is: a number");
  });
});
