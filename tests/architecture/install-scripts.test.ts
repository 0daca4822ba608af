import { readFileSync } from "node:fs";
import { join } from "node:path";
import { locked, packageName } from "./packages";

/** Packages that ask to run a script as they are installed, and why they may or need not. */
const SCRIPTS: Readonly<Record<string, { readonly mayRun: boolean; readonly because: string }>> = {
  "@parcel/watcher": { mayRun: false, because: "would build from source; its built form comes as a package" },
  "@swc/core": { mayRun: true, because: "looks for the built compiler that suits the machine" },
  esbuild: { mayRun: true, because: "puts the built program in the place of its start script" },
  protobufjs: { mayRun: false, because: "only warns of version numbers" },
};

const { allowScripts, dependencies, devDependencies } = JSON.parse(
  readFileSync(join(__dirname, "../../package.json"), "utf8"),
) as Readonly<Record<"allowScripts" | "dependencies" | "devDependencies", Readonly<Record<string, string | boolean>>>>;

/** Where package-lock.json holds no address of a package, npm allows by name alone; the lock keeps the version. */
test("package.json says of every install script whether it may run, and of no other", () => {
  const asking = Object.entries(locked).filter(([, { hasInstallScript }]) => hasInstallScript === true);
  const answers = asking.map(([folder, { version }]) => {
    const [name, mayRun] = [packageName(folder), SCRIPTS[packageName(folder)]?.mayRun];
    return [mayRun === true ? name : `${name}@${version ?? ""}`, mayRun];
  });
  expect(allowScripts).toEqual(Object.fromEntries(answers));
});

test("what is passed on is pinned to one version", () => {
  const pinned = ["@cj-tech-master/excelts", "fflate", "react", "react-dom", "rxjs"];
  for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies })) {
    const isPassedOn = name in dependencies || name.startsWith("@univerjs/") || pinned.includes(name);
    if (isPassedOn) expect([name, version]).toEqual([name, expect.stringMatching(/^\d+\.\d+\.\d+$/)]);
  }
});
