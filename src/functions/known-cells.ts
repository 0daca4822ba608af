import { NumberPlaces } from "../core/shared/number-places";

/** The cells of a column that were read before: a value that stands in many rows is read and checked once. */
export class KnownCells {
  readonly #texts = new Map<string, number>();
  readonly #numbers = new NumberPlaces();

  /** The place that was noted for this cell, or -1. */
  placeOf(raw: unknown): number {
    if (typeof raw === "string") return this.#texts.get(raw) ?? -1;
    return typeof raw === "number" ? this.#numbers.get(raw) : -1;
  }

  /** Notes the place of the value that was read from this cell. */
  add(raw: unknown, place: number): void {
    if (typeof raw === "string") this.#texts.set(raw, place);
    else if (typeof raw === "number") this.#numbers.add(raw, place);
  }
}
