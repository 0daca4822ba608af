import { DomainError } from "../../core/shared/domain-error";
import type { FunctionSpec } from "../../functions/define";
import { evaluate } from "../../functions/evaluate";
import type { BlockData, Kept, Store } from "../data";
import { missingColumn, missingTable } from "./columns";
import type { Expression, Run } from "./expression";
import { Fault, MissingData } from "./fault";
import type { Names } from "./names";
import { isRows, literalText, type Value } from "./values";

/** The worksheet function of an id such as "CELL.MEAN": of the registry at hand, lean or whole. */
export type SpecOf = (id: string) => FunctionSpec | undefined;

/** One computation of a block: its data, the values of its inputs, and of the parts computed so far. */
export class BlockRun implements Run {
  /** What readers must know beside the part that is being computed. */
  readonly remarks = new Set<string>();
  readonly #inputs = new Map<string, Value>();
  readonly #parts = new Map<string, Value | Fault>();
  /** Expressions with the values in place of the block's cells: equal texts have equal values. */
  readonly #names: Names;

  constructor(
    readonly data: BlockData,
    readonly specOf: SpecOf,
    private readonly inputs: ReadonlyMap<string, Expression>,
  ) {
    const column = (table: string, key: string): string => {
      // Naming a column does not read it: a long text names many, and each is read in its turn.
      if (!data.hasColumn(table, key)) throw missingColumn(table, key, data.has(table));
      return `${table}[${key}]`;
    };
    this.#names = {
      column,
      range: column,
      ranges: (table, key) => [column(table, key)],
      settings: (table) => {
        if (!data.has(table)) throw missingTable(table);
        return table;
      },
      input: (name) => cellText(() => this.input(name)),
      part: (id) => cellText(() => this.part(id)),
      asOf: String(data.asOf),
      scale: data.scale,
    };
  }

  /**
   * Throws MissingData where a formula could not be written, though the side of it that is computed asks for nothing
   * that is missing: the pane then has no figure either.
   */
  refuseMissing(expression: Expression): void {
    expression.text(this.#names);
  }

  /** An input that the workbook has nothing for is a blank cell, to be filled in. */
  input(name: string): Value {
    const known = this.#inputs.get(name);
    if (known !== undefined) return known;
    const expression = this.inputs.get(name);
    if (expression === undefined) throw new Error(`the block has no input ${name}`);
    let value: Value;
    try {
      this.refuseMissing(expression);
      value = expression.compute(this);
    } catch (error) {
      if (!(error instanceof MissingData)) throw error;
      value = null;
    }
    this.#inputs.set(name, value);
    return value;
  }

  part(id: string): Value {
    const value = this.#parts.get(id);
    if (value === undefined) throw new Error(`the part ${id} stands further down in the block`);
    if (value instanceof Fault) throw value;
    return value;
  }

  setPart(id: string, value: Value | Fault): void {
    this.#parts.set(id, value);
  }

  once(expression: Expression, compute: () => Value): Value {
    return this.#keep(this.data.kept, expression, compute);
  }

  rowsOnce(conditions: Expression, find: () => readonly number[]): readonly number[] {
    return this.#keep(this.data.chosenRows, conditions, find);
  }

  /** A kept value brings the remarks along that were made when it was computed. */
  #keep<T>(store: Store<Kept<T>>, expression: Expression, compute: () => T): T {
    const key = expression.text(this.#names);
    let kept = store.get(key);
    if (kept === undefined) {
      const before = [...this.remarks];
      this.remarks.clear();
      try {
        kept = { value: compute(), remarks: [...this.remarks] };
      } finally {
        const own = [...this.remarks];
        this.remarks.clear();
        for (const remark of [...before, ...own]) this.remarks.add(remark);
      }
      store.set(key, kept);
    } else for (const remark of kept.remarks) this.remarks.add(remark);
    return kept.value;
  }

  call(id: string, values: readonly Value[], expression: Expression): Value {
    const key = expression.text(this.#names);
    let answer = this.data.answers.get(key);
    if (answer === undefined) this.data.answers.set(key, (answer = this.#evaluate(id, values)));
    if (answer instanceof Fault) throw answer;
    for (const remark of answer.remarks) this.remarks.add(remark);
    return answer.value;
  }

  readArgument(id: string, place: number, value: Value): void {
    const parameter = this.specOf(id)?.parameters[place];
    if (parameter === undefined) return;
    try {
      this.data.readColumns.read(parameter, value);
    } catch (error) {
      // The call itself says it.
      if (!(error instanceof DomainError)) throw error;
    }
  }

  #evaluate(id: string, values: readonly Value[]): Kept<Value> | Fault {
    const spec = this.specOf(id);
    if (spec === undefined) return new Fault("#NAME?", `The function HERD.${id} is not loaded.`);
    try {
      return evaluate(spec, values, (parameter, given) => this.data.readColumns.read(parameter, given));
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      return new Fault(error.kind === "unavailable" ? "#N/A" : "#VALUE!", error.message);
    }
  }
}

/** What a cell shows, as part of a key. What was refused for want of data has no cell. */
function cellText(read: () => Value): string {
  try {
    const value = read();
    return isRows(value) ? `{${value.map((row) => row.map(literalText).join(",")).join(";")}}` : literalText(value);
  } catch (error) {
    if (error instanceof Fault && !(error instanceof MissingData)) return error.code;
    throw error;
  }
}
