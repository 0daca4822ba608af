import type { Browser, Page } from "playwright-core";

/** What the test files that one worker of the runner takes on hand on to each other; setup/environment.cjs holds it. */
export interface TestWorker {
  /** The browser of this worker. */
  browser(): Promise<Browser>;
  /** The trial page, which takes as long to load as to compute the sample. */
  trialPage?: Page;
}

declare global {
  // Only `var` makes a name of the global object.
  var testWorker: TestWorker;
}
