import { type Zippable, zipSync } from "fflate";
import { openPackage, type WorkbookPackage } from "./package";

/** A workbook file while its parts are changed. */
export interface ChangingPackage extends WorkbookPackage {
  readonly parts: Record<string, Uint8Array>;
}

export type PackageChange = (file: ChangingPackage) => void;

/** The bytes of a workbook after a change. */
export function changeFile(original: Uint8Array, change: PackageChange): Uint8Array {
  return packed(changed(openPackage(original), change));
}

/** A workbook after a change, not yet packed: unpacking and packing a large one takes seconds. */
export function changed(file: WorkbookPackage, change: PackageChange): WorkbookPackage {
  const changing = { ...file, parts: { ...file.parts } };
  change(changing);
  return changing;
}

/** The day that every part of a saved file carries: the first one that a zip file can hold. */
const ZIP_DAY = new Date(1980, 0, 1);

export function packed({ parts }: WorkbookPackage): Uint8Array {
  const packing: Zippable = {};
  for (const [path, bytes] of Object.entries(parts)) packing[path] = [bytes, { mtime: ZIP_DAY }];
  return zipSync(packing);
}
