import type { DaySerial } from "../shared/days";
import type { AftercareJob, AftercareKind } from "./aftercare";

/** One thing to do: row of its finding, counted from 0, and what to do by when. */
export interface DueRow {
  readonly finding: number;
  readonly kind: AftercareKind;
  readonly what: string;
  readonly due: DaySerial;
}

/** Larger than any number of rows; times the last day still a whole number that a double holds exactly. */
const STRIDE = 2 ** 28;

/** What is due, by day, things of one day in the order in which they were added; very many without an object each. */
export class DueRows {
  readonly #findings: number[] = [];
  readonly #jobs: AftercareJob[] = [];
  /** Day and place of each thing in one number. */
  readonly #keys: number[] = [];
  #sorted: Float64Array | undefined;

  get length(): number {
    return this.#keys.length;
  }

  /** Adds what is due; all before the first is read. */
  add(finding: number, job: AftercareJob, due: DaySerial): void {
    this.#keys.push(due * STRIDE + this.#keys.length);
    this.#findings.push(finding);
    this.#jobs.push(job);
  }

  finding(index: number): number {
    return this.#findings[this.#placeOf(index)]!;
  }

  job(index: number): AftercareJob {
    return this.#jobs[this.#placeOf(index)]!;
  }

  due(index: number): DaySerial {
    return Math.floor(this.#inOrder()[index]! / STRIDE);
  }

  list(): DueRow[] {
    return Array.from({ length: this.length }, (_, index) => {
      const { kind, what } = this.job(index);
      return { finding: this.finding(index), kind, what, due: this.due(index) };
    });
  }

  #placeOf(index: number): number {
    return this.#inOrder()[index]! % STRIDE;
  }

  #inOrder(): Float64Array {
    return (this.#sorted ??= new Float64Array(this.#keys).sort());
  }
}
