import { FileChanged, FileGone, type FileStore } from "../../../src/workbook/file/store";
import { faults, type Faults } from "../faults";

/** A file in memory that several hosts may have open. */
export class MemoryStore implements FileStore {
  readonly faults: Faults = faults();
  turn: () => Promise<void> = () => Promise.resolve();
  private number = 1;
  private readonly listeners = new Set<(version: string) => void>();

  constructor(public bytes: Uint8Array | undefined) {}

  async read(): Promise<{ readonly bytes: Uint8Array; readonly version: string }> {
    await this.turn();
    this.faults.step();
    if (this.bytes === undefined) throw new FileGone("the file is gone");
    return { bytes: this.bytes, version: String(this.number) };
  }

  async replace(bytes: Uint8Array, version: string): Promise<string> {
    await this.turn();
    this.faults.step();
    if (this.bytes === undefined) throw new FileGone("the file is gone");
    if (version !== String(this.number)) throw new FileChanged("the file was changed");
    this.put(bytes);
    const own = String(this.number);
    // The answer may get lost when the file is already in its place.
    this.faults.step();
    return own;
  }

  /** What someone else does to the file. */
  put(bytes: Uint8Array): void {
    this.bytes = bytes;
    this.number += 1;
    for (const listener of [...this.listeners]) listener(String(this.number));
  }

  watch(listener: (version: string) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}
