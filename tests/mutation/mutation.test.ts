import { spawnSync } from "node:child_process";
import { join } from "node:path";

const ROOT = join(__dirname, "../..");
/** A file with few places to change, so that it is over soon. */
const FILE = "src/functions/figure.ts";
/** Per cent of the changes that tests must notice, over all files as well. */
const LEAST_SCORE = 90;

test("npm run mutation changes a file in many places and tells which changes no test notices", () => {
  // Without the report that a run over all files leaves.
  const program = ["run", "tests/mutation/stryker.config.mjs", "--mutate", FILE, "--reporters", "clear-text"];
  const stryker = join(ROOT, "node_modules/@stryker-mutator/core/bin/stryker.js");
  const { status, stdout } = spawnSync(process.execPath, [stryker, ...program], { cwd: ROOT, encoding: "utf8" });
  expect([status, stdout]).toEqual([0, expect.stringContaining("figure.ts")]);
  const [, score = ""] = /^ *figure\.ts *\| *([\d.]+)/m.exec(stdout) ?? [];
  expect(Number(score)).toBeGreaterThanOrEqual(LEAST_SCORE);
}, 300_000);
