/** Slots of the smallest table; four times as many whenever it is more than half full. A power of two. */
const FEWEST_SLOTS = 64;
/** Multiplier that spreads neighbouring numbers over the table: 2^32 divided by the golden ratio (Knuth 1973, 6.4). */
const SPREAD = 0x9e3779b1;

/**
 * A place for each of many numbers, for loops over very many rows: a table of numbers side by side, faster and
 * smaller than a Map and without an object a number.
 */
export class NumberPlaces {
  #numbers = new Float64Array(FEWEST_SLOTS);
  /** Place + 1; 0 where the slot is free. */
  #places = new Int32Array(FEWEST_SLOTS);
  #size = 0;
  readonly #asNumber = new Float64Array(1);
  readonly #asBits = new Int32Array(this.#asNumber.buffer);

  /** The place that was set for the number, or -1. NaN has none. */
  get(number: number): number {
    return this.#places[this.#slotOf(number)]! - 1;
  }

  /** Sets the place, 0 or more, of a number that has none yet. */
  add(number: number, place: number): void {
    if (2 * ++this.#size > this.#places.length) this.#grow();
    const slot = this.#slotOf(number);
    this.#numbers[slot] = number;
    this.#places[slot] = place + 1;
  }

  /**
   * The slot that holds the number, or the free one where it belongs. Whole numbers start at the slot of their last
   * bits, so that lists in order stay in the cache; where it is taken the other bits say where to look next.
   */
  #slotOf(number: number): number {
    const [numbers, places] = [this.#numbers, this.#places];
    const last = places.length - 1;
    let bits = this.#bitsOf(number);
    let slot = bits & last;
    while (places[slot] !== 0 && numbers[slot] !== number) {
      bits >>>= 5;
      slot = (5 * slot + bits + 1) & last;
    }
    return slot;
  }

  #bitsOf(number: number): number {
    const whole = number | 0;
    if (whole === number) return whole;
    this.#asNumber[0] = number;
    return Math.imul(this.#asBits[0]!, SPREAD) ^ this.#asBits[1]!;
  }

  #grow(): void {
    const [numbers, places] = [this.#numbers, this.#places];
    this.#numbers = new Float64Array(4 * numbers.length);
    this.#places = new Int32Array(4 * places.length);
    for (let old = 0; old < places.length; old++) {
      if (places[old] === 0) continue;
      const slot = this.#slotOf(numbers[old]!);
      this.#numbers[slot] = numbers[old]!;
      this.#places[slot] = places[old]!;
    }
  }
}
