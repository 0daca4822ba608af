/**
 * Runs before `npm start` and `npm test`, in plain Node with nothing installed: installs the packages where they are
 * missing or are not those of package-lock.json.
 */
const { execSync } = require("node:child_process");
const { existsSync, readFileSync } = require("node:fs");
const { join } = require("node:path");

const ROOT = join(__dirname, "../..");

/** The packages of a lock file by their place. npm keeps a second lock file inside node_modules of what is there. */
function packagesOf(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, "utf8")).packages : undefined;
}

/** Whether every package that is wanted here stands in node_modules in the wanted version. */
function isInstalled() {
  const wanted = packagesOf(join(ROOT, "package-lock.json"));
  const present = packagesOf(join(ROOT, "node_modules/.package-lock.json"));
  if (!wanted || !present) return false;
  return Object.entries(wanted).every(([place, { version, optional, devOptional }]) => {
    if (place === "") return true;
    const found = present[place];
    // An optional package may be for another kind of computer.
    return found ? found.version === version : Boolean(optional || devOptional);
  });
}

if (!isInstalled()) {
  console.log("Installing packages. This happens once and takes about a minute.");
  execSync("npm ci --no-audit --no-fund", { cwd: ROOT, stdio: "inherit" });
}
