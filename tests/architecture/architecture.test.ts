import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import ts from "typescript";
import { ADAPTERS, type Layer, layers, OFFICE_FOLDERS, PURE_FOLDERS } from "./layers";

const SRC = join(__dirname, "../../src");

const files = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .map((path) => path.replace(/\\/g, "/"))
  .filter((path) => /\.tsx?$/.test(path));

/** The innermost layer that a path of src lies in. */
function layerOf(path: string): Layer | undefined {
  return layers
    .filter(({ folder }) => path.startsWith(`${folder}/`))
    .sort((a, b) => b.folder.length - a.folder.length)[0];
}

/** What a file imports: a path of src, or a package name. */
function importsOf(path: string): { readonly inside: string[]; readonly packages: string[] } {
  const { importedFiles } = ts.preProcessFile(readFileSync(join(SRC, path), "utf8"));
  const names = importedFiles.map(({ fileName }) => fileName);
  const local = (name: string): string => relative(SRC, join(SRC, dirname(path), name)).replace(/\\/g, "/");
  return {
    inside: names.filter((name) => name.startsWith(".")).map(local),
    packages: names.filter((name) => !name.startsWith(".") && !name.endsWith(".css")),
  };
}

function mayImport(from: Layer, target: string): boolean {
  const to = layerOf(target);
  if (to === undefined || to === from || from.mayImport.includes("*")) return true;
  return from.mayImport.some((allowed) => {
    if (to.folder === allowed) return true;
    // "core" stands for all of core; "workbook" for its own files, never for an adapter.
    return allowed === "core" && to.folder.startsWith("core/");
  });
}

describe("the arrows of the house", () => {
  test.each(files)("%s imports only what its layer may know", (path) => {
    const layer = layerOf(path);
    if (layer === undefined) throw new Error(`src/${path} lies in no layer: add its folder to layers.ts`);
    const { inside, packages } = importsOf(path);
    expect(inside.filter((target) => !mayImport(layer, target))).toEqual([]);
    const allowed = (name: string): boolean =>
      layer.packages.some((known) => (typeof known === "string" ? known === name : known.test(name)));
    expect(packages.filter((name) => !allowed(name))).toEqual([]);
  });

  test.each([
    ["core/claws/x.ts", "core/cells/y", false],
    ["core/claws/x.ts", "core/shared/y", true],
    ["core/shared/x.ts", "core/reference/y", false],
    ["functions/cells/x.ts", "core/cells/y", true],
    ["functions/cells/x.ts", "workbook/port", false],
    ["taskpane/app.tsx", "workbook/port", true],
    ["taskpane/app.tsx", "workbook/office/adapter", false],
    ["taskpane/app.tsx", "engine/headless", false],
    ["xlsx/read.ts", "functions/registry", false],
    ["entries/x.ts", "trial/y", true],
  ])("the table answers for itself: %s -> %s is %s", (from, to, expected) => {
    expect(mayImport(layerOf(from)!, to)).toBe(expected);
  });

  test("adapters of the workbook never import each other", () => {
    for (const path of files) {
      const own = ADAPTERS.find((adapter) => path.startsWith(`${adapter}/`));
      if (own === undefined) continue;
      const others = importsOf(path).inside.filter((target) =>
        ADAPTERS.some((adapter) => adapter !== own && target.startsWith(`${adapter}/`)),
      );
      expect([path, others]).toEqual([path, []]);
    }
  });

  test("no file imports itself through others", () => {
    const graph = new Map(files.map((path) => [path, importsOf(path).inside.map(resolveFile)]));
    const state = new Map<string, "open" | "done">();
    const visit = (path: string, trail: readonly string[]): void => {
      if (state.get(path) === "done") return;
      if (state.get(path) === "open") throw new Error(`a circle: ${[...trail, path].join(" -> ")}`);
      state.set(path, "open");
      for (const target of graph.get(path) ?? []) if (target !== undefined) visit(target, [...trail, path]);
      state.set(path, "done");
    };
    for (const path of files) visit(path, []);
  });
});

function resolveFile(target: string): string | undefined {
  return [`${target}.ts`, `${target}.tsx`, `${target}/index.ts`].find((candidate) => files.includes(candidate));
}

/** Identifiers of a file that stand for globals, leaving out members such as `x.Date` and keys. */
function globalNames(path: string): Set<string> {
  const source = ts.createSourceFile(path, readFileSync(join(SRC, path), "utf8"), ts.ScriptTarget.Latest, true);
  const names = new Set<string>();
  const walk = (node: ts.Node): void => {
    if (ts.isTypeNode(node)) return;
    if (ts.isIdentifier(node)) {
      const { parent } = node;
      const isMember = ts.isPropertyAccessExpression(parent) && parent.name === node;
      const isKey = (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node;
      if (!isMember && !isKey) names.add(node.text);
    }
    ts.forEachChild(node, walk);
  };
  walk(source);
  return names;
}

describe("what a layer may not know", () => {
  const pure = files.filter((path) => PURE_FOLDERS.some((folder) => path.startsWith(`${folder}/`)));
  const impure = [
    "Date",
    "setTimeout",
    "setInterval",
    "fetch",
    "process",
    "window",
    "document",
    "localStorage",
    "performance",
  ];
  test.each(pure)("%s has no clock, no network, no host", (path) => {
    const used = globalNames(path);
    expect(impure.filter((name) => used.has(name))).toEqual([]);
    expect(readFileSync(join(SRC, path), "utf8")).not.toMatch(/Math\.random/);
  });

  const outside = files.filter((path) => !OFFICE_FOLDERS.some((folder) => path.startsWith(`${folder}/`)));
  test.each(outside)("%s does not name Excel's objects", (path) => {
    const used = globalNames(path);
    expect(["Office", "Excel", "CustomFunctions", "OfficeExtension"].filter((name) => used.has(name))).toEqual([]);
  });

  /** A longer file most often holds a second idea. */
  const LONGEST_FILE = 300;
  test.each(files.filter((path) => !/registry\.ts$/.test(path)))("%s is short", (path) => {
    expect(readFileSync(join(SRC, path), "utf8").split("\n").length).toBeLessThanOrEqual(LONGEST_FILE);
  });
});
