import type { Column } from "./column";

/** Small whole numbers, a byte each; 0 stands for none. What takes more memory is made when someone asks for it. */
export class ByteColumn implements Column<number> {
  #numbers: Float64Array | undefined;
  #values: readonly (number | null)[] | undefined;
  readonly length: number;

  constructor(
    readonly bytes: Uint8Array,
    readonly noteRows: number,
    readonly argument: string,
  ) {
    this.length = bytes.length;
  }

  at(row: number): number | null {
    return this.bytes[row] || null;
  }

  get numbers(): Float64Array {
    return (this.#numbers ??= Float64Array.from(this.bytes, (byte) => byte || NaN));
  }

  get values(): readonly (number | null)[] {
    return (this.#values ??= Array.from(this.bytes, (byte) => byte || null));
  }
}
