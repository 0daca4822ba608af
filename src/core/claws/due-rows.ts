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
    return (this.#order ??= orderOf(this.#days.subarray(0, this.length)));
  }
}

function twiceAsLong(numbers: Int32Array): Int32Array<ArrayBuffer> {
  const longer = new Int32Array(2 * numbers.length);
  longer.set(numbers);
  return longer;
}

/** Places by day, those of a day as they stand. A worksheet's days are few enough to count the things of each. */
function orderOf(days: Int32Array): Int32Array {
  let [first, last] = [days[0] ?? 0, days[0] ?? 0];
  for (const day of days) {
    if (day < first) first = day;
    if (day > last) last = day;
  }
  /** How many things are due before each day, and soon after it is used the next free place of that day. */
  const places = new Int32Array(last - first + 2);
  for (const day of days) places[day - first + 1]!++;
  for (let day = 1; day < places.length; day++) places[day]! += places[day - 1]!;
  const order = new Int32Array(days.length);
  for (let place = 0; place < days.length; place++) order[places[days[place]! - first]!++] = place;
  return order;
}
