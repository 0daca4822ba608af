const { join } = require("node:path");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const MinimizerPlugin = require("minimizer-webpack-plugin");

const SOURCE = join(__dirname, "src");
const LEAN_SPECS = join(SOURCE, "entries/excel-build/lean-specs.cjs");
const PLAIN_FIELDS = join(SOURCE, "entries/trial-build/plain-fields.cjs");

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

/** What both bundles share; `name` picks one with `webpack --config-name <name>` and keeps their caches apart. */
function bundle(name, mode, entry, path) {
  return {
    name,
    mode,
    target: "web",
    context: __dirname,
    entry,
    output: { path: join(__dirname, path), filename: "[name].js", publicPath: "auto" },
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    module: { rules },
    plugins: [new MiniCssExtractPlugin({ filename: "[name].css" })],
    cache: {
      type: "filesystem",
      cacheDirectory: join(__dirname, ".cache/webpack"),
      name: `${name}-${mode}`,
      buildDependencies: { config: [__filename, LEAN_SPECS, PLAIN_FIELDS] },
    },
    stats: "errors-warnings",
  };
}

/**
 * What Excel loads. The functions stand in a script of their own, with lean specs that hold only what computing needs.
 * The pane is loaded when Office is ready, so that the first function does not wait, and takes from that script what is
 * there: the trade's arithmetic, the kinds of argument, the lean specs. Whole specs are a second layer of the same
 * files; they come when something asks for their texts.
 */
const excelBundle = bundle(
  "excel",
  "production",
  {
    functions: { import: "./src/entries/functions.ts", layer: "lean" },
    taskpane: { import: "./src/entries/taskpane.ts", layer: "lean", dependOn: "functions" },
  },
  "dist",
);
/** Files of the functions that hold no text of a single function: one copy serves both layers. */
const FUNCTION_TOOLS = /src[\\/]functions[\\/](?!registry|whole-registry)[^\\/]+\.ts$/;
const excel = {
  ...excelBundle,
  // All scripts lie beside the page.
  output: { ...excelBundle.output, publicPath: "" },
  devtool: false,
  performance: { hints: false },
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

/**
 * The trial page with its spreadsheet grid, and the pane in a frame beside it. Left unminified, which saves a minute a
 * build; the libraries inside still run as in production, which is twice as fast.
 */
const trial = {
  ...bundle(
    "trial",
    "development",
    { trial: "./src/entries/trial.ts", "trial-pane": "./src/entries/trial-pane.ts" },
    ".cache/trial",
  ),
  module: { rules: [...rules, { test: /@univerjs[\\/]engine-formula[\\/].*\.js$/, loader: PLAIN_FIELDS }] },
  devtool: false,
  optimization: { nodeEnv: "production" },
  performance: { hints: false },
};

module.exports = [excel, trial];
