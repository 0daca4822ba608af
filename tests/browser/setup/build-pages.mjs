import { readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import webpack from "webpack";

const ROOT = fileURLToPath(new URL("../../..", import.meta.url));
const FOLDER = join(ROOT, "tests/browser");

/**
 * Builds the pages of the tests' own, tests/browser/*-page, as the pane ships but for the shortening of its scripts:
 * a script of this size takes seconds to shorten, and runs no otherwise. All together, since most of each is the same.
 */
export async function buildPages() {
  const { paneBundle } = createRequire(import.meta.url)(join(ROOT, "webpack.config.js"));
  const names = readdirSync(FOLDER).filter((name) => name.endsWith("-page"));
  const pane = paneBundle("pages");
  const compiler = webpack({
    ...pane,
    entry: Object.fromEntries(names.map((name) => [name, join(FOLDER, name, "entry")])),
    output: {
      path: join(ROOT, ".cache/pages"),
      filename: "[name]/page.js",
      chunkFilename: "chunks/[name].js",
      publicPath: "/",
    },
    optimization: { minimize: false },
    plugins: [new MiniCssExtractPlugin({ filename: "[name]/page.css", chunkFilename: "chunks/[name].css" })],
    // The rules of the project for TypeScript, on the tests' own files too.
    module: { rules: pane.module.rules.map((rule) => ({ ...rule, include: undefined })) },
  });
  await new Promise((resolve, reject) => {
    compiler.run((error, stats) => {
      if (error) reject(error);
      else if (stats.hasErrors()) reject(new Error(stats.toString({ preset: "errors-only" })));
      else resolve();
    });
  });
  await new Promise((resolve) => compiler.close(resolve));
}
