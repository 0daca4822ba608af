import type { PlainCell } from "../../workbook/port";
import type { DaySerial } from "../../core/shared/days";
import type { Names, Scale } from "./names";
import { literalText, type Rows, type Value } from "./values";

/** The data of a workbook, as formulas name them. */
export interface NamedData {
  has(table: string): boolean;
  hasColumn(table: string, key: string): boolean;
  /** A column as a range: one cell a row, and never without a row. undefined where there is none. */
  column(table: string, key: string): Rows | undefined;
  /** A settings table with its headings in the first row. */
  settings(table: string): Rows | undefined;
  readonly asOf: DaySerial;
  readonly scale: Scale;
}

/** One computation of a block: its data, its inputs, and the parts computed so far. */
export interface Run {
  readonly data: NamedData;
  input(name: string): Value;
  part(id: string): Value;
  /** The value of an expression, computed once for the same data and inputs. */
  once(expression: Expression, compute: () => Value): Value;
  /** The rows of a list that meet conditions, found once for the same data and inputs. */
  rowsOnce(conditions: Expression, find: () => readonly number[]): readonly number[];
  /** Reads a list as a worksheet function takes it in a place of its arguments, so that the call finds it read. */
  readArgument(id: string, place: number, value: Value): void;
  /** Runs a worksheet function. Its remarks are kept; its refusal is a Fault with its sentence. */
  call(id: string, values: readonly Value[], expression: Expression): Value;
}

/**
 * A formula that is known as data, so that the pane can compute it and a sheet can hold it. Both sides follow Excel:
 * its blanks, its order of numbers, texts and TRUE, its errors.
 */
export interface Expression {
  /** As typed into a cell, in English and without "=". Throws MissingData where the workbook has no such column. */
  text(names: Names): string;
  /** Of a column: how a reader finds it, "Findings, Date". */
  readonly called?: string;
  /** Of a column: its cells as they stand, list by list, for COUNTIFS and its like. */
  ranges?(names: Names): readonly string[];
  /** The value. Throws a Fault where the cell would show an error. */
  compute(run: Run): Value;
  /** A sum or comparison, which needs brackets inside a longer one. */
  readonly isOpen?: true;
  /** Its value is computed once for the same data and inputs, and then known. */
  readonly isKept?: true;
  /** Kept expressions that it is made of: each may be computed on its own beforehand. */
  readonly steps?: readonly Expression[];
  /** What it is without computing; absent of a formula. */
  readonly constant?: PlainCell;
}

/** A number, text or truth as it stands. null is an empty text, which every function here reads as a blank. */
export function literal(value: PlainCell): Expression {
  const text = literalText(value);
  return { text: () => text, compute: () => value, constant: value };
}

/** An expression as part of a longer one. */
export function bracketed(expression: Expression, names: Names): string {
  const text = expression.text(names);
  return expression.isOpen === true ? `(${text})` : text;
}
