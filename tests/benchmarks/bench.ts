import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { format } from "oxfmt";
import { ask } from "./ask";
import { bundled } from "./bundled";
import { CONTENDERS } from "./contenders/contender";
import { libreOfficeVersion } from "./contenders/libreoffice";
import { type Duel, duel, growthOf } from "./duel";
import type { CallMemory } from "./memory-worker";
import { type BenchOptions, benchOptions, machine, USAGE } from "./options";
import { report } from "./report";
import { type Results, thousands } from "./results";
import type { ScalarCalls } from "./scalar-worker";
import { type LoadedScripts, loadedScripts } from "./script-size";
import { TASKS, taskOf } from "./tasks";

/** `npm run bench` measures and writes what it measured. Whatever goes wrong is written down; it never fails a build. */
async function main(args: readonly string[]): Promise<void> {
  if (args.includes("--help")) return console.log(USAGE);
  const options = benchOptions(args);
  const folder = mkdtempSync(join(tmpdir(), "evenfoot-bench-"));
  // Contenders leave their files here even when they are ended by force.
  process.env["TMPDIR"] = folder;
  try {
    await write(await measure(options, folder), options.out);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measure(options: BenchOptions, folder: string): Promise<Results> {
  const failures: string[] = [];
  const attempt = async <T>(what: string, run: () => Promise<T>): Promise<T | undefined> => {
    console.log(what);
    try {
      return await run();
    } catch (error) {
      failures.push(`${what}: ${error instanceof Error ? error.message : String(error)}`);
      return undefined;
    }
  };
  const { sections, sizes, rounds } = options;
  const loadBefore = loadavg()[0]!;
  const office = libreOfficeVersion();
  if (office === undefined) failures.push("formulas in LibreOffice: it is not installed");
  const script = sections.includes("script")
    ? await attempt<LoadedScripts>("what Excel loads", () => loadedScripts(join(folder, "dist")))
    : undefined;
  const scalar = sections.includes("scalar")
    ? await attempt<readonly ScalarCalls[]>("calls of single values", async () =>
        ask(await bundled("scalar-worker"), [String(rounds)]),
      )
    : undefined;
  const duels = sections.includes("long") ? await duelsOf(options, office !== undefined, attempt) : [];
  const memory = sections.includes("memory") ? await memoryOf(options, attempt) : [];
  return {
    machine: machine(),
    sizes,
    rounds,
    loadBefore,
    loadAfter: loadavg()[0]!,
    libreOffice: office ?? "no LibreOffice",
    duels,
    scalar: scalar ?? [],
    memory,
    ...(script === undefined ? {} : { script }),
    failures,
  };
}

type Attempt = <T>(what: string, run: () => Promise<T>) => Promise<T | undefined>;

async function duelsOf(options: BenchOptions, hasOffice: boolean, attempt: Attempt): Promise<readonly Duel[]> {
  const { sizes, rounds, limits, functions } = options;
  const worker = await bundled("worker");
  const tasks = TASKS.filter(({ id }) => functions.length === 0 || functions.includes(id));
  const duels: Duel[] = [];
  for (const { id } of tasks) {
    for (const contender of ["function", "reading the cells"] as const) {
      const what = `${id} over ${sizes.map(thousands).join(", ")} rows: ${contender}`;
      const grown = await attempt(what, () => growthOf(worker, taskOf(id), contender, sizes, rounds, limits));
      duels.push(...(grown ?? []));
    }
  }
  for (const rows of sizes) {
    for (const task of tasks) {
      for (const contender of CONTENDERS.filter((name) => task.contenders.includes(name))) {
        if (contender === "formulas in LibreOffice" && !hasOffice) continue;
        const what = `${task.id} over ${thousands(rows)} rows: ${contender}`;
        const result = await attempt(what, () =>
          duel(worker, task, contender, { rows, rowsTogether: Math.max(...sizes) }, rounds, limits),
        );
        if (result !== undefined) duels.push(result);
      }
    }
  }
  return duels;
}

/** The longest column is what the limit of memory speaks of. */
async function memoryOf({ sizes, functions }: BenchOptions, attempt: Attempt): Promise<readonly CallMemory[]> {
  const worker = await bundled("memory-worker");
  // Memory that is given back goes back to the system at once, so that none of it hides what the call takes.
  const how = { execArgv: ["--expose-gc"], env: { MALLOC_MMAP_THRESHOLD_: String(2 ** 16) } };
  const memory: CallMemory[] = [];
  for (const { id } of TASKS) {
    if (functions.length > 0 && !functions.includes(id)) continue;
    const call = await attempt(`memory of ${id}`, () => ask<CallMemory>(worker, [id, String(Math.max(...sizes))], how));
    if (call !== undefined) memory.push(call);
  }
  return memory;
}

async function write(results: Results, out: string): Promise<void> {
  writeFileSync(`${out}.json`, (await format("results.json", JSON.stringify(results))).code);
  const { code: page } = await format("results.md", report(results));
  writeFileSync(`${out}.md`, page);
  console.log(`\n${page}\nWritten to ${out}.md and ${out}.json`);
}

main(process.argv.slice(2)).catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
});
