import { spawnSync } from "node:child_process";
import { join } from "node:path";

const ROOT = join(__dirname, "../..");

/** Runs the build as a user does. Inside a test the bundler would spoil its own cache. */
export function buildInto(
  folder: string,
  ...args: readonly string[]
): { readonly status: number | null; readonly said: string } {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["--import", "tsx", join(ROOT, "src/entries/build.ts"), "--folder", folder, ...args],
    { cwd: ROOT, encoding: "utf8" },
  );
  return { status, said: stdout + stderr };
}
