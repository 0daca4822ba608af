import type { Unwatch } from "../port";

/** The bytes of a file as they were read. */
export interface StoredFile {
  readonly bytes: Uint8Array;
  /** Differs whenever the bytes do. */
  readonly version: string;
}

/** Where a workbook file is kept. */
export interface FileStore {
  /** Throws FileGone where there is no such file any more. */
  read(): Promise<StoredFile>;
  /**
   * Puts new bytes in the place of those of a version, whole or not at all. Throws FileChanged, and writes nothing,
   * where the file is no longer of that version; FileRefused where it cannot be written. Any other error leaves open
   * whether the bytes are in their place. Gives the new version.
   */
  replace(bytes: Uint8Array, version: string): Promise<string>;
  /** Calls back when the bytes have been replaced, with the new version. */
  watch(listener: (version: string) => void): Unwatch;
}

/** Someone else replaced the file meanwhile. */
export class FileChanged extends Error {
  override readonly name = "FileChanged";
}

/** The file cannot be written; it is as it was. The message says why. */
export class FileRefused extends Error {
  override readonly name = "FileRefused";
}

/** The file was deleted or moved. */
export class FileGone extends Error {
  override readonly name = "FileGone";
}
