import { unzipSync } from "fflate";
import { damagedPart } from "./checksums";
import { WorkbookFileError } from "./file-error";
import { MOST_BYTES_OF_FILE, MOST_BYTES_OF_PART, MOST_TIMES_SMALLER } from "./limits";
import { attribute, childrenOf, parsePart } from "./xml";

/** The parts of a workbook file by path, and how they point to each other. */
export interface WorkbookPackage {
  readonly parts: Readonly<Record<string, Uint8Array>>;
  /** Path of the main part. */
  readonly workbookPath: string;
}

export interface Relationship {
  readonly id: string;
  /** Last word of the relationship's type: worksheet, table, styles. */
  readonly kind: string;
  /** Path of the part it points to. */
  readonly target: string;
}

/** Opens a file's bytes, or says in one sentence why they are no workbook. */
export function openPackage(bytes: Uint8Array): WorkbookPackage {
  refuseOtherFormats(bytes);
  const parts = unzip(bytes);
  const damaged = damagedPart(bytes, parts);
  if (damaged !== undefined)
    throw new WorkbookFileError(`the file is damaged: its part ${damaged} is not as it was saved`);
  const main = relationshipsOf(parts, "").find(({ kind }) => kind === "officeDocument")?.target;
  if (main === undefined || parts[main] === undefined) {
    throw new WorkbookFileError("it is a zip file but holds no workbook");
  }
  if (main.endsWith(".bin")) throw new WorkbookFileError("it is a binary workbook (.xlsb): save it as .xlsx");
  if (!/workbook[^/]*\.xml$/i.test(main))
    throw new WorkbookFileError("it is an Office file of another kind, not a workbook");
  return { parts, workbookPath: main };
}

function refuseOtherFormats(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new WorkbookFileError("the file is empty");
  if (startsWith(bytes, COMPOUND_FILE)) {
    throw new WorkbookFileError(
      includes(bytes, utf16("EncryptedPackage"))
        ? "the workbook is protected by a password: save a copy without one"
        : "it is an old .xls workbook or another old Office file: save it as .xlsx",
    );
  }
  if (!startsWith(bytes, ZIP_FILE)) throw new WorkbookFileError("it is not an .xlsx workbook");
}

/** First bytes of an OLE compound file, in which old workbooks and encrypted ones are kept. Source: [MS-CFB] 2.2. */
const COMPOUND_FILE = [0xd0, 0xcf, 0x11, 0xe0];
/** First bytes of a zip file. Source: PKWARE APPNOTE 4.3.7. */
const ZIP_FILE = [0x50, 0x4b, 0x03, 0x04];

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

function utf16(text: string): number[] {
  return [...text].flatMap((letter) => [letter.charCodeAt(0), 0]);
}

function includes(bytes: Uint8Array, wanted: readonly number[]): boolean {
  for (let at = bytes.indexOf(wanted[0]!); at >= 0; at = bytes.indexOf(wanted[0]!, at + 1)) {
    if (wanted.every((byte, index) => bytes[at + index] === byte)) return true;
  }
  return false;
}

function unzip(bytes: Uint8Array): Record<string, Uint8Array> {
  let whole = 0;
  try {
    const parts = unzipSync(bytes, {
      filter: ({ name, size, originalSize }) => {
        if (originalSize > size * MOST_TIMES_SMALLER)
          throw new WorkbookFileError(`the file is damaged: its part ${name} cannot be as large as it says`);
        whole += originalSize;
        if (originalSize > MOST_BYTES_OF_PART || whole > MOST_BYTES_OF_FILE)
          throw new WorkbookFileError("the file unpacks to far more than a workbook of a herd holds");
        return true;
      },
    });
    // A part may be called as something that every object has.
    return Object.assign(Object.create(null) as Record<string, Uint8Array>, parts);
  } catch (error) {
    if (error instanceof WorkbookFileError) throw error;
    throw new WorkbookFileError("the file is damaged: it cannot be unpacked");
  }
}

/** The text of a part. */
export function partText(parts: Readonly<Record<string, Uint8Array>>, path: string): string {
  const bytes = Object.hasOwn(parts, path) ? parts[path] : undefined;
  if (bytes === undefined) throw new WorkbookFileError(`the file is damaged: its part ${path} is missing`);
  const isUtf16 = bytes[0] === 0xff && bytes[1] === 0xfe;
  return new TextDecoder(isUtf16 ? "utf-16le" : "utf-8").decode(bytes);
}

/** What a part points to; "" stands for the package itself. */
export function relationshipsOf(parts: Readonly<Record<string, Uint8Array>>, path: string): Relationship[] {
  const folder = path.slice(0, path.lastIndexOf("/") + 1);
  const file = `${folder}_rels/${path.slice(folder.length)}.rels`;
  if (parts[file] === undefined) return [];
  return childrenOf(parsePart(partText(parts, file), file), "Relationship")
    .filter((relationship) => attribute(relationship, "TargetMode") !== "External")
    .map((relationship) => ({
      id: attribute(relationship, "Id") ?? "",
      kind: (attribute(relationship, "Type") ?? "").replace(/^.*\//, ""),
      target: resolvePath(folder, attribute(relationship, "Target") ?? ""),
    }));
}

function resolvePath(folder: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const steps: string[] = [];
  for (const step of (folder + target).split("/")) {
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  }
  return steps.join("/");
}
