import type { FunctionSpec, ResultValue } from "../functions/define";

/** One run of a worksheet function in a cell. */
export interface RecordedCall {
  readonly spec: FunctionSpec;
  /** The arguments as the evaluator takes them. */
  readonly rawArguments: readonly unknown[];
  readonly outcome: CallResult | CallError;
}

export interface CallResult {
  readonly value: ResultValue;
  readonly remarks: readonly string[];
}

export interface CallError {
  /** #VALUE! or #N/A. */
  readonly error: string;
  readonly message: string;
}

/** Columns counted together may take some hundred megabytes; beyond this the oldest calls are forgotten. */
const MOST_VALUES_KEPT = 5_000_000;

interface KeptCell {
  readonly calls: readonly RecordedCall[];
  readonly values: number;
}

/**
 * Remembers the last run of every worksheet function by cell, for the messages of errors and for the pane that shows
 * the working. Cells are named as the grid names them: the sheet's id, row and column from 0.
 */
export class CallLog {
  private readonly cells = new Map<string, KeptCell>();
  private running: RecordedCall[] = [];
  private valuesKept = 0;

  constructor(private readonly mostValues = MOST_VALUES_KEPT) {}

  /** The runs in that cell, in the order in which they ended: of nested calls the inner one stands first. */
  callsAt(sheetId: string, row: number, column: number): readonly RecordedCall[] {
    return this.cells.get(key(sheetId, row, column))?.calls ?? [];
  }

  /** The last run in that cell: of nested calls the outer one. */
  callAt(sheetId: string, row: number, column: number): RecordedCall | undefined {
    return this.callsAt(sheetId, row, column).at(-1);
  }

  /** What the last run that ended in this error said. */
  messageAt(sheetId: string, row: number, column: number, error: string): string | undefined {
    const outcomes = this.callsAt(sheetId, row, column).map(({ outcome }) => outcome);
    return outcomes.filter((outcome): outcome is CallError => "error" in outcome && outcome.error === error).at(-1)
      ?.message;
  }

  /** A function has run in the cell that is being computed. */
  add(call: RecordedCall): void {
    this.running.push(call);
  }

  /** The cell that was being computed is done. */
  cellDone(sheetId: string, row: number, column: number): void {
    const place = key(sheetId, row, column);
    const before = this.cells.get(place);
    if (before !== undefined) {
      this.cells.delete(place);
      this.valuesKept -= before.values;
    }
    if (this.running.length === 0) return;
    const values = this.running.reduce((sum, { rawArguments }) => sum + valuesIn(rawArguments), 0);
    this.cells.set(place, { calls: this.running, values });
    this.valuesKept += values;
    this.running = [];
    this.forgetOldest();
  }

  /** What has run so far belongs to no cell. */
  dropRunning(): void {
    this.running = [];
  }

  /** Forgets everything: another workbook is opened, or cells have moved. */
  clear(): void {
    this.cells.clear();
    this.running = [];
    this.valuesKept = 0;
  }

  private forgetOldest(): void {
    for (const [place, { values }] of this.cells) {
      if (this.valuesKept <= this.mostValues || this.cells.size === 1) return;
      this.cells.delete(place);
      this.valuesKept -= values;
    }
  }
}

function key(sheetId: string, row: number, column: number): string {
  return `${sheetId}!${row},${column}`;
}

function valuesIn(rawArguments: readonly unknown[]): number {
  return rawArguments.reduce<number>((sum, raw) => {
    const rows = Array.isArray(raw) ? (raw as readonly (readonly unknown[])[]) : [];
    return sum + 1 + rows.length * (rows[0]?.length ?? 0);
  }, 0);
}
