import type { Column, WholeNumbers } from "./column";

/** Whole numbers from 1; 0 stands for none. What takes more memory is made when someone asks for it. */
export class WholeColumn implements Column<number> {
  #numbers: Float64Array | undefined;
  #values: readonly (number | null)[] | undefined;
  readonly length: number;

  constructor(
    readonly whole: WholeNumbers,
    readonly noteRows: number,
    readonly argument: string,
  ) {
    this.length = whole.length;
  }

  at(row: number): number | null {
    return this.whole[row] || null;
  }

  get numbers(): Float64Array {
    if (this.#numbers === undefined) {
      const numbers = new Float64Array(this.length);
      for (let row = 0; row < numbers.length; row++) numbers[row] = this.whole[row] || NaN;
      this.#numbers = numbers;
    }
    return this.#numbers;
  }

  get values(): readonly (number | null)[] {
    return (this.#values ??= Array.from(this.whole, (number) => number || null));
  }
}
