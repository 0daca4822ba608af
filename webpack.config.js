const { join } = require("node:path");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");

const SOURCE = join(__dirname, "src");

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
      buildDependencies: { config: [__filename] },
    },
    stats: "errors-warnings",
  };
}

/**
 * What Excel loads. Two scripts, so that the functions answer before the pane's code is read; the pane takes from the
 * first what both need.
 */
const excel = {
  ...bundle(
    "excel",
    "production",
    {
      functions: "./src/entries/functions.ts",
      taskpane: { import: "./src/entries/taskpane.tsx", dependOn: "functions" },
    },
    "dist",
  ),
  devtool: false,
  performance: { hints: false },
};

/**
 * The trial page with its spreadsheet grid, and the pane in a frame beside it. Left unminified, which saves a minute a
 * build; the libraries inside still run as in production, which is twice as fast.
 */
const trial = {
  ...bundle(
    "trial",
    "development",
    { trial: "./src/entries/trial.tsx", "trial-pane": "./src/entries/trial-pane.tsx" },
    ".cache/trial",
  ),
  devtool: false,
  optimization: { nodeEnv: "production" },
  performance: { hints: false },
};

module.exports = [excel, trial];
