import { readFileSync } from "node:fs";
import { join } from "node:path";

/** Rows of a table that an oracle script wrote, by heading. Its first line names the program and the script. */
export function oracleTable(name: string): readonly Readonly<Record<string, number>>[] {
  const lines = readFileSync(join(__dirname, "oracles", `${name}.csv`), "utf8")
    .trimEnd()
    .split("\n");
  const headings = lines[1]!.split(",");
  return lines.slice(2).map((line) => {
    const cells = line.split(",");
    return Object.fromEntries(headings.map((heading, index) => [heading, Number(cells[index])]));
  });
}

/** The largest distance between what we compute and the oracle, relative to the oracle's value (absolute below `floor`). */
export function largestDifference(
  pairs: Iterable<readonly [got: number, expected: number]>,
  floor = Number.MIN_VALUE,
): number {
  let largest = 0;
  for (const [got, expected] of pairs) {
    const difference = Math.abs(got - expected) / Math.max(Math.abs(expected), floor);
    if (Number.isNaN(difference)) return Infinity;
    largest = Math.max(largest, difference);
  }
  return largest;
}
