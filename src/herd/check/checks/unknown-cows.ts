import { cowKey } from "../../cow-rows";
import type { Check, CheckedHerd } from "../checked-herd";

/** Cows that stand in a record and not in the list of cows. */
export const unknownCows: Check = {
  id: "unknown cow",
  about: "cows that are not in the herd list",
  run(herd, report) {
    if (!herd.hasCows) return;
    const plain = plainKeys(herd);
    for (const table of herd.records) {
      for (let row = 0; row < table.rowCount; row++) {
        const key = table.cowKey(row);
        if (key === "" || herd.cow(key) !== undefined) continue;
        const name = table.text("cow", row)!;
        const meant = plain.get(plainKey(name));
        report.cell(table, "cow", row, {
          level: "wrong",
          wrong:
            meant === undefined
              ? `Cow ${name} is not in the list of cows.`
              : `Cow ${name} is not in the list of cows; ${meant} is.`,
          touches: "She is missing in herd rates, in her group and in the list of what is due.",
          ...(meant === undefined ? {} : { repair: { title: `write ${meant}`, to: asCell(meant) } }),
        });
      }
    }
  },
};

/** Numbers without signs, spaces and leading zeros: "#0212" -> "212". */
function plainKey(name: string): string {
  return cowKey(name)
    .replace(/[^\p{L}\p{N}]+/gu, "")
    .replace(/^0+(?=\d)/, "");
}

/** The cows by plain key; a key that two cows share is left out. */
function plainKeys({ cowKeys }: CheckedHerd): ReadonlyMap<string, string> {
  const plain = new Map<string, string>();
  const twice = new Set<string>();
  for (const key of cowKeys) {
    if (plain.has(plainKey(key))) twice.add(plainKey(key));
    plain.set(plainKey(key), key);
  }
  for (const key of twice) plain.delete(key);
  return plain;
}

function asCell(name: string): number | string {
  return /^[1-9]\d{0,14}$/.test(name) ? Number(name) : name;
}
