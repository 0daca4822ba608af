import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

const OFFICE = join(__dirname, "../../src/workbook/office");

/** Files in which Excel is asked in a loop, and why it cannot be asked once. */
const IN_PARTS: Readonly<Record<string, string>> = {
  "book/edit-cells.ts": "so many cells are asked at once",
  "book/read-pages.ts": "a large sheet must be cut into several answers",
  "book/read-sheets.ts": "so many cells are asked at once",
  "book/write-cells.ts": "cells are written and asked batch by batch",
  "merged-areas.ts": "an area is halved only where Excel does not answer for the whole",
  "read-arguments.ts": "a large reading must be cut into several answers",
  "tables/describe.ts": "the next block is read only where this one is blank",
  "tables/make.ts": "again only where someone else made the sheet",
  "tables/read-rows.ts": "a large table must be cut into several answers",
};

/** Whether a call that sends a batch stands in a loop of its own function. */
function asksInLoop(source: string): boolean {
  const visit = (node: ts.Node, inLoop: boolean): boolean => {
    if (
      inLoop &&
      ts.isCallExpression(node) &&
      ts.isPropertyAccessExpression(node.expression) &&
      node.expression.name.text === "sync"
    ) {
      return true;
    }
    const within = ts.isFunctionLike(node) ? false : inLoop || ts.isIterationStatement(node, false);
    return ts.forEachChild(node, (child) => visit(child, within)) ?? false;
  };
  return visit(ts.createSourceFile("x.ts", source, ts.ScriptTarget.Latest), false);
}

test("Excel is asked once, not in turn for each, but for the files that say why not", () => {
  const files = readdirSync(OFFICE, { recursive: true, encoding: "utf8" })
    .map((path) => path.replace(/\\/g, "/"))
    .filter((path) => path.endsWith(".ts"));
  expect(files.length).toBeGreaterThan(20);
  const asking = files.filter((path) => asksInLoop(readFileSync(join(OFFICE, path), "utf8")));
  expect(asking.sort()).toEqual(Object.keys(IN_PARTS));
});

test.each([
  ["for (const x of xs) { x.load('values'); await context.sync(); }", true],
  ["while (true) { try { await context.sync(); } catch {} }", true],
  ["for (const x of xs) x.load('values'); await context.sync();", false],
  ["for (const x of xs) { later(async () => { await context.sync(); }); }", false],
])("%s: %s", (body, expected) => {
  expect(asksInLoop(`async function f() { ${body} }`)).toBe(expected);
});
