import { readdirSync } from "node:fs";
import { join } from "node:path";

/**
 * The tests of core and functions as one file, so that a mutant costs one loading of the functions and not forty.
 * The random-argument tests and the matrix of bad input are left out: they cost most.
 */
const FOLDERS = ["core", "cells", "claws", "barn", "money", "ration", "functions"].map((area) => `unit/${area}`);

for (const folder of [...FOLDERS, "published"]) {
  for (const file of readdirSync(join(__dirname, "..", folder)).filter((name) => name.endsWith(".test.ts"))) {
    // eslint-disable-next-line @typescript-eslint/no-require-imports -- loaded inside its own group
    describe(`${folder}/${file}`, () => void require(join(__dirname, "..", folder, file)));
  }
}
for (const file of ["examples.test.ts", "shape.test.ts"]) {
  // eslint-disable-next-line @typescript-eslint/no-require-imports -- loaded inside its own group
  describe(`derived/${file}`, () => void require(join(__dirname, "../derived", file)));
}
