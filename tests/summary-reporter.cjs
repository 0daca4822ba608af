/** Closes a run with one plain line that any build server can read. */
module.exports = class SummaryReporter {
  onRunComplete(_contexts, results) {
    const failed = results.numFailedTests + results.numRuntimeErrorTestSuites;
    console.log(`${results.numPassedTests} passed, ${failed} failed, ${results.numPendingTests} skipped`);
  }
};
