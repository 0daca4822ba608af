const { TestEnvironment } = require("jest-environment-node");

/** Leaves out what follows the first failed test: a mutant is caught by one. */
module.exports = class FirstFailure extends TestEnvironment {
  hasFailed = false;

  handleTestEvent({ name, test }) {
    if (name === "test_done" && test.errors.length > 0) this.hasFailed = true;
    if (name === "test_start" && this.hasFailed) test.mode = "skip";
  }
};
