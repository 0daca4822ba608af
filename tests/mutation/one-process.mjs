import { INSTRUMENTER_CONSTANTS } from "@stryker-mutator/api/core";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import {
  determineHitLimitReached,
  DryRunStatus,
  TestStatus,
  toMutantRunResult,
} from "@stryker-mutator/api/test-runner";
import { createRequire } from "node:module";
import { join } from "node:path";

/** Stryker takes a place for endless that is reached 100 times as often as without the change: this part of that is enough. */
const PART_OF_LIMIT = 0.2;

/**
 * Runs the tests for Stryker: all loaded once, a changed place switched on by its number, the quick tests first, and
 * no more of them after the first failure.
 */
class OneProcess {
  static inject = [];
  /** What the changed source reads: which place is on; and writes: how often each was reached. */
  #source = (globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {});
  #tests = new Map();

  capabilities() {
    // A place that is also run while loading is only tried in what runs later.
    return { reloadEnvironment: true };
  }

  /** Loads the tests from the copy that holds the changed source. */
  async init() {
    const path = join(process.cwd(), "tests/mutation/loaded-tests.cjs");
    this.#tests = createRequire(path)(path);
  }

  /** Stryker asks for the tests of a place in the order of this coverage. */
  async dryRun() {
    const tests = await this.#run(this.#tests.keys(), true);
    const { static: whileLoading, perTest } = this.#source.mutantCoverage;
    const quickFirst = tests.toSorted((one, other) => one.timeSpentMs - other.timeSpentMs).map(({ id }) => id);
    const inOrder = quickFirst.filter((id) => id in perTest).map((id) => [id, perTest[id]]);
    const mutantCoverage = { static: whileLoading, perTest: Object.fromEntries(inOrder) };
    return { status: DryRunStatus.Complete, tests, mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit: givenLimit, disableBail }) {
    const hitLimit = givenLimit === undefined ? undefined : PART_OF_LIMIT * givenLimit;
    this.#source.activeMutant = activeMutant.id;
    this.#source.hitLimit = hitLimit;
    this.#source.hitCount = hitLimit === undefined ? undefined : 0;
    const tests = await this.#run(testFilter, disableBail);
    const endless = determineHitLimitReached(this.#source.hitCount, hitLimit);
    this.#source.activeMutant = this.#source.hitLimit = this.#source.hitCount = undefined;
    return toMutantRunResult(endless ?? { status: DryRunStatus.Complete, tests });
  }

  async #run(titles, pastFailures) {
    const results = [];
    for (const title of titles) {
      this.#source.currentTestId = title;
      const started = performance.now();
      const outcome = await outcomeOf(this.#tests.get(title));
      results.push({ id: title, name: title, timeSpentMs: performance.now() - started, ...outcome });
      if (outcome.status === TestStatus.Failed && !pastFailures) break;
    }
    this.#source.currentTestId = undefined;
    return results;
  }
}

async function outcomeOf(run) {
  try {
    await run();
    return { status: TestStatus.Success };
  } catch (error) {
    return { status: TestStatus.Failed, failureMessage: String(error?.message ?? error) };
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "one-process", OneProcess)];
