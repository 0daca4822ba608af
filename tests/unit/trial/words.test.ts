import { readFileSync } from "node:fs";
import { LocaleType } from "@univerjs/core";
import { locales } from "../../../src/trial/grid/words";

/** The word behind a key such as "sheets-formula.progress.done". */
function wordOf(key: string): unknown {
  return key
    .split(".")
    .reduce<unknown>(
      (words, part) => (words as Record<string, unknown> | undefined)?.[part],
      locales[LocaleType.EN_US],
    );
}

test("the grid has a word for each step of computing that the library tells of", () => {
  const library = readFileSync(require.resolve("@univerjs/sheets-formula"), "utf8");
  const keys = [...new Set(library.match(/sheets-formula\.progress\.[\w-]+/g))];
  expect(keys.length).toBeGreaterThan(3);
  for (const key of keys) expect([key, wordOf(key)]).toEqual([key, expect.stringMatching(/^[A-Z][a-z ]+$/)]);
});
