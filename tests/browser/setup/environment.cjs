const { TestEnvironment } = require("jest-environment-node");
const { chromium } = require("playwright-core");

/** What the runner sends a worker that has nothing left to do. */
const NOTHING_LEFT = 2;

let connected;

/** The browser of this worker of the runner, which all its test files speak with. */
function browser() {
  const address = process.env.BROWSERS.split(",")[Number(process.env.JEST_WORKER_ID) - 1];
  return (connected ??= chromium.connectOverCDP(address));
}

/** A worker ends when nothing holds it any more. */
function leave([what]) {
  if (what !== NOTHING_LEFT) return;
  process.off("message", leave);
  connected?.then((open) => open.close());
}
process.on("message", leave);

/** What test files of one worker hand on: each is run in a world of its own. */
const testWorker = { browser };

module.exports = class extends TestEnvironment {
  async setup() {
    await super.setup();
    this.global.testWorker = testWorker;
  }
};
