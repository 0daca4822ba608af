import { type ChangingPackage, changeFile } from "./change-package";
import { partText } from "./package";
import { dropCalculationChain, dynamicArrayNumber } from "./save/dynamic-arrays";
import { type FreshSheet, patchSheet } from "./save/patch-sheet";
import { worksheetEntries } from "./sheets";

export type { FreshSheet };

/**
 * The workbook with fresh values in its formula cells. Only the values are written anew, and the extent of formulas
 * that now fill other cells than before: every other part of the file keeps its bytes, every cell its format.
 */
export function saveValues(original: Uint8Array, fresh: readonly FreshSheet[]): Uint8Array {
  return changeFile(original, (file) => putValues(file, fresh));
}

/** Puts fresh values into the formula cells of a workbook. */
export function putValues(file: ChangingPackage, fresh: readonly FreshSheet[]): void {
  const { parts } = file;
  let mark: string | undefined;
  for (const { name, path } of worksheetEntries(file)) {
    const sheet = fresh.find((known) => known.name === name);
    if (sheet === undefined) continue;
    const xml = partText(parts, path);
    const patched = patchSheet(xml, sheet, () => (mark ??= dynamicArrayNumber(parts, file.workbookPath)));
    if (patched !== xml) parts[path] = new TextEncoder().encode(asUtf8(patched));
  }
  // The chain says which formulas are arrays; it is no longer true once one has become an array.
  if (mark !== undefined) dropCalculationChain(parts, file.workbookPath);
}

function asUtf8(xml: string): string {
  return xml.replace(/^(<\?xml[^>]*encoding=["'])utf-16(["'])/i, "$1UTF-8$2");
}
