const { join } = require("node:path");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const MinimizerPlugin = require("minimizer-webpack-plugin");

const SOURCE = join(__dirname, "src");
const LEAN_SPECS = join(SOURCE, "entries/excel-build/lean-specs.cjs");

/** TypeScript and Preact's JSX, and style sheets as files of their own: the pages allow no inline script or style. */
const rules = [
  {
    test: /\.tsx?$/,
    include: SOURCE,
    loader: "swc-loader",
    options: {
      jsc: {
        target: "es2022",
        parser: { syntax: "typescript", tsx: true },
        transform: { react: { runtime: "automatic", importSource: "preact" } },
      },
    },
  },
  { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
];

/** What the pane needs wherever it is built; also for the pages of the browser tests. */
function paneBundle(name) {
  return {
    name,
    mode: "production",
    target: "web",
    context: __dirname,
    devtool: false,
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    module: { rules },
    cache: {
      type: "filesystem",
      cacheDirectory: join(__dirname, ".cache/webpack"),
      name,
      buildDependencies: { config: [__filename, LEAN_SPECS] },
    },
    performance: { hints: false },
  };
}

/** Files of the functions that hold no text of a single function: one copy serves both layers. */
const FUNCTION_TOOLS = /src[\\/]functions[\\/](?!registry|whole-registry)[^\\/]+\.ts$/;

/**
 * What Excel loads. The functions stand in a script of their own, with lean specs that hold only what computing needs.
 * The pane is loaded when Office is ready, so that the first function does not wait, and takes from that script what is
 * there: the trade's arithmetic, the kinds of argument, the lean specs. Whole specs are a second layer of the same
 * files; they come when something asks for their texts.
 */
const excel = {
  ...paneBundle("excel"),
  entry: {
    functions: { import: "./src/entries/functions.ts", layer: "lean" },
    taskpane: { import: "./src/entries/taskpane.ts", layer: "lean", dependOn: "functions" },
  },
  // All scripts lie beside the page.
  output: { path: join(__dirname, "dist"), filename: "[name].js", publicPath: "" },
  plugins: [new MiniCssExtractPlugin({ filename: "[name].css" })],
  experiments: { layers: true },
  optimization: {
    minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.swcMinify })],
    splitChunks: { cacheGroups: { defaultVendors: false, specs: { layer: "whole", name: "specs", minChunks: 2 } } },
  },
  module: {
    rules: [
      ...rules,
      { include: [join(SOURCE, "core"), join(SOURCE, "functions")], sideEffects: false },
      { test: join(SOURCE, "functions/whole-registry.ts"), layer: "whole" },
      // The papers stay in both: what is cited is only for readers.
      { include: join(SOURCE, "core"), exclude: join(SOURCE, "core/reference"), layer: "lean" },
      { test: FUNCTION_TOOLS, layer: "lean" },
      {
        issuerLayer: "lean",
        include: join(SOURCE, "functions"),
        exclude: FUNCTION_TOOLS,
        enforce: "pre",
        loader: LEAN_SPECS,
      },
    ],
  },
};

module.exports = { paneBundle, excel };
