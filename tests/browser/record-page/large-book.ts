import { bookOf, type Row, TODAY } from "../../unit/taskpane/record/herd";
import type { MemoryBook } from "../../../src/workbook/memory/book";

const LESIONS = ["SU", "DD", "WL", "SH", "none", "IH", "HHE"];
const FEET = ["LH", "RH", "LF", "RF"];

/** A workbook as large as a herd fills in many years; rows follow a fixed pattern. */
export function largeBook(cowCount: number, findingCount: number): MemoryBook {
  const cows: Row[] = Array.from({ length: cowCount }, (_, index) => ({
    cow: 1000 + index,
    lactation: 1 + (index % 6),
    calved: TODAY - (index % 300),
    entered: TODAY - 1000,
    group: "high",
  }));
  const findings: Row[] = Array.from({ length: findingCount }, (_, index) => ({
    date: TODAY - 2000 + Math.floor((index * 2000) / findingCount),
    cow: 1000 + ((index * 7919) % cowCount),
    foot: FEET[index % 4]!,
    claw: "outer",
    zone: 4,
    lesion: LESIONS[index % LESIONS.length]!,
    severity: 1 + (index % 3),
    treatment: "trim, block",
  }));
  return bookOf({ cows, findings });
}
