import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { format, resolveConfig } from "prettier";
import { HELPER_FILES, registrySource, type SpecFile } from "../functions/registry-source";

/**
 * `npm run generate` writes the files that follow from the specs; `npm run generate -- --check` only compares and
 * fails, naming each file that is stale.
 */
const FUNCTIONS = join(__dirname, "../functions");

function specFiles(): SpecFile[] {
  return readdirSync(FUNCTIONS, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name: area }) =>
      readdirSync(join(FUNCTIONS, area))
        .filter((file) => file.endsWith(".ts"))
        .map((file) => ({ area, name: file.replace(/\.ts$/, "") }))
        .filter(({ name }) => !HELPER_FILES.has(name)),
    );
}

interface Output {
  readonly path: string;
  readonly text: string;
}

async function outputs(): Promise<Output[]> {
  return [{ path: join(FUNCTIONS, "registry.ts"), text: registrySource(specFiles()) }];
}

async function main(check: boolean): Promise<void> {
  let stale = 0;
  for (const { path, text: plain } of await outputs()) {
    const text = await format(plain, { ...(await resolveConfig(path)), filepath: path });
    if (existsSync(path) && readFileSync(path, "utf8") === text) continue;
    stale++;
    if (check) console.error(`stale: ${path}; run npm run generate`);
    else writeFileSync(path, text);
  }
  if (check && stale > 0) process.exitCode = 1;
}

void main(process.argv.includes("--check"));
