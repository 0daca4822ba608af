import { build } from "esbuild";
import { join } from "node:path";

const ROOT = join(__dirname, "../..");
const FOLDER = join(ROOT, ".cache/bench");

/**
 * A program of this folder as one plain script, in which functions call each other as they do in the script that Excel
 * loads. Run from source, every use of another file's name would go through a module object, which costs a third more.
 */
export async function bundled(program: string): Promise<string> {
  const outfile = join(FOLDER, `${program}.js`);
  await build({
    entryPoints: [join(__dirname, `${program}.ts`)],
    outfile,
    bundle: true,
    platform: "node",
    packages: "external",
    logLevel: "error",
  });
  return outfile;
}
