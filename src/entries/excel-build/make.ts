import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { referencePage } from "../../functions/reference-page";
import { registry } from "../../functions/registry";
import { bundle } from "./bundle";
import { filled, valuesOf, type Values } from "./filled";
import { copyOfficeJs } from "./office-js";
import type { BuildOptions } from "./options";

const ROOT = join(__dirname, "../../..");
const MANIFEST = join(ROOT, "manifest");

/** Makes the folder to be served and, in it, the manifest to be installed. */
export async function makeBuild(options: BuildOptions): Promise<void> {
  const { folder: target } = options;
  refuseOtherFolder(target);
  rmSync(target, { recursive: true, force: true });
  await bundle(target);
  writeFilled(valuesOf(options, packageVersion()), target);
  writeHelp(target);
  const pngs = readdirSync(join(MANIFEST, "icons")).filter((file) => file.endsWith(".png"));
  for (const file of pngs) cpSync(join(MANIFEST, "icons", file), join(target, "icons", file));
  cpSync(join(MANIFEST, "shortcuts.json"), join(target, "shortcuts.json"));
  for (const file of ["LICENSE", "NOTICE"]) cpSync(join(ROOT, file), join(target, file));
  if (options.officeJs === "copy") copyOfficeJs(join(target, "office"));
}

/** What a folder held is removed, so it must be one of ours. */
function refuseOtherFolder(folder: string): void {
  if (!existsSync(folder) || readdirSync(folder).length === 0 || existsSync(join(folder, "manifest.xml"))) return;
  throw new Error(`--folder must be new, empty or made by an earlier build; ${folder} holds something else`);
}

function packageVersion(): string {
  return (JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as { version: string }).version;
}

function writeFilled(values: Values, target: string): void {
  const sources = [
    join(MANIFEST, "manifest.xml"),
    join(MANIFEST, "functions.json"),
    join(ROOT, "src/entries/taskpane.html"),
  ];
  for (const source of sources) {
    const text = filled(readFileSync(source, "utf8"), values);
    writeFileSync(join(target, basename(source)), text);
  }
}

function writeHelp(target: string): void {
  mkdirSync(join(target, "help"), { recursive: true });
  writeFileSync(join(target, "help/functions.html"), referencePage(registry));
  cpSync(join(MANIFEST, "help.css"), join(target, "help/functions.css"));
  cpSync(join(MANIFEST, "help"), join(target, "help"), { recursive: true });
}
