import { readFile } from "node:fs/promises";
import type { Plugin } from "esbuild";
import withPlainFields from "./with-plain-fields.cjs";

/** Builds the formula engine with plain fields. */
export const plainFields: Plugin = {
  name: "plain-fields",
  setup({ onLoad }) {
    onLoad({ filter: /@univerjs[\\/]engine-formula[\\/].*\.js$/ }, async ({ path }) => ({
      contents: withPlainFields(await readFile(path, "utf8")),
    }));
  },
};
