import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Results } from "./results";

const folder = mkdtempSync(join(tmpdir(), "evenfoot-bench-test-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** Too few rows to learn anything from: whether it measures, not what. */
const SWITCHES = [
  "--sizes",
  "50,500",
  "--rounds",
  "1",
  "--sections",
  "long,scalar,memory",
  "--functions",
  "RECHECK.LIST",
];

test("npm run bench writes a page and the figures behind it", () => {
  const out = join(folder, "results");
  const program = ["--import", "tsx", join(__dirname, "bench.ts"), ...SWITCHES, "--out", out];
  const { status, stderr } = spawnSync(process.execPath, program, { encoding: "utf8" });
  expect([status, stderr]).toEqual([0, ""]);
  const { duels, memory, scalar } = JSON.parse(readFileSync(`${out}.json`, "utf8")) as Results;
  expect(duels.map(({ contender, rows }) => `${contender}, ${rows}`)).toEqual([
    "function, 50",
    "function, 500",
    "reading the cells, 50",
    "reading the cells, 500",
  ]);
  for (const { own, other } of duels) expect((own ?? other)!.samples).toHaveLength(1);
  expect(memory.map(({ id, rows }) => [id, rows])).toEqual([["RECHECK.LIST", 500]]);
  expect(scalar.map(({ id }) => id)).toEqual(["RECHECK.DATE", "CELL.LOSS"]);
  const page = readFileSync(`${out}.md`, "utf8");
  expect(page).toMatch(/RECHECK\.LIST, growth from 50 to 500 rows .* looking at the cells alone/);
}, 120_000);
