/** Counts the steps of a host and makes some of them fail. */
export interface Faults {
  /** One step: throws where it is to fail. */
  step(): void;
  taken(): number;
  fail(after: number, times: number): void;
}

export function faults(): Faults {
  let taken = 0;
  let from = 0;
  let to = 0;
  return {
    step() {
      const at = taken++;
      if (at >= from && at < to) throw new Error("the host broke off");
    },
    taken: () => taken,
    fail(after, times) {
      from = taken + after;
      to = from + times;
    },
  };
}
