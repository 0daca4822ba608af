import { basename } from "node:path";
import { isoDate } from "../../core/shared/days";
import type { BookCheck } from "../../herd/check/check-book";
import type { Doubt, DoubtLevel } from "../../herd/check/doubt";
import type { FileCheck } from "./check-files";

/** Doubts of one kind that are shown; the others are counted. */
const MOST_SHOWN = 5;

/** The line that is shown when a workbook was checked, with what was found in it. */
export function progressLine(file: FileCheck, number: number, files: number): string {
  const head = `[${number}/${files}] ${basename(file.path)}: `;
  if ("failure" in file) return `${head}not read: ${file.failure}`;
  const { check, asOf, milliseconds } = file;
  const rows = check.tables.reduce((sum, { content }) => sum + content.rows.length, 0);
  const lists = check.tables.map(({ resolved: { source } }) => `${source.table} on ${source.sheet}`).join(", ");
  const found = lists === "" ? "no list of a herd" : `${lists}; ${rows.toLocaleString("en-US")} rows`;
  return `${head}${found}; ${tally(check)}, as of ${isoDate(asOf)} (${Math.round(milliseconds)} ms)`;
}

function tally({ doubts }: BookCheck): string {
  const { wrong, doubtful, note } = cellsByLevel(doubts);
  return `${wrong} wrong, ${doubtful} doubtful, ${note} to know`;
}

/** Cells by level; a doubt about a whole column counts once. */
function cellsByLevel(doubts: readonly Doubt[]): Readonly<Record<DoubtLevel, number>> {
  const counts = { wrong: 0, doubtful: 0, note: 0 };
  for (const { level } of doubts) counts[level]++;
  return counts;
}

/** The doubts of a workbook, kind by kind, and what else has to be said. */
export function details({ doubts, remarks }: BookCheck): readonly string[] {
  const byCheck = new Map<string, Doubt[]>();
  for (const doubt of doubts) {
    const list = byCheck.get(doubt.check);
    if (list === undefined) byCheck.set(doubt.check, [doubt]);
    else list.push(doubt);
  }
  return [
    ...remarks.map((remark) => `  ${remark}`),
    ...[...byCheck].flatMap(([check, list]) => [
      `  ${check}: ${list.length}`,
      ...list.slice(0, MOST_SHOWN).map(doubtLine),
      ...(list.length > MOST_SHOWN ? [`    and ${list.length - MOST_SHOWN} more`] : []),
    ]),
  ];
}

function doubtLine({ sheet, address, cells, wrong, repair }: Doubt): string {
  const repairable = repair === undefined ? "" : ` Repair: ${repair.title}.`;
  return `    ${sheet}!${address}${cells > 1 ? ` (${cells} cells)` : ""}: ${wrong}${repairable}`;
}

/** One line a workbook, in columns. */
export function summaryTable(files: readonly FileCheck[]): string {
  const head = ["workbook", "rows", "wrong", "doubtful", "to know", "repairs"];
  const rows = files.map((file): string[] => {
    const name = basename(file.path);
    if ("failure" in file) return [name, "not read", "", "", "", ""];
    const { doubts, tables } = file.check;
    const { wrong, doubtful, note } = cellsByLevel(doubts);
    const repairs = doubts.filter(({ repair }) => repair !== undefined).length;
    const count = tables.reduce((sum, { content }) => sum + content.rows.length, 0);
    return [name, ...[count, wrong, doubtful, note, repairs].map(String)];
  });
  const widths = head.map((heading, column) => Math.max(heading.length, ...rows.map((row) => row[column]!.length)));
  return [head, ...rows]
    .map((row) =>
      row.map((text, column) => (column === 0 ? text.padEnd(widths[0]!) : text.padStart(widths[column]!))).join("  "),
    ) // oxfmt-ignore
    .join("\n");
}

const EXIT = { well: 0, failed: 1, doubtful: 2 } as const;

/** The exit code: see the help of the command. */
export function exitCode(files: readonly FileCheck[]): number {
  if (files.some((file) => "failure" in file || file.check.tables.length === 0)) return EXIT.failed;
  const isDoubtful = (file: FileCheck): boolean => !("failure" in file) && file.check.doubts.some(({ level }) => level !== "note"); // oxfmt-ignore
  return files.some(isDoubtful) ? EXIT.doubtful : EXIT.well;
}
