import type { CellChange } from "../../../workbook/book-port";
import type { Doubt } from "../doubt";

/** What of a check can be put right without a question. */
export interface SafeRepairs {
  /** Cells to be changed together, none twice. */
  readonly cells: readonly CellChange[];
  /** The doubts that they settle. */
  readonly settled: readonly Doubt[];
}

/**
 * The doubts whose repair is certain: numbers and dates that are text and can be read in one way only, values in the
 * other unit than their column by a factor that leaves no doubt, zeros that stand for a blank, cows written with signs
 * around their number. A doubt of which one cell would have to hold two things is left to the user.
 */
export function safeRepairs(doubts: readonly Doubt[]): SafeRepairs {
  const cells = new Map<string, CellChange>();
  const disputed = new Set<string>();
  for (const { sheet, repair } of doubts) {
    for (const { address, from, to } of repair?.cells ?? []) {
      const place = `${sheet}!${address}`;
      const other = cells.get(place);
      if (other !== undefined && !isSame(other.set, to)) disputed.add(place);
      cells.set(place, { sheet, address, was: from, set: to });
    }
  }
  for (const place of disputed) cells.delete(place);
  const isSafe = ({ sheet, repair }: Doubt): boolean =>
    repair !== undefined && repair.cells.every(({ address }) => cells.has(`${sheet}!${address}`));
  const settled = doubts.filter(isSafe);
  const kept = new Set(settled.flatMap(({ sheet, repair }) => repair!.cells.map(({ address }) => `${sheet}!${address}`))); // oxfmt-ignore
  return {
    cells: [...cells].filter(([place]) => kept.has(place)).map(([, change]) => change),
    settled,
  };
}

function isSame(one: CellChange["set"], other: CellChange["set"]): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
