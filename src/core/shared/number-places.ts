/** Slots of the smallest table; doubled whenever it is more than half full. A power of two. */
const FEWEST_SLOTS = 64;
/** Multiplier that spreads the bits of fractions and large numbers: 2^32 divided by the golden ratio (Knuth 1973, 6.4). */
const SPREAD = 0x9e3779b1;
/** A list has as many entries as numbers while it is no longer than so many times them, and this much at least. */
const SPARE_ENTRIES = 4;
const FEWEST_ENTRIES = 1024;

/**
 * A place for each of many numbers, for loops over very many rows: faster and smaller than a Map and without an object
 * a number. Small whole numbers, as cows have, are found in a list, all others in a table of slots.
 */
export class NumberPlaces {
  /** Place + 1 of the whole number at its own index; 0 where it has none. */
  #list = new Int32Array(0);
  #numbers = new Float64Array(FEWEST_SLOTS);
  /** Place + 1; 0 where the slot is free. */
  #places = new Int32Array(FEWEST_SLOTS);
  #size = 0;
  #sizeOfTable = 0;
  readonly #asNumber = new Float64Array(1);
  readonly #asBits = new Int32Array(this.#asNumber.buffer);

  /** The place that was set for the number, or -1. NaN has none. */
  get(number: number): number {
    const index = number >>> 0;
    if (index === number && index < this.#list.length && this.#list[index] !== 0) return this.#list[index]! - 1;
    return this.#sizeOfTable === 0 ? -1 : this.#places[this.#slotOf(number)]! - 1;
  }

  /** Sets the place, 0 or more, of a number that has none yet. */
  add(number: number, place: number): void {
    this.#size++;
    const index = number >>> 0;
    const isWhole = index === number;
    if (isWhole && index >= this.#list.length && index < SPARE_ENTRIES * this.#size + FEWEST_ENTRIES)
      this.#growList(index);
    if (isWhole && index < this.#list.length) this.#list[index] = place + 1;
    else {
      if (2 * ++this.#sizeOfTable > this.#places.length) this.#growTable();
      const slot = this.#slotOf(number);
      this.#numbers[slot] = number;
      this.#places[slot] = place + 1;
    }
  }

  /** The numbers that are in the table stay there. */
  #growList(index: number): void {
    const longer = new Int32Array(Math.max(2 * this.#list.length, FEWEST_ENTRIES, index + 1));
    longer.set(this.#list);
    this.#list = longer;
  }

  /**
   * The slot that holds the number, or the free one where it belongs. Whole numbers start at the slot of their last
   * bits, so that lists in order stay in the cache; where it is taken the other bits say where to look next.
   */
  #slotOf(number: number): number {
    const numbers = this.#numbers;
    const places = this.#places;
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

  #growTable(): void {
    const [numbers, places] = [this.#numbers, this.#places];
    this.#numbers = new Float64Array(2 * numbers.length);
    this.#places = new Int32Array(2 * places.length);
    for (let old = 0; old < places.length; old++) {
      if (places[old] === 0) continue;
      const slot = this.#slotOf(numbers[old]!);
      this.#numbers[slot] = numbers[old]!;
      this.#places[slot] = places[old]!;
    }
  }
}
