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
    if (this.#numbers === undefined) {
      const numbers = new Float64Array(this.length);
      for (let row = 0; row < numbers.length; row++) numbers[row] = this.bytes[row] || NaN;
      this.#numbers = numbers;
    }
    return this.#numbers;
  }

  get values(): readonly (number | null)[] {
    return (this.#values ??= Array.from(this.bytes, (byte) => byte || null));
  }
}
