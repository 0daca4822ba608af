import { readFileSync } from "node:fs";
import { join } from "node:path";
import { importedPackages, locked, packageName, withAllTheyBring } from "./packages";

const ROOT = join(__dirname, "../..");
const NOTICE = readFileSync(join(ROOT, "NOTICE"), "utf8");

/** Licences that let anyone pass on the work, changed or not, with its notice. */
const PERMISSIVE = new Set(["MIT", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0"]);

/** Typings have no part in what runs. */
const isTyping = (name: string): boolean => name.startsWith("@types/") || name === "undici-types";

/** The lock file has no licence where the package.json has none. */
const READ_IN_ITS_LICENCE_FILE: Readonly<Record<string, string>> = { "@univerjs/telemetry": "Apache-2.0" };

/** What may end in the scripts that Excel, the trial page and the commands load: "name licence". */
function passedOn(): string[] {
  const folders = withAllTheyBring(importedPackages());
  const lines = folders
    .map((folder) => [packageName(folder), locked[folder]!.license] as const)
    .filter(([name]) => !isTyping(name))
    .map(([name, licence]) => `${name} ${licence ?? READ_IN_ITS_LICENCE_FILE[name] ?? "no licence"}`);
  return [...new Set(lines)].sort();
}

/** The lines of the notice's list: a name with its licence, three blanks before it. */
function listed(): string[] {
  const from = NOTICE.indexOf("Every package");
  return [...NOTICE.slice(from, NOTICE.indexOf("\n4. ")).matchAll(/^ {3}(\S+) {2,}(\S+)$/gm)]
    .map(([, name, licence]) => `${name!} ${licence!}`)
    .sort();
}

test("the notice lists every package that may be passed on, with its licence, and no other", () => {
  expect(listed()).toEqual(passedOn());
});

test("each of them is under a permissive licence", () => {
  expect(passedOn().length).toBeGreaterThan(100);
  expect(passedOn().filter((line) => !PERMISSIVE.has(line.split(" ")[1]!))).toEqual([]);
});

test("a licence that is only in a file is what the file says", () => {
  expect(readFileSync(join(ROOT, "node_modules/@univerjs/telemetry/LICENSE"), "utf8")).toMatch(
    /Apache License\s+Version 2\.0/,
  );
});

test("Office.js, which is not under such a licence, is named as what it is", () => {
  expect(NOTICE).toMatch(/@microsoft\/office-js[\s\S]*not an open-source licence/);
});
