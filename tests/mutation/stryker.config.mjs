/**
 * Changes the source in one small place at a time and looks whether a test fails. `npm run mutation` takes hours for
 * all; `-- --mutate "src/core/shared/*.ts"` takes one area. What was measured is kept in .cache/mutation and not run
 * again while neither the source nor its tests change.
 *
 * tests/mutation/loaded-tests.cjs says which tests are left out. Score: caught places, and those that never end,
 * of all that are not ignored.
 */
export default {
  testRunner: "one-process",
  plugins: ["./tests/mutation/one-process.mjs"],
  mutate: ["src/core/**/*.ts", "src/functions/**/*.ts", "!src/functions/registry.ts"],
  coverageAnalysis: "perTest",
  // What runs once, as the functions are loaded, is mostly their texts and limits: the derived tests read these.
  ignoreStatic: true,
  concurrency: 1,
  incremental: true,
  incrementalFile: ".cache/mutation/measured.json",
  tempDirName: ".cache/mutation/sandbox",
  ignorePatterns: [".cache", "dist", "coverage", "sample-workbooks"],
  reporters: ["clear-text", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportMutants: true },
  jsonReporter: { fileName: ".cache/mutation/report.json" },
  allowConsoleColors: false,
  disableTypeChecks: false,
  timeoutMS: 5_000,
};
