import { cowKey } from "../../cow-rows";
import type { Check } from "../checked-herd";
import type { CheckedTable } from "../checked-table";

interface Entry {
  readonly table: CheckedTable;
  readonly row: number;
  readonly date: number;
  readonly lactation: number;
}

/** Lactation numbers that go down from one day to a later one. */
export const fallingLactations: Check = {
  id: "lactation going down",
  about: "lactation numbers that go down",
  run(herd, report) {
    const byCow = new Map<string, Entry[]>();
    for (const table of herd.named("Findings", "Tests")) {
      if (!table.has("lactation")) continue;
      for (let row = 0; row < table.rowCount; row++) {
        const [cow, date, lactation] = [table.text("cow", row), table.number("date", row), table.number("lactation", row)]; // prettier-ignore
        if (cow === null || date === null || lactation === null || report.has(table, "date", row)) continue;
        const entry = { table, row, date, lactation };
        const list = byCow.get(cowKey(cow));
        if (list === undefined) byCow.set(cowKey(cow), [entry]);
        else list.push(entry);
      }
    }
    for (const entries of byCow.values()) {
      for (const { entry, before } of fallen(entries)) {
        report.cell(entry.table, "lactation", entry.row, {
          level: "wrong",
          wrong: `Lactation ${entry.lactation} does not fit lactation ${before.lactation} in ${before.table.sheet}, ${before.table.mapped.address("lactation", before.row)}.`,
          touches: "First and later lactations are counted apart in losses, targets and toe minimums.",
        });
      }
    }
  },
};

interface Fall {
  readonly entry: Entry;
  /** A row that it contradicts. */
  readonly before: Entry;
}

/** The fewest rows that have to go for the rest to rise: those off the longest rising run. */
function fallen(entries: Entry[]): Fall[] {
  entries.sort((a, b) => a.date - b.date || a.lactation - b.lactation);
  if (entries.every((entry, index) => index === 0 || entry.lactation >= entries[index - 1]!.lactation)) return [];
  const kept = longestRise(entries);
  return entries.flatMap((entry, index): Fall[] => {
    if (kept.has(index)) return [];
    const against = entries.find((other, at) => kept.has(at) && (at < index ? other.lactation > entry.lactation : other.lactation < entry.lactation)); // prettier-ignore
    return against === undefined ? [] : [{ entry, before: against }];
  });
}

/** Places of the longest run that never falls; of two as long, the one that ends lower. */
function longestRise(entries: readonly Entry[]): ReadonlySet<number> {
  const tails: number[] = [];
  const previous: number[] = [];
  entries.forEach(({ lactation }, index) => {
    let at = tails.length;
    while (at > 0 && entries[tails[at - 1]!]!.lactation > lactation) at--;
    previous[index] = at === 0 ? -1 : tails[at - 1]!;
    tails[at] = index;
  });
  const kept = new Set<number>();
  for (let index = tails.at(-1) ?? -1; index >= 0; index = previous[index]!) kept.add(index);
  return kept;
}
