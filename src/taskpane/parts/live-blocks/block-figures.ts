import { type ComputedBlock, type ComputedPart, filledRows } from "../../../blocks/compute";
import type { Rows } from "../../../blocks/expression/values";

/** Reads figures and tables out of a computed block. What was refused is not there; `reason` says why. */
export class BlockFigures {
  readonly #parts: ReadonlyMap<string, ComputedPart>;

  constructor(readonly computed: ComputedBlock) {
    this.#parts = new Map(computed.parts.map((part) => [part.part.id, part]));
  }

  /** Whether anything was computed: nothing yet is not the same as nothing found. */
  get isComputed(): boolean {
    return this.#parts.size > 0;
  }

  /** The number of a figure; undefined where it is none. */
  number(id: string): number | undefined {
    const found = this.#parts.get(id);
    return found?.kind === "figure" && typeof found.value === "number" ? found.value : undefined;
  }

  /** The words of a figure; undefined where it has none. */
  text(id: string): string | undefined {
    const found = this.#parts.get(id);
    return found?.kind === "figure" && typeof found.value === "string" ? found.value : undefined;
  }

  /** The number in an input; undefined where it holds none. */
  input(name: string): number | undefined {
    const value = this.computed.inputs.find((input) => input.name === name)?.value;
    return typeof value === "number" ? value : undefined;
  }

  /** A table or series as it is filled: its headings, then its rows. undefined where it was refused. */
  spilled(id: string): Rows | undefined {
    const found = this.#parts.get(id);
    return found?.kind === "rows" ? found.rows : undefined;
  }

  /** Rows of a table or series that hold something, without their headings. */
  rows(id: string): Rows {
    const found = this.#parts.get(id);
    return found?.kind === "rows" ? filledRows(found) : [];
  }

  /** Why a part could not be computed. */
  reason(id: string): string | undefined {
    const found = this.#parts.get(id);
    return found?.kind === "refused" ? found.sentence : undefined;
  }

  /** What a reader must know beside a part: rows left out, few cows. */
  remarks(id: string): readonly string[] {
    const found = this.#parts.get(id);
    return found === undefined || found.kind === "refused" ? [] : found.remarks;
  }
}
