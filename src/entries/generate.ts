import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { format, type FormatConfig } from "oxfmt";
import { functionsMetadata } from "../functions/metadata";
import { lockBreaks, nameLock, type NameLock } from "../functions/name-lock";
import { withFunctionTable } from "../functions/readme-table";
import { HELPER_FILES, registrySource, type SpecFile } from "../functions/registry-source";

/**
 * `npm run generate` writes the files that follow from the specs. Switches:
 * `--check` only compares, and fails naming each file that is stale;
 * `--unlock` lets locked names and arguments change, which is right only before they are released.
 */
const ROOT = join(__dirname, "../..");
const FUNCTIONS = join(ROOT, "src/functions");
const REGISTRY = join(FUNCTIONS, "registry.ts");
const LOCK = join(FUNCTIONS, "names.lock.json");
const README = join(ROOT, "README.md");
/** How the files of this house are laid out. */
const LAYOUT = JSON.parse(readFileSync(join(ROOT, ".oxfmtrc.json"), "utf8")) as FormatConfig;

const check = process.argv.includes("--check");
const unlock = process.argv.includes("--unlock");

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

async function put(path: string, plain: string): Promise<void> {
  const { code: text } = await format(path, plain, LAYOUT);
  if (existsSync(path) && readFileSync(path, "utf8") === text) return;
  if (check) fail(`stale: ${relative(ROOT, path)}; run npm run generate`);
  else writeFileSync(path, text);
}

function fail(message: string): void {
  console.error(message);
  process.exitCode = 1;
}

async function main(): Promise<void> {
  await put(REGISTRY, registrySource(specFiles()));
  // Loaded only now, so that it is the registry just written.
  const { registry } = await import("../functions/registry");
  await put(join(ROOT, "manifest/functions.json"), JSON.stringify(functionsMetadata(registry)));
  await put(README, withFunctionTable(readFileSync(README, "utf8"), registry));

  const locked = existsSync(LOCK) ? (JSON.parse(readFileSync(LOCK, "utf8")) as NameLock) : {};
  const breaks = unlock ? [] : lockBreaks(locked, registry);
  for (const sentence of breaks) fail(`name lock: ${sentence}`);
  if (breaks.length > 0) fail("formulas in saved workbooks would break; before the first release add -- --unlock");
  else await put(LOCK, JSON.stringify(nameLock(registry)));
}

void main();
