/**
 * Changes the source in one small place at a time and looks whether a test fails. `npm run mutation` takes ten minutes
 * to half an hour; `-- --mutate "src/core/claws/*.ts"` takes one area, and is faster for it.
 * tests/mutation/loaded-tests.cjs says which tests are left out, tests/mutation/survivors.md what is not caught and why.
 */
export default {
  testRunner: "one-process",
  plugins: ["./tests/mutation/one-process.mjs"],
  mutate: [
    "src/core/**/*.ts",
    "src/functions/**/*.ts",
    // What is generated is compared with the file by `npm run generate -- --check`, and by no test.
    "!src/functions/registry.ts",
    "!src/functions/registry-source.ts",
  ],
  coverageAnalysis: "perTest",
  // What runs once, as the functions are loaded, is mostly their texts and limits: the derived tests read these.
  ignoreStatic: true,
  concurrency: 1,
  tempDirName: ".cache/mutation/sandbox",
  ignorePatterns: [".cache", "dist", "coverage", "sample-workbooks"],
  reporters: ["clear-text", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportMutants: true },
  jsonReporter: { fileName: ".cache/mutation/report.json" },
  allowConsoleColors: false,
  disableTypeChecks: false,
  timeoutMS: 5_000,
};
