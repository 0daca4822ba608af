import { disorderOf } from "../../core/claws/disorder-key";
import { SOUND } from "../../core/claws/findings";
import { milkInKg } from "../../core/shared/milk-units";
import { LesionWords } from "../../herd/codes/words";
import { columnCells } from "../../herd/mapping/block";
import { converter } from "../../herd/mapping/convert";
import { DAY_ORDERS, type MappedColumn, placeOf } from "../../herd/mapping/mapping";
import type { ResolvedMapping, ResolvedSource } from "../../herd/mapping/resolve";
import { isHerdTable, mappedColumns } from "../../herd/mapping/targets";
import { foldHeading } from "../../herd/read-rows";
import { cellAddress } from "../../workbook/cell-address";
import type { PlainCell } from "../../workbook/port";
import type { TableContent, TableInfo } from "../../workbook/table-port";
import { wordsTable } from "../../workbook/words-table";
import { missingColumn } from "../expression/columns";
import { MissingData } from "../expression/fault";
import type { References } from "../expression/names";
import { literalText } from "../expression/values";
import { headingOf } from "../tables";
import { ownReferences, tableColumn } from "./own";

/** A workbook with lists of the farm's own. */
export interface MappedWorkbook {
  readonly resolved: ResolvedMapping;
  /** All its tables. */
  readonly tables: readonly TableInfo[];
  /** The table of the farm's words; absent where there is none. */
  readonly words?: TableContent;
  readonly hasAsOf: boolean;
}

/**
 * How formulas name the farm's own lists: its units and words are turned into ours inside the formula, so that every
 * figure is the same as from our own tables.
 */
export function mappedReferences({ resolved, tables, words, hasAsOf }: MappedWorkbook): References {
  const own = ownReferences(tables, hasAsOf);
  const sources = new Map(resolved.sources.map((found) => [found.source.table as string, found]));
  const mapped = (table: string, key: string): { found: ResolvedSource; column: MappedColumn } | undefined => {
    const found = sources.get(table);
    if (found === undefined) return undefined;
    const column = found.source.columns.find((known) => known.key === key);
    if (column === undefined) throw missingColumn(table, key, true);
    return { found, column };
  };
  const score = sources.get("Scores")?.source.columns.find(({ key }) => key === "score");
  return {
    ...own,
    column(table, key) {
      const place = mapped(table, key);
      return place === undefined ? own.column(table, key) : translated(place.found, place.column, words);
    },
    range(table, key) {
      const place = mapped(table, key);
      if (place === undefined) return own.range(table, key);
      const text = rangeText(place.found, place.column);
      if (translated(place.found, place.column, words) === text) return text;
      throw new MissingData(
        `${table}, ${headingOf(table, key)}: the farm's words or units cannot be translated inside this formula. The pane shows the figure.`,
      );
    },
    scale: score?.unit === "1-5" ? "1-5" : "0-3",
    notes: [...sources.values()].flatMap(({ source, block }) =>
      block.table === undefined
        ? [
            `${source.table} stands as a plain range on ${placeOf(source)}: rows written below it are not in these formulas until it is a table.`,
          ]
        : [],
    ),
  };
}

/** The cells of a mapped column as they stand. */
function rangeText({ block }: ResolvedSource, { heading, column }: MappedColumn): string {
  if (block.table !== undefined) return tableColumn(block.table, heading);
  const at = (row: number): string => cellAddress({ row, column }).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
  return `'${block.sheet.name.replaceAll("'", "''")}'!${at(block.firstRow)}:${at(block.lastRow)}`;
}

const CELLS_PER_THOUSAND = 1000;

function translated(found: ResolvedSource, column: MappedColumn, words: TableContent | undefined): string {
  const { table } = found.source;
  const { key, unit } = column;
  const text = rangeText(found, column);
  const numbers = (change: string): string => `IF(ISNUMBER(${text}),${text}${change},${text})`;
  if (key === "count" && unit === "cells/mL") return numbers(`/${CELLS_PER_THOUSAND}`);
  if (key === "milkKg" && (unit === "litres" || unit === "lb")) return numbers(`*${milkInKg(1, unit)}`);
  if (isHerdTable(table) && DAY_ORDERS.some((order) => order === unit)) {
    throw new MissingData(
      `${table}, ${headingOf(table, key)}: the days are written as text. Turn them into dates under Set up, then formulas can use them.`,
    );
  }
  const { holds } = mappedColumns(table).find((known) => known.key === key)!;
  if (holds === "lesion") return lesionText(found, column, words, text);
  if (holds === "choice") return choiceText(found, column, text);
  return text;
}

/** The different texts of a column. */
function textsOf({ block }: ResolvedSource, { column }: MappedColumn): readonly string[] {
  const place = block.columns.find((known) => known.column === column);
  if (place === undefined) return [];
  const texts = columnCells(block, place).filter((cell): cell is string => typeof cell === "string");
  return [...new Map(texts.map((text) => [text.trim().toLowerCase(), text.trim()])).values()];
}

/** The farm's words become codes through its Words table, so that a word added there counts at once. */
function lesionText(
  found: ResolvedSource,
  column: MappedColumn,
  words: TableContent | undefined,
  text: string,
): string {
  const known = new LesionWords(words);
  const isCode = (word: string): boolean => word.toLowerCase() === SOUND || disorderOf(word) !== undefined;
  const inTable = codesByWord(words);
  const texts = textsOf(found, column);
  const strange = texts.find(
    (word) => !inTable.has(word.toLowerCase()) && !isCode(word) && known.codeOf(word) !== undefined,
  );
  if (strange !== undefined) {
    throw new MissingData(
      `Findings, Lesion: write "${strange}" under Words as it is written in the list, then formulas can use it.`,
    );
  }
  if (words === undefined || texts.every((word) => !inTable.has(word.toLowerCase()))) return text;
  const [word, code] = (["Word", "Code"] as const).map((heading) => `${wordsTable.name}[${heading}]`);
  const filled = `${code}<>""`;
  return `IFNA(XLOOKUP(${text},FILTER(${word},${filled},""),FILTER(${code},${filled},"")),${text})`;
}

function codesByWord(words: TableContent | undefined): ReadonlySet<string> {
  if (words === undefined) return new Set();
  const place = (heading: string): number =>
    words.columns.findIndex((column) => foldHeading(column.heading) === foldHeading(heading));
  const [word, code] = [place("Word"), place("Code")];
  const filled = words.rows.filter((row) => !isBlank(row[word]) && !isBlank(row[code]));
  return new Set(filled.map((row) => String(row[word]).trim().toLowerCase()));
}

function isBlank(cell: PlainCell | undefined): boolean {
  return cell === null || cell === undefined || cell === "";
}

/** The few words of a foot, a claw and the like are translated one by one. */
function choiceText(found: ResolvedSource, column: MappedColumn, text: string): string {
  const definition = mappedColumns(found.source.table).find(({ key }) => key === column.key)!;
  const convert = converter(column, definition, new LesionWords());
  const pairs = textsOf(found, column).flatMap((word) => {
    const ours = convert(word);
    return typeof ours === "string" && ours.toLowerCase() !== word.toLowerCase() ? [[word, ours] as const] : [];
  });
  if (pairs.length === 0) return text;
  const list = (side: 0 | 1): string => `{${pairs.map((pair) => literalText(pair[side])).join(";")}}`;
  return `IFNA(XLOOKUP(${text},${list(0)},${list(1)}),${text})`;
}
