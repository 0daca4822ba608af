import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

const ROOT = join(__dirname, "../..");

/** A package as the lock file has it. */
export interface LockedPackage {
  readonly version?: string;
  readonly license?: string;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
}

/** Every installed package by its folder. */
export const locked = (
  JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")) as {
    readonly packages: Readonly<Record<string, LockedPackage>>;
  }
).packages;

export function packageName(folder: string): string {
  return folder.slice(folder.lastIndexOf("node_modules/") + "node_modules/".length);
}

/** Files that build, draw or serve; what they import is not passed on. */
const TOOLS = /^entries\/(excel-build|trial-build)\/|^entries\/(excel|generate|icons)\.ts$/;

/** Packages that the source itself imports, without those of its tools. */
export function importedPackages(): string[] {
  const source = join(ROOT, "src");
  const files = readdirSync(source, { recursive: true, encoding: "utf8" })
    .map((path) => path.replace(/\\/g, "/"))
    .filter((path) => /\.tsx?$/.test(path) && !TOOLS.test(path));
  const names = files.flatMap((path) =>
    ts.preProcessFile(readFileSync(join(source, path), "utf8")).importedFiles.map(({ fileName }) => fileName),
  );
  return [...new Set(names.filter((name) => !/^(\.|node:)/.test(name)).map(packageOf))].sort();
}

function packageOf(imported: string): string {
  return imported
    .split("/")
    .slice(0, imported.startsWith("@") ? 2 : 1)
    .join("/");
}

/** Folders of those packages and of all that they bring along. */
export function withAllTheyBring(names: readonly string[]): string[] {
  const found = new Set<string>();
  const add = (folder: string | undefined): void => {
    if (folder === undefined || found.has(folder)) return;
    found.add(folder);
    const { dependencies, optionalDependencies, peerDependencies } = locked[folder]!;
    for (const name of Object.keys({ ...dependencies, ...optionalDependencies, ...peerDependencies }))
      add(installedFor(folder, name));
  };
  for (const name of names) add(installedFor("", name));
  return [...found];
}

/** Where a package finds another: in its own folder, or in that of one around it. */
function installedFor(folder: string, name: string): string | undefined {
  for (let around = folder; ; around = around.slice(0, Math.max(0, around.lastIndexOf("node_modules/") - 1))) {
    const place = `${around === "" ? "" : `${around}/`}node_modules/${name}`;
    if (locked[place] !== undefined) return place;
    if (around === "") return undefined;
  }
}
