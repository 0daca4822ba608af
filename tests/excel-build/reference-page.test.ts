import { DOMParser, type Document } from "@xmldom/xmldom";
import type { FunctionSpec } from "../../src/functions/define";
import { formulaText } from "../../src/functions/formula-text";
import { functionsMetadata } from "../../src/functions/metadata";
import { withFunctionTable } from "../../src/functions/readme-table";
import { referencePage } from "../../src/functions/reference-page";
import { registry } from "../../src/functions/registry";

const page = referencePage(registry);

/** The page is read as XML, which forgives nothing; the empty elements of HTML are closed for it. */
function parsed(text: string): Document {
  const xml = text.replace("<!doctype html>", "").replace(/<(meta|link)([^>]*)>/g, "<$1$2/>");
  return new DOMParser({
    onError: (_, message) => {
      throw new Error(message);
    },
  }).parseFromString(xml, "text/xml");
}

const document = parsed(page);
const elements = (name: string) => [...document.getElementsByTagName(name)];

describe("the help page", () => {
  test("has the place that every help link points to, once", () => {
    const ids = elements("*").flatMap((element) => element.getAttribute("id") ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { helpUrl } of functionsMetadata(registry).functions) expect(ids).toContain(helpUrl.split("#")[1]);
  });

  test("links only to places that it has", () => {
    const ids = new Set(elements("*").map((element) => element.getAttribute("id")));
    const inside = elements("a").flatMap((link) => /^#(.*)/.exec(link.getAttribute("href")!)?.[1] ?? []);
    expect(inside.length).toBeGreaterThan(registry.length);
    for (const place of inside) expect(ids).toContain(place);
  });

  test("runs only the script of its search, loads only its own style sheet and forbids the rest", () => {
    expect(elements("script").map((script) => [script.getAttribute("src"), script.textContent])).toEqual([
      ["search.js", ""],
    ]);
    expect(elements("*").filter((element) => element.hasAttribute("style"))).toHaveLength(0);
    expect(elements("link").map((link) => link.getAttribute("href"))).toEqual(["functions.css"]);
    expect(page).toContain(`content="default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'"`);
    expect(page).not.toMatch(/\son\w+=/);
  });

  test("has its headings in order, without a level left out", () => {
    const levels = elements("*")
      .flatMap(({ localName }) => /^h([1-6])$/.exec(localName!)?.[1] ?? [])
      .map(Number);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, index) => expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1));
  });

  test.each(registry.map((spec) => [spec.id, spec] as const))("tells all of %s", (id, spec) => {
    const article = elements("article").find(
      (element) => element.getElementsByTagName("h3")[0]!.textContent === `HERD.${id}`,
    );
    const text = article!.textContent!;
    const told = [
      spec.summary,
      ...spec.limits,
      ...spec.cautions,
      ...spec.sources.flatMap(({ name, citation }) => [name, citation]),
      ...spec.parameters.flatMap(({ name, description, kind }) => [name, description, kind.must]),
      ...spec.examples.flatMap((example) => [formulaText(spec, example), example.where]),
    ];
    for (const part of told) expect(text).toContain(part);
  });
});

const odd: FunctionSpec = {
  ...registry[0]!,
  id: "TOE.ODD",
  summary: `<script>alert("x")</script> & more`,
  sources: [{ name: "Nobody 1900", citation: "Nobody 1900.", standing: "memory" }],
  result: { shape: "table", columns: [{ heading: "Due", type: "date" }] },
  examples: [{ arguments: [], result: [["Due"], [45_342]], origin: "hand", where: "20 February 2024" }],
};

describe("what a function says of itself", () => {
  const text = referencePage([odd]);
  test("cannot become markup", () => {
    expect(text).not.toContain("<script>");
    expect(text).toContain("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; more");
  });
  test("is marked where a source is quoted from memory", () => {
    expect(text).toContain("quoted from memory: check it before you rely on it");
  });
  // 45342 is 20 February 2024 in LibreOffice Calc.
  test("shows dates as dates", () => expect(text).toContain("<td>2024-02-20</td>"));
});

describe("the function table of the README", () => {
  test("replaces what stood between the markers and leaves the rest", () => {
    const readme = "before\n<!-- functions:start -->\nold\n<!-- functions:end -->\nafter\n";
    const updated = withFunctionTable(readme, [{ ...odd, summary: "a | b" }]);
    expect(updated).toMatch(/^before\n<!-- functions:start -->\n/);
    expect(updated).toMatch(/<!-- functions:end -->\nafter\n$/);
    expect(updated).not.toContain("old");
    expect(updated).toContain("| a \\| b |");
  });

  test("is not written into a README without markers", () => {
    expect(() => withFunctionTable("no markers", [odd])).toThrow("README.md must hold the lines");
  });
});
