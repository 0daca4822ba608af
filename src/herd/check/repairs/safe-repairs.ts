import { foldCompact } from "../../fold-words";
import { choiceReaders } from "../../mapping/convert";
import type { CellChange, CellChanges } from "../../../workbook/book-port";
import type { PlainCell } from "../../../workbook/port";
import type { MappedTable } from "../../mapping/read-mapped";
import { mappedColumns } from "../../mapping/targets";
import type { BookCheck } from "../check-book";
import type { Doubt } from "../doubt";

/** What of a check can be put right without a question, and what is left to the user. */
export interface SafeRepairs {
  /** Cells to be changed together, none twice. */
  readonly cells: readonly CellChange[];
  /** The doubts that they settle. */
  readonly settled: readonly Doubt[];
  /** The doubts of which nobody but the user knows what the cell should hold. */
  readonly left: readonly Doubt[];
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
  const kept = new Set(settled.flatMap(({ sheet, repair }) => repair!.cells.map(({ address }) => `${sheet}!${address}`))); // prettier-ignore
  return {
    cells: [...cells].filter(([place]) => kept.has(place)).map(([, change]) => change),
    settled,
    left: doubts.filter((doubt) => !isSafe(doubt)),
  };
}

/** The change that makes all safe repairs at once; undefined where there are none. */
export function repairChange(repairs: SafeRepairs, id: string): CellChanges | undefined {
  const { length } = repairs.cells;
  if (length === 0) return undefined;
  return { id, title: `${length} ${length === 1 ? "cell" : "cells"} repaired`, cells: repairs.cells };
}

function isSame(one: CellChange["set"], other: CellChange["set"]): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/**
 * Cells that are read well and could be neater: spaces around a word, and words of the farm written in several ways
 * ("LH ", "lh"). Nothing is wrong with them, so they are no doubts: they are changed only where the user asks for it.
 */
export function neaterWords({ tables }: Pick<BookCheck, "tables">): readonly CellChange[] {
  return tables.flatMap((table) =>
    mappedColumns(table.resolved.source.table)
      .filter(
        ({ key, holds }) => table.column(key) !== undefined && (holds === "lesion" || choiceReaders[key] !== undefined),
      )
      .flatMap(({ key }) => neaterIn(table, key)),
  );
}

/** Words that differ by nothing but spaces and capitals become the one that is written most often. */
function neaterIn(table: MappedTable, key: string): CellChange[] {
  const spellings = new Map<string, Map<string, number>>();
  const rows = table.content.rows.map((_, index): PlainCell => table.cell(key, index));
  for (const cell of rows) {
    if (typeof cell !== "string") continue;
    const counts = spellings.get(foldCompact(cell)) ?? new Map<string, number>();
    spellings.set(foldCompact(cell), counts);
    counts.set(cell.trim(), (counts.get(cell.trim()) ?? 0) + 1);
  }
  const usual = new Map([...spellings].map(([key, counts]) => [key, mostFrequent(counts)]));
  return rows.flatMap((cell, index) => {
    if (typeof cell !== "string") return [];
    const set = usual.get(foldCompact(cell))!;
    const isOnlyCase = set.toLowerCase() === cell.trim().toLowerCase();
    if (set === cell || !isOnlyCase) return [];
    return [{ sheet: table.resolved.source.sheet, address: table.address(key, index), was: cell, set }];
  });
}

function mostFrequent(counts: ReadonlyMap<string, number>): string {
  return [...counts].sort(([, a], [, b]) => b - a)[0]![0];
}
