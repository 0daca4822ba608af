import type { FunctionSpec } from "../functions/define";
import type { Kind } from "../functions/kind";

type Parameter = FunctionSpec["parameters"][number];

/**
 * The columns that were read for worksheet functions: many functions of a block take the same columns of the same
 * rows, and reading is half of their work. What was read goes with the rows from which it was read.
 */
export class ReadColumns {
  readonly #columns = new WeakMap<object, Map<Kind<unknown>, Map<string, unknown>>>();

  /** The argument as its kind reads it. What reads it throws is thrown again the next time. */
  read({ kind, name }: Parameter, given: unknown): unknown {
    if (kind.shape !== "column" || typeof given !== "object" || given === null) return kind.read(given, name);
    let ofRows = this.#columns.get(given);
    if (ofRows === undefined) this.#columns.set(given, (ofRows = new Map()));
    let ofKind = ofRows.get(kind);
    if (ofKind === undefined) ofRows.set(kind, (ofKind = new Map()));
    // A column names its argument in its messages: one of another name is another column.
    let column = ofKind.get(name);
    if (column === undefined) ofKind.set(name, (column = kind.read(given, name)));
    return column;
  }
}
