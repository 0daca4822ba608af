import { type ComputedBlock, computeBlock, type InputValues } from "../../../../src/blocks/compute";
import { BlockData } from "../../../../src/blocks/data";
import { visitReport } from "../../../../src/blocks/report/visit-report";
import { day } from "../../../../src/core/shared/days";
import { registry } from "../../../../src/functions/registry";
import { readHerdTables } from "../../../../src/taskpane/parts/live-blocks/read-herd-tables";
import { MemoryBook, type MemoryTable } from "../../../../src/workbook/memory/book";
import type { PlainCell } from "../../../../src/workbook/port";
import { table, userOf } from "../due/small-book";

/** The visit; the one before it is of 2026-06-01 unless another is given. Either time has 92 days. */
export const VISIT = day("2026-09-01");

const specs = new Map(registry.map((spec) => [spec.id, spec]));

/** The block of the report, computed as the screen computes it. */
export async function computedReport(
  tables: readonly MemoryTable[],
  given: InputValues = {},
  names: readonly string[] = ["Findings", "Cows", "Scores", "Tests", "Targets"],
): Promise<ComputedBlock> {
  const herd = await readHerdTables(userOf(new MemoryBook(tables)), names, VISIT);
  return computeBlock(visitReport, new BlockData(herd), (id) => specs.get(id), given);
}

/** Ten cows that were there all the time: 920 cow-days in 92 days. */
export const tenCows = table(
  "Cows",
  ["Cow", "Lactation", "Calved", "Entered", "Left"],
  Array.from({ length: 10 }, (_, at) => [1 + at, 2, day("2026-01-10"), day("2024-01-10"), null]),
);

export type FindingRow = readonly PlainCell[];

export function findingsOf(rows: readonly FindingRow[]): MemoryTable {
  return table("Findings", ["Date", "Cow", "Foot", "Lesion"], rows);
}

const FEET = ["LF", "RF", "LH", "RH"] as const;

/** So many cases of a lesion on a day, each on a foot of its own, from that foot of the ten cows on. */
export function cases(on: string, lesion: string, count: number, from = 0): FindingRow[] {
  return Array.from({ length: count }, (_, at) => {
    const foot = from + at;
    return [day(on), 1 + (foot % 10), FEET[Math.floor(foot / 10)]!, lesion];
  });
}
