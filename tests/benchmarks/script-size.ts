import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, Script } from "node:vm";
import { gzipSync } from "node:zlib";
import { bundle } from "../../src/entries/excel-build/bundle";
import { median } from "./cost";

/** A file that Excel loads. */
export interface LoadedFile {
  readonly name: string;
  readonly bytes: number;
  readonly gzipBytes: number;
  /** To parse a script; absent for other files. */
  readonly parseMs?: number;
}

export interface LoadedScripts {
  readonly files: readonly LoadedFile[];
  /** The script of worksheet functions: from its text to all functions handed over. */
  readonly functionsReadyMs: number;
  readonly functions: number;
}

export const FUNCTIONS_SCRIPT = "functions.js";
const PARSES = 21;

/** Builds what Excel loads into a folder and measures it. */
export async function loadedScripts(folder: string): Promise<LoadedScripts> {
  await bundle(folder);
  const names = readdirSync(folder).filter((name) => /\.(js|css)$/.test(name));
  const files = names.sort().map((name): LoadedFile => {
    const bytes = readFileSync(join(folder, name));
    const text = bytes.toString();
    return {
      name,
      bytes: bytes.length,
      gzipBytes: gzipSync(bytes, { level: 9 }).length,
      ...(name.endsWith(".js") ? { parseMs: medianOf((time) => void parsed(text, time)) } : {}),
    };
  });
  const script = readFileSync(join(folder, FUNCTIONS_SCRIPT), "utf8");
  let functions = 0;
  const functionsReadyMs = medianOf((time) => (functions = start(parsed(script, time))));
  return { files, functionsReadyMs, functions };
}

/** A remark of its own keeps the engine from finding the script parsed before. */
function parsed(text: string, time: number): Script {
  return new Script(`${text}\n// ${time}`, { filename: `script-${time}.js` });
}

/** Runs the script as Excel's page does; how many functions it hands over. */
function start(script: Script): number {
  let functions = 0;
  const page = { CustomFunctions: { associate: () => functions++ } };
  script.runInContext(createContext({ ...page, self: page, window: page, document: { currentScript: null } }));
  return functions;
}

function medianOf(run: (time: number) => void): number {
  return median(
    Array.from({ length: PARSES }, (_, time) => {
      const start = performance.now();
      run(time);
      return performance.now() - start;
    }),
  );
}
