import { cpSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/** Files of Office.js that no page in Excel asks for: other programs, unminified doubles, typings. */
const NOT_FOR_EXCEL =
  /^(access|onenote|outlook|powerpoint|project|word)[\w.-]*\.js$|\.debug\.js$|debug-vsdoc\.js$|^office-vsdoc\.js$|\.d\.ts$|_strings\.debug\.js$/i;

/**
 * Copies Office.js as it is: its licence allows it to be passed on unmodified and as part of an add-in only, so no
 * bundler may touch it.
 */
export function copyOfficeJs(target: string): void {
  const source = dirname(require.resolve("@microsoft/office-js/dist/office.js"));
  cpSync(source, target, {
    recursive: true,
    filter: (path) => statSync(path).isDirectory() || !NOT_FOR_EXCEL.test(basename(path)),
  });
  cpSync(join(source, "../LICENSE.md"), join(target, "LICENSE.md"));
}
