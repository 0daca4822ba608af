/** Where the last writes of a workbook are remembered, oldest first, so that each is done once and can be taken back. */
export interface Log<Entry> {
  read(): readonly Entry[];
  write(entries: readonly Entry[]): void;
}

/** A log that lasts as long as the page. */
export function logInMemory<Entry>(): Log<Entry> {
  let kept: readonly Entry[] = [];
  return {
    read: () => kept,
    write: (entries) => {
      kept = entries;
    },
  };
}

/** Writes further back are the sheet's own: taking one back among so many later ones would surprise. */
export const WRITES_KEPT = 20;

interface Named {
  readonly id: string;
}

/**
 * The log with one entry put in, in place of what it says of the same id. The oldest ones make room only for what is
 * done: an attempt that is refused costs none of them.
 */
export function withEntry<Entry extends Named>(
  entries: readonly Entry[],
  entry: Entry,
  isDone: boolean,
): readonly Entry[] {
  const all = [...without(entries, entry.id), entry];
  return isDone ? all.slice(-WRITES_KEPT) : all;
}

export function without<Entry extends Named>(entries: readonly Entry[], id: string): readonly Entry[] {
  return entries.filter((entry) => entry.id !== id);
}
