import type { PlainCell } from "../../../../src/workbook/port";
import { MemoryBook } from "../../../../src/workbook/memory/book";
import { findingsTable } from "../../../../src/workbook/tables";
import { table, TODAY } from "./small-book";

const COWS = 5_000;
const FINDINGS = 50_000;
const LESIONS = ["SU", "WL", "DD", "none", "HHE", "SH", "IP", "DD"] as const;
const FEET = ["LF", "RF", "LH", "RH"] as const;

/** A herd of 5,000 cows with 50,000 findings over three years, one in twenty of them open. */
export function largeBook(): MemoryBook {
  const headings = findingsTable.columns.map(({ heading }) => heading);
  const findings = Array.from({ length: FINDINGS }, (_, row): PlainCell[] => {
    const date = TODAY - 1_100 + Math.floor((row * 1_100) / FINDINGS);
    const open = row % 20 === 0;
    const cells: Readonly<Record<string, PlainCell>> = {
      Date: date,
      Cow: 1 + ((row * 7) % COWS),
      Lactation: 1 + (row % 5),
      "Days in milk": row % 300,
      Foot: FEET[row % FEET.length]!,
      Claw: row % 2 === 0 ? "outer" : "inner",
      Zone: 4,
      Lesion: LESIONS[row % LESIONS.length]!,
      Treatment: row % 3 === 0 ? "trim, block" : "topical",
      "Closed on": open ? null : Math.min(TODAY, date + 30),
      Note: row % 10 === 0 ? "looked at in the parlour" : null,
    };
    return headings.map((heading) => cells[heading] ?? null);
  });
  const cows = Array.from({ length: COWS }, (_, index): PlainCell[] => [
    index + 1,
    TODAY - 1_500,
    1 + (index % 5),
    TODAY - (index % 400),
    index % 3 === 0 ? TODAY + (index % 90) : null,
    TODAY - 700,
    index % 17 === 0 ? TODAY - 10 : null,
    ["fresh", "high", "low", "dry"][index % 4]!,
  ]);
  const scores = Array.from({ length: COWS }, (_, index): PlainCell[] => [TODAY - 5, index + 1, index % 4]);
  return new MemoryBook([
    table("Findings", headings, findings),
    table("Cows", ["Cow", "Born", "Lactation", "Calved", "Dry-off", "Entered", "Left", "Group"], cows),
    table("Scores", ["Date", "Cow", "Score"], scores),
  ]);
}
