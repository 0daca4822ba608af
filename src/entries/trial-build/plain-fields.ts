import { readFile } from "node:fs/promises";
import type { Plugin } from "esbuild";

/** A field of an object set in its constructor by a function that comes with the library, in a line of its own. */
const FIELD = /^(\s*)_defineProperty\(this, "(\w+)", (.*)\);$/gm;

/**
 * For the formula engine, which makes an object for each cell that it reads: lets them be made with plain fields. The
 * library comes with a function that sets each field by its name, for browsers of long ago; that function would take a
 * tenth of the time in which a workbook is opened.
 */
export const plainFields: Plugin = {
  name: "plain-fields",
  setup({ onLoad }) {
    onLoad({ filter: /@univerjs[\\/]engine-formula[\\/].*\.js$/ }, async ({ path }) => ({
      contents: (await readFile(path, "utf8")).replace(FIELD, "$1this.$2 = $3;"),
    }));
  },
};
