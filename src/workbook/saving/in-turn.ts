import { hostFailed, TableError } from "../table-error";

/** Does one piece of work after the other, in the order in which they were asked for. What fails does so as a TableError. */
export function inTurns(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const turn = last.then(work).catch((error: unknown) => {
      throw error instanceof TableError ? error : hostFailed(error);
    });
    last = turn.catch(() => undefined);
    return turn;
  };
}
