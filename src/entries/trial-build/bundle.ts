import { rm } from "node:fs/promises";
import { join } from "node:path";
import { build, type BuildOptions } from "esbuild";
import { plainFields } from "./plain-fields";
import { serve, type TrialServer } from "./server";

const ROOT = join(__dirname, "../../..");
const BUILT = join(ROOT, ".cache/trial");

/** Libraries inside run as in production, which is twice as fast; nothing is shortened, so that errors can be read. */
const SHARED: BuildOptions = {
  absWorkingDir: ROOT,
  outdir: BUILT,
  bundle: true,
  target: "es2022",
  define: { "process.env.NODE_ENV": '"production"' },
  jsx: "automatic",
  jsxImportSource: "preact",
  logLevel: "error",
};

/** Builds the trial page with its grid, and the pane that stands in a frame beside it, into .cache/trial. */
export async function buildTrial(): Promise<void> {
  await rm(BUILT, { recursive: true, force: true });
  await Promise.all([
    // The grid loads what belongs to a single language when it meets it.
    build({
      ...SHARED,
      entryPoints: ["src/entries/trial.ts"],
      format: "esm",
      splitting: true,
      chunkNames: "chunks/[name]-[hash]",
      plugins: [plainFields],
    }),
    // All screens in one script, so that their styles stand in one sheet.
    build({ ...SHARED, entryPoints: ["src/entries/trial-pane.ts"] }),
  ]);
}

/** Serves the built page with the sample workbooks. */
export function serveTrial(port: number): Promise<TrialServer> {
  const mounts = [
    { path: "/sample-workbooks/", folder: join(ROOT, "sample-workbooks") },
    { path: "/", folder: join(ROOT, "src/trial/page") },
    { path: "/", folder: BUILT },
  ];
  return serve(mounts, port);
}
