import { NumberPlaces } from "../core/shared/number-places";

/** Slots for the texts met last: several times as many as a column of words has different ones. A power of two. */
const SLOTS = 256;

export const NOT_KNOWN = -1;

/** The cells of a column that were read before: a value that stands in many rows is read and checked once. */
export class KnownCells {
  readonly #texts = new Map<string, number>();
  readonly #numbers = new NumberPlaces();
  /** Texts met last by their length and ends, which saves most look-ups in the map. */
  readonly #slots = new Array<string | undefined>(SLOTS).fill(undefined);
  readonly #placesOfSlots = new Int32Array(SLOTS);

  /** The place that was noted for this cell, or NOT_KNOWN. */
  placeOf(raw: unknown): number {
    if (typeof raw === "number") return this.#numbers.get(raw);
    if (typeof raw !== "string" || raw === "") return NOT_KNOWN;
    const slot = slotOf(raw);
    if (this.#slots[slot] === raw) return this.#placesOfSlots[slot]!;
    const place = this.#texts.get(raw);
    if (place === undefined) return NOT_KNOWN;
    this.#slots[slot] = raw;
    this.#placesOfSlots[slot] = place;
    return place;
  }

  /** Notes the place of the value that was read from this cell. */
  add(raw: unknown, place: number): void {
    if (typeof raw === "string") this.#texts.set(raw, place);
    else if (typeof raw === "number") this.#numbers.add(raw, place);
  }
}

function slotOf(text: string): number {
  const ends = 31 * text.charCodeAt(0) + text.charCodeAt(text.length - 1);
  return (7 * ends + text.length) & (SLOTS - 1);
}
