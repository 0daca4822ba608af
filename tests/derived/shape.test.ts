import { readdirSync } from "node:fs";
import { join } from "node:path";
import { HELPER_FILES } from "../../src/functions/registry-source";
import { registry } from "../../src/functions/registry";

const AREAS = join(__dirname, "../../src/functions");

describe("the catalogue as a whole", () => {
  test("holds every spec file, under the name that its file name says", () => {
    const fileIds = readdirSync(AREAS, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .flatMap(({ name }) => readdirSync(join(AREAS, name)))
      .map((file) => file.replace(/\.ts$/, ""))
      .filter((name) => !HELPER_FILES.has(name))
      .map((name) => name.replace("-", ".").replace(/-/g, "").toUpperCase());
    expect(registry.map(({ id }) => id).sort()).toEqual(fileIds.sort());
  });

  test("no two names become the same once dots are written as underscores, as a file stores them", () => {
    const stored = registry.map(({ id }) => id.replace(/\./g, "_"));
    expect(new Set(stored).size).toBe(registry.length);
  });
});

describe.each(registry.map((spec) => [spec.id, spec] as const))("HERD.%s", (id, spec) => {
  test("has a name that Excel takes and that is no cell address", () => {
    expect(id).toMatch(/^[A-Z]{2,}(\.[A-Z]{2,})+$/);
    expect(id).not.toMatch(/^[A-Z]{1,3}\d+$/);
  });

  test("says what it does, in one sentence that fits the function list", () => {
    expect(spec.summary).toMatch(/^[A-Z].*\.$/);
    expect(spec.summary.length).toBeLessThanOrEqual(200);
    expect(spec.group).not.toBe("");
  });

  test("describes every argument, required ones first", () => {
    const names = spec.parameters.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    const firstOptional = spec.parameters.findIndex(({ optional }) => optional);
    for (const [index, parameter] of spec.parameters.entries()) {
      expect(parameter.name).toMatch(/^[a-z][A-Za-z]*$/);
      expect(parameter.description).not.toBe("");
      if (firstOptional >= 0 && index > firstOptional) expect(parameter.optional).toBe(true);
      if (parameter.optional) expect(parameter.whenLeftOut ?? "").not.toBe("");
    }
  });

  test("gives a reason for every limit", () => {
    for (const { name, kind } of spec.parameters) {
      const { min, max, reason } = kind.limits;
      if (min !== undefined || max !== undefined) expect([name, reason]).toEqual([name, expect.stringMatching(/\w/)]);
    }
  });

  test("names its sources, what it cannot tell, and two worked examples with their origin", () => {
    expect(spec.sources.length).toBeGreaterThan(0);
    for (const source of spec.sources) expect(source.citation.length).toBeGreaterThan(source.name.length);
    expect(spec.limits.length).toBeGreaterThan(0);
    expect(spec.examples.length).toBeGreaterThanOrEqual(2);
    for (const example of spec.examples) expect(example.where).not.toBe("");
  });

  test("states the unit or format of what it gives", () => {
    const columns = spec.result.shape === "table" ? spec.result.columns : [spec.result];
    for (const column of columns) {
      if (column.type === "date") expect(column.format).toBe("yyyy-mm-dd");
      if (column.type === "number") expect(column.format ?? column.unit ?? "").not.toBe("");
    }
  });
});
