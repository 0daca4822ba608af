import { milkInKg } from "../../core/shared/milk-units";
import { CELLS_PER_THOUSAND } from "../../herd/mapping/convert";
import { scaleIn } from "../../herd/mapped-port/scale-of";
import { DAY_ORDERS, type MappedColumn, placeOf } from "../../herd/mapping/mapping";
import type { ResolvedMapping, ResolvedSource } from "../../herd/mapping/resolve";
import { isHerdTable, mappedColumns } from "../../herd/mapping/targets";
import { cellAddress } from "../../workbook/cell-address";
import type { TableContent, TableInfo } from "../../workbook/table-port";
import { missingColumn } from "../expression/columns";
import { MissingData } from "../expression/fault";
import type { References } from "../expression/names";
import { headingOf } from "../tables";
import { choiceText, lesionText } from "./farm-words";
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

/** A column of ours in one of the farm's lists. */
interface ColumnInList {
  readonly list: ResolvedSource;
  readonly column: MappedColumn;
}

/**
 * How formulas name the farm's own lists: its units and words are turned into ours inside the formula, so that every
 * figure is the same as from our own tables. Several lists of one table, such as a sheet a year, stand one below the
 * other in the formula.
 */
export function mappedReferences({ resolved: { sources }, tables, words, hasAsOf }: MappedWorkbook): References {
  const own = ownReferences(tables, hasAsOf);
  /** The column in every list of a table; undefined where the table is none of the farm's lists. */
  const inLists = (table: string, key: string): readonly ColumnInList[] | undefined => {
    const lists = sources.filter(({ source }) => source.table === table);
    if (lists.length === 0) return undefined;
    const columns = lists.map((list) => ({ list, column: list.source.columns.find((known) => known.key === key) }));
    const found = columns.filter((each): each is ColumnInList => each.column !== undefined);
    if (found.length === 0) throw missingColumn(table, key, true);
    const without = columns.find(({ column }) => column === undefined);
    if (without === undefined) return found;
    throw new MissingData(
      `${table}, ${headingOf(table, key)}: ${placeOf(without.list.source)} has no such column and another list has, so no formula can name it for both. The pane shows the figure.`,
    );
  };
  const ranges = (table: string, key: string): readonly string[] => {
    const places = inLists(table, key);
    if (places === undefined) return own.ranges(table, key);
    return places.map((place) => {
      const text = rangeText(place);
      if (translated(place, words) === text) return text;
      throw new MissingData(
        `${table}, ${headingOf(table, key)}: the farm's words or units cannot be translated inside this formula. The pane shows the figure.`,
      );
    });
  };
  return {
    ...own,
    column(table, key) {
      const places = inLists(table, key);
      if (places === undefined) return own.column(table, key);
      const texts = places.map((place) => translated(place, words));
      return texts.length === 1 ? texts[0]! : `VSTACK(${texts.join(",")})`;
    },
    range(table, key) {
      const found = ranges(table, key);
      if (found.length === 1) return found[0]!;
      const lists = sources.filter(({ source }) => source.table === table).map(({ source }) => placeOf(source));
      throw new MissingData(
        `${table} stands in ${found.length} lists (${lists.join(", ")}), and this formula can ask only one. The pane shows the figure.`,
      );
    },
    ranges,
    scale: scaleIn(sources.map(({ source }) => source)),
    notes: sources.flatMap(({ source, block }) =>
      block.table === undefined
        ? [
            `${source.table} stands as a plain range on ${placeOf(source)}: rows written below it are not in these formulas until it is a table.`,
          ]
        : [],
    ),
  };
}

/** The cells of a mapped column as they stand. */
function rangeText({ list: { block }, column: { heading, column } }: ColumnInList): string {
  if (block.table !== undefined) return tableColumn(block.table, heading);
  const at = (row: number): string => cellAddress({ row, column }).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
  return `'${block.sheet.name.replaceAll("'", "''")}'!${at(block.firstRow)}:${at(block.lastRow)}`;
}

function translated(place: ColumnInList, words: TableContent | undefined): string {
  const { list, column } = place;
  const { table } = list.source;
  const { key, unit } = column;
  const text = rangeText(place);
  const numbers = (change: string): string => `IF(ISNUMBER(${text}),${text}${change},${text})`;
  if (key === "count" && unit === "cells/mL") return numbers(`/${CELLS_PER_THOUSAND}`);
  if (key === "milkKg" && (unit === "litres" || unit === "lb")) return numbers(`*${milkInKg(1, unit)}`);
  if (isHerdTable(table) && DAY_ORDERS.some((order) => order === unit)) {
    throw new MissingData(
      `${table}, ${headingOf(table, key)}: the days are written as text. Turn them into dates under Set up, then formulas can use them.`,
    );
  }
  const { holds } = mappedColumns(table).find((known) => known.key === key)!;
  if (holds === "lesion") return lesionText(list, column, words, text);
  if (holds === "choice") return choiceText(list, column, text);
  return text;
}
