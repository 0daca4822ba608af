import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildOptions } from "../../src/entries/excel-build/options";
import { runRecalc } from "../../src/entries/recalc/run";
import { formulaText } from "../../src/functions/formula-text";
import { registry } from "../../src/functions/registry";

const ROOT = join(__dirname, "../..");
const documents = ["README.md", "DEVELOPERS.md"].map((name) => [name, readFileSync(join(ROOT, name), "utf8")] as const);
const [[, readme]] = documents as unknown as readonly [readonly [string, string]];
const { scripts } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as {
  readonly scripts: Readonly<Record<string, string>>;
};

/** Lines of the blocks of code. */
const codeOf = (text: string): string[] =>
  [...text.matchAll(/^```\n([\s\S]*?)^```/gm)].flatMap(([, block]) => block!.split("\n")).filter((line) => line !== "");

describe.each(documents)("%s", (_, text) => {
  test("names only scripts that package.json has", () => {
    const named = [...text.matchAll(/\bnpm (?:run )?([a-z]+)\b/g)].map(([, script]) => script!);
    expect(named.length).toBeGreaterThan(3);
    for (const script of named) expect(Object.keys(scripts)).toContain(script);
  });

  test("names only files that are there", () => {
    const linked = [...text.matchAll(/\]\(([^)#:]+)\)/g)].map(([, path]) => path!);
    const quoted = [...text.matchAll(/`((?:src|tests|manifest|sample-workbooks)\/[\w./-]+)`/g)].map(
      ([, path]) => path!,
    );
    expect([...linked, ...quoted].length).toBeGreaterThan(5);
    const isThere = (path: string): boolean => ["", ".ts", ".tsx"].some((end) => existsSync(join(ROOT, path + end)));
    expect([...linked, ...quoted].filter((path) => !isThere(path))).toEqual([]);
  });

  test("names only functions that there are", () => {
    const ids = registry.map(({ id }) => id);
    const named = [...text.matchAll(/\bHERD\.([A-Z]+(?:\.[A-Z]+)+)\b/g)].map(([, id]) => id!);
    expect(named.filter((id) => !ids.includes(id))).toEqual([]);
  });
});

test("the formulas to paste are worked examples", () => {
  const examples = registry.flatMap((spec) => spec.examples.map((example) => formulaText(spec, example)));
  const shown = codeOf(readme).filter((line) => line.startsWith("="));
  expect(shown).toHaveLength(3);
  for (const formula of shown) expect(examples).toContain(formula);
});

test("every command shown in the README is one of those that the tests run", () => {
  const plain = codeOf(readme).filter((line) => line.startsWith("npm ") && !line.includes(" -- "));
  // The browser tests start the trial page with the command itself; the other is what runs them.
  expect(plain).toEqual(["npm start", "npm test"]);
});

const commands = codeOf(readme).filter((line) => line.includes(" -- "));
const switchesOf = (command: string): string[] => command.split(" -- ")[1]!.split(" ");

test("the build takes the switches shown", () => {
  const builds = commands.filter((command) => command.startsWith("npm run build"));
  expect(builds).toHaveLength(1);
  expect(buildOptions(switchesOf(builds[0]!)).address).toBe("https://your.server/evenfoot");
});

describe("recalc as shown", () => {
  const folder = mkdtempSync(join(tmpdir(), "evenfoot-"));
  const recalcs = commands.filter((command) => command.startsWith("npm run recalc"));
  beforeAll(() => {
    mkdirSync(join(folder, "sample-workbooks"));
    for (const [path] of readme.matchAll(/sample-workbooks\/[\w-]+\.xlsx/g))
      copyFileSync(join(ROOT, path), join(folder, path));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  async function run(command: string): Promise<{ readonly code: number; readonly said: string }> {
    const said: string[] = [];
    const say = (line: string): void => void said.push(line);
    const code = await runRecalc(switchesOf(command), folder, { out: say, error: say });
    return { code, said: said.join("\n") };
  }

  test("computes, and writes the values and the fresh copy", async () => {
    const { code, said } = await run(recalcs.find((command) => command.includes("--save"))!);
    expect([code, said]).toEqual([0, expect.stringMatching(/computed/)]);
    for (const file of ["values.json", "fresh.xlsx"]) expect(existsSync(join(folder, file))).toBe(true);
  }, 120_000);

  test("checks both workbooks and finds something doubtful", async () => {
    const { code, said } = await run(recalcs.find((command) => command.includes("--check"))!);
    expect(code).toBe(2);
    for (const book of ["own-headings.xlsx", "herd-workbook.xlsx"]) expect(said).toContain(book);
  }, 120_000);
});
