import { orderByDay } from "../shared/day-order";
import type { DaySerial } from "../shared/days";
import type { AftercareJob, AftercareKind } from "./aftercare";

/** One thing to do: row of its finding, counted from 0, and what to do by when. */
export interface DueRow {
  readonly finding: number;
  readonly kind: AftercareKind;
  readonly what: string;
  readonly due: DaySerial;
}

const FEWEST = 64;

/** What is due, by day, things of one day in the order in which they were added; very many without an object each. */
export class DueRows {
  #findings = new Int32Array(FEWEST);
  #days = new Int32Array(FEWEST);
  readonly #jobs: AftercareJob[] = [];
  #order: Int32Array | undefined;

  get length(): number {
    return this.#jobs.length;
  }

  /** Adds what is due; all before the first is read. */
  add(finding: number, job: AftercareJob, due: DaySerial): void {
    const place = this.#jobs.length;
    if (place === this.#days.length) {
      this.#findings = twiceAsLong(this.#findings);
      this.#days = twiceAsLong(this.#days);
    }
    this.#findings[place] = finding;
    this.#days[place] = due;
    this.#jobs.push(job);
  }

  finding(index: number): number {
    return this.#findings[this.#inOrder()[index]!]!;
  }

  job(index: number): AftercareJob {
    return this.#jobs[this.#inOrder()[index]!]!;
  }

  due(index: number): DaySerial {
    return this.#days[this.#inOrder()[index]!]!;
  }

  list(): DueRow[] {
    return Array.from({ length: this.length }, (_, index) => {
      const { kind, what } = this.job(index);
      return { finding: this.finding(index), kind, what, due: this.due(index) };
    });
  }

  #inOrder(): Int32Array {
    const asAdded = (): Int32Array => new Int32Array(this.length).map((_, place) => place);
    return (this.#order ??= orderByDay(asAdded(), this.#days));
  }
}

function twiceAsLong(numbers: Int32Array): Int32Array<ArrayBuffer> {
  const longer = new Int32Array(2 * numbers.length);
  longer.set(numbers);
  return longer;
}
