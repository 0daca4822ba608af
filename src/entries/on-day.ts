import { dateOf } from "../core/shared/days";

/** Hour of the day: in every time zone of the machine the day is the same. */
const NOON = 12;

/** Runs with a clock that goes on from a day, so that TODAY() in a file never depends on when it was made. */
export async function onDay<T>(serial: number, run: () => Promise<T>): Promise<T> {
  const RealDate = Date;
  const { year, month, day } = dateOf(serial);
  const ahead = new RealDate(year, month - 1, day, NOON).getTime() - RealDate.now();
  globalThis.Date = class extends RealDate {
    constructor(...parts: readonly unknown[]) {
      super(...((parts.length === 0 ? [RealDate.now() + ahead] : parts) as [number]));
    }
    static override now(): number {
      return RealDate.now() + ahead;
    }
  } as DateConstructor;
  try {
    return await run();
  } finally {
    globalThis.Date = RealDate;
  }
}
