import { spawnSync } from "node:child_process";
import { join } from "node:path";

const ROOT = join(__dirname, "../..");

test("no generated file is stale: run npm run generate", () => {
  const { status, stderr } = spawnSync(
    process.execPath,
    ["--import", "tsx", join(ROOT, "src/entries/generate.ts"), "--check"],
    { cwd: ROOT, encoding: "utf8" },
  );
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
}, 60_000);
