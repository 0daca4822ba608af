import type { MappedColumn, MappedSource, Mapping, Unit } from "../../../herd/mapping/mapping";
import { columnLetters } from "../../../workbook/plain-book";
import { type HerdTableName, herdTables, mappedColumns, tableNamed } from "../../../herd/mapping/targets";
import type { FoundList, ListColumn } from "./found-lists";
import { needsLandmark, NOT_KNOWN } from "./landmark";

/** What a list of animals is, in the words of the farm. */
export const TABLE_NAMES: Readonly<Record<HerdTableName, string>> = {
  Cows: "the cows of the herd",
  Findings: "findings on feet",
  Scores: "mobility scores",
  Tests: "milk tests",
};

/** From these certainties on a guess is called sure, or likely. They are an order of trust, no shares. */
const SURE_FROM = 0.75;
const LIKELY_FROM = 0.5;

export type Certainty = "sure" | "likely" | "please say";

/** How sure the guess at a column is; a unit that is not known has to be said. */
export function certaintyOf({ certainty, units, unit }: ListColumn): Certainty {
  if (certainty < LIKELY_FROM || (units.length > 0 && unit === undefined)) return "please say";
  return certainty < SURE_FROM ? "likely" : "sure";
}

/** Where a list stands: "table Gaits", or "plain cells, headings in row 4". */
export function placeText({ source, headingRow }: FoundList): string {
  return source === undefined ? `plain cells, headings in row ${headingRow + 1}` : `table ${source}`;
}

/** A list that is read, stands in plain cells and has its headings in one row. */
export function canBeTable({ source, readAs, oneHeadingRow }: FoundList): boolean {
  return source === undefined && readAs !== "" && oneHeadingRow;
}

/** What keeps a list from being kept as it is; plain sentences. */
export function openPoints(list: FoundList): readonly string[] {
  if (list.readAs === "" || list.own) return [];
  const points: string[] = [];
  const byKey = new Map<string, ListColumn[]>();
  for (const column of list.columns) {
    if (column.key !== "") byKey.set(column.key, [...(byKey.get(column.key) ?? []), column]);
    if (column.key !== "" && column.units.length > 0 && column.unit === undefined) {
      points.push(`Say how ${nameOf(column)} is written.`);
    }
  }
  for (const [key, columns] of byKey) {
    if (columns.length < 2) continue;
    points.push(`${columns.map(nameOf).join(" and ")} are both read as ${headingOf(list.readAs, key)}: choose one.`);
  }
  if (!byKey.has("cow")) points.push("No column is read as Cow: without it no row can be told apart.");
  if (needsLandmark(list) && list.landmark === undefined) points.push("Say where the toes were measured from.");
  return points;
}

/**
 * Lists that no row of the Mapping sheet could tell apart: of one kind, in plain cells of one sheet. A sentence for each
 * such sheet.
 */
export function listsAlike(lists: readonly FoundList[]): readonly string[] {
  const plain = lists.filter(({ readAs, source, own }) => readAs !== "" && source === undefined && !own);
  const seen = new Map<string, number>();
  for (const { readAs, sheet } of plain) seen.set(`${sheet}\n${readAs}`, (seen.get(`${sheet}\n${readAs}`) ?? 0) + 1);
  return [...seen].flatMap(([key, count]) => {
    const [sheet, readAs] = key.split("\n") as [string, HerdTableName];
    return count < 2 ? [] : [`${sheet}: ${count} lists in plain cells are both read as ${TABLE_NAMES[readAs]}: make one of them a table, or leave one unread.`]; // oxfmt-ignore
  });
}

/** What rows of the list will lack, beside what is asked for. */
export function missingFrom(list: FoundList): readonly string[] {
  if (list.readAs === "" || list.own) return [];
  const keys = new Set(list.columns.map(({ key }) => key));
  return tableNamed(list.readAs)
    .columns.filter(({ key, required }) => required === true && key !== "cow" && !keys.has(key))
    .map(({ heading }) => heading);
}

/** `"Visit" (column A)`. */
export function nameOf({ heading, column }: Pick<ListColumn, "heading" | "column">): string {
  const letters = columnLetters(column);
  return heading === "" ? `column ${letters}` : `"${heading}" (column ${letters})`;
}

export function headingOf(table: HerdTableName, key: string): string {
  return mappedColumns(table).find((column) => column.key === key)?.heading ?? key;
}

/** A column with the reason that the Mapping sheet notes beside it. */
interface NotedColumn extends MappedColumn {
  readonly because: string;
}

/** The mapping that lists stand for. */
export function mappingOf(lists: readonly FoundList[]): Mapping {
  const sources = lists.flatMap((list): MappedSource[] => {
    const { readAs, sheet, source, headingRow, columns, landmark } = list;
    if (readAs === "") return [];
    const read = columns.filter(({ key }) => key !== "");
    return [
      {
        table: readAs,
        sheet,
        source,
        headingRow,
        columns: read.map(mappedColumn),
        ...(needsLandmark(list) && landmark !== undefined && landmark !== NOT_KNOWN ? { landmark } : {}),
      },
    ];
  });
  return { sources };
}

function mappedColumn({ key, heading, column, unit, because }: ListColumn): NotedColumn {
  return { key, heading, column, because, ...(unit === undefined ? {} : { unit }) };
}

/** Values of ours that a column of a list may be read as. */
export function choicesFor(table: HerdTableName): readonly (readonly [key: string, heading: string])[] {
  return mappedColumns(table).map(({ key, heading }) => [key, heading]);
}

export const TABLE_CHOICES: readonly HerdTableName[] = herdTables.map(({ name }) => name);

/** Units in words. */
export const UNIT_NAMES: Readonly<Record<Unit, string>> = {
  "thousand cells/mL": "thousand cells per mL",
  "cells/mL": "cells per mL",
  kg: "kg",
  litres: "litres",
  lb: "lb (pounds)",
  mm: "mm",
  cm: "cm",
  inches: "inches",
  "0-3": "0 to 3",
  "1-5": "1 to 5",
  "day first": "day first (31/12/2026)",
  "month first": "month first (12/31/2026)",
  "year first": "year first (2026-12-31)",
};

/** The question that a unit answers. */
export function unitQuestion(key: string): string {
  if (key === "score") return "Scale";
  return ["count", "milkKg", "toeMm"].includes(key) ? "Unit" : "Day and month";
}
