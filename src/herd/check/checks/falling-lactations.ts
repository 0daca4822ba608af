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
        const [cow, date, lactation] = [table.cowKey(row), table.number("date", row), table.number("lactation", row)]; // oxfmt-ignore
        if (cow === "" || date === null || lactation === null || report.has(table, "date", row)) continue;
        const entry = { table, row, date, lactation };
        const list = byCow.get(cow);
        if (list === undefined) byCow.set(cow, [entry]);
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

/** Rows of a cow beyond which only neighbours are compared. */
const MOST_COMPARED = 300;

/** The rows that have to go for the rest to rise: each time the one that contradicts most others, then the rarest. */
function fallen(entries: Entry[]): Fall[] {
  entries.sort((a, b) => a.date - b.date || a.lactation - b.lactation);
  let left = entries;
  const falls: Fall[] = [];
  while (left.some((entry, index) => index > 0 && entry.lactation < left[index - 1]!.lactation)) {
    const worst = left.length > MOST_COMPARED ? firstFall(left) : mostContradicted(left);
    falls.push(worst);
    left = left.filter((entry) => entry !== worst.entry);
  }
  return falls;
}

function firstFall(entries: readonly Entry[]): Fall {
  const at = entries.findIndex((entry, index) => index > 0 && entry.lactation < entries[index - 1]!.lactation);
  return { entry: entries[at]!, before: entries[at - 1]! };
}

function mostContradicted(entries: readonly Entry[]): Fall {
  const ranked = entries.map((entry, index) => ({
    entry,
    against: entries.filter((other, at) =>
      at < index ? other.lactation > entry.lactation : other.lactation < entry.lactation,
    ),
    alike: entries.filter(({ lactation }) => lactation === entry.lactation).length,
  }));
  const [worst] = ranked.sort((a, b) => b.against.length - a.against.length || a.alike - b.alike || b.entry.date - a.entry.date); // oxfmt-ignore
  return { entry: worst!.entry, before: worst!.against[0]! };
}
