import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { DOMParser, type Document } from "@xmldom/xmldom";
import { runRecalc } from "../../src/entries/recalc/run";
import { buildOptions } from "../../src/entries/excel-build/options";
import { formulaText } from "../../src/functions/formula-text";
import { registry } from "../../src/functions/registry";

const ROOT = join(__dirname, "../..");
const HELP = join(ROOT, "manifest/help");
const PAGES = ["index.html", "secretary.html", "adviser.html"];
/** Pages and styles that the build writes beside the ones kept as files. */
const MADE = ["functions.html", "functions.css"];

function read(page: string): Document {
  const xml = readFileSync(join(HELP, page), "utf8")
    .replace("<!doctype html>", "")
    .replace(/<(meta|link)([^>]*?)\/?>/g, "<$1$2/>");
  return new DOMParser({
    onError: (_, message) => {
      throw new Error(message);
    },
  }).parseFromString(xml, "text/xml");
}

const textsOf = (document: Document, name: string): string[] =>
  [...document.getElementsByTagName(name)].map((element) => element.textContent!);

describe.each(PAGES.map((page) => [page, read(page)] as const))("the help page %s", (page, document) => {
  const text = readFileSync(join(HELP, page), "utf8");

  test("links only to what the build holds", () => {
    const links = [...document.getElementsByTagName("a"), ...document.getElementsByTagName("link")];
    expect(links.length).toBeGreaterThan(0);
    for (const link of links) {
      const file = link.getAttribute("href")!;
      expect([file, MADE.includes(file) || existsSync(join(HELP, file))]).toEqual([file, true]);
    }
  });

  test("runs nothing and forbids the rest", () => {
    expect(text).toContain(`content="default-src 'none'; style-src 'self'; img-src 'self'"`);
    expect(text).not.toMatch(/<script|\sstyle=|\son\w+=|unsafe/);
  });

  test("has one title, its headings below it without a level left out", () => {
    const levels = [...document.getElementsByTagName("*")].flatMap(
      ({ localName }) => /^h([1-6])$/.exec(localName!)?.[1] ?? [],
    );
    expect(levels[0]).toBe("1");
    expect(levels.slice(1).every((level) => level === "2")).toBe(true);
  });

  test("names only tabs that the pane has", () => {
    const screens = readFileSync(join(ROOT, "src/taskpane/screens.ts"), "utf8");
    const titles = [...screens.matchAll(/screen\("[\w-]+", "([^"]+)"/g)].map(([, title]) => title);
    for (const tab of textsOf(document, "b")) expect(titles).toContain(tab);
  });

  test("shows only formulas that are worked examples of a function", () => {
    const examples = registry.flatMap((spec) => spec.examples.map((example) => formulaText(spec, example)));
    for (const code of textsOf(document, "code").filter((shown) => shown.startsWith("=")))
      expect(examples).toContain(code);
  });
});

describe("commands in the help", () => {
  const commands = PAGES.flatMap((page) => textsOf(read(page), "pre")).filter((text) => text.startsWith("npm "));
  const { scripts } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as {
    readonly scripts: Readonly<Record<string, string>>;
  };

  test("are scripts of package.json", () => {
    expect(commands.length).toBeGreaterThan(3);
    for (const command of commands)
      expect(scripts).toHaveProperty([command.replace(/^npm (run )?/, "").split(" ")[0]!]);
  });

  test("the build takes the switches shown", () => {
    const [, switches] = commands.find((command) => command.startsWith("npm run build"))!.split(" -- ");
    expect(buildOptions(switches!.split(" ")).address).toBe("https://your.server/evenfoot");
  });

  test("the check lists what it finds in the book shown", async () => {
    const [, switches] = commands.find((command) => command.startsWith("npm run recalc"))!.split(" -- ");
    const said: string[] = [];
    const say = (line: string): void => void said.push(line);
    expect(await runRecalc(switches!.split(" "), ROOT, { out: say, error: say })).toBe(2);
    for (const kind of [/scale/, /text|number/i, /cow/i]) expect(said.join("\n")).toMatch(kind);
  }, 60_000);
});
