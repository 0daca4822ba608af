const FEWEST = 64;

/** The different values of a column in the order in which they were met; numbers without an object each. */
export class MetCells {
  #numbers = new Float64Array(FEWEST);
  /** All values, once one of them is no number. */
  #values: unknown[] | undefined;
  #count = 0;

  /** Notes a value; says how many there are now. */
  push(value: unknown): number {
    if (this.#values === undefined && typeof value !== "number") this.#values = Array.from(this.all);
    if (this.#values !== undefined) return this.#values.push(value);
    if (this.#count === this.#numbers.length) this.#grow();
    this.#numbers[this.#count] = value as number;
    return ++this.#count;
  }

  get all(): ArrayLike<unknown> {
    return this.#values ?? this.#numbers.subarray(0, this.#count);
  }

  #grow(): void {
    const larger = new Float64Array(2 * this.#numbers.length);
    larger.set(this.#numbers);
    this.#numbers = larger;
  }
}
