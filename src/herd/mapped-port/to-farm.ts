import { isoDate } from "../../core/shared/days";
import { shown } from "../../core/shared/domain-error";
import { plainValue } from "../../workbook/saving/row-match";
import { columnMissing, TableError } from "../../workbook/table-error";
import { isDay, type NewRow, type TypedValue } from "../../workbook/table-port";
import { placeOf } from "../mapping/mapping";
import { mappedColumns, tableNamed } from "../mapping/targets";
import { foldHeading } from "../read-rows";
import type { FarmList } from "./farm-list";

/** A value for a column of the farm, by the column's place in the list. */
export interface FarmValue {
  readonly place: number;
  readonly value: TypedValue;
}

/**
 * A row of ours in the farm's columns, units and words. Throws where the farm has no column for a value, or where its
 * column could not hold it: nothing that was given is left out. A blank needs no column.
 */
export function toFarm(list: FarmList, row: NewRow): readonly FarmValue[] {
  return Object.entries(row).flatMap(([heading, value]) => {
    const written = farmValue(list, heading, value);
    return written === undefined ? [] : [written];
  });
}

function farmValue(list: FarmList, heading: string, value: TypedValue): FarmValue | undefined {
  const { source, columns } = list;
  const column = columns.find((known) => foldHeading(known.heading) === foldHeading(heading));
  if (column === undefined) {
    if (value === null || value === "") return undefined;
    throw noColumn(list, heading);
  }
  if (column.place === undefined) {
    if (value === null || value === source.landmark) return undefined;
    throw new TableError("unwritable", `All toes of ${placeOf(source)} are measured from ${source.landmark ?? "one place"}, as said under Set up; got ${words(value)}.`); // oxfmt-ignore
  }
  if (column.calculated) {
    throw new TableError("calculated", `Column "${list.farmColumns[column.place]!.heading}" of ${placeOf(source)} fills itself by its formula.`); // oxfmt-ignore
  }
  const own = column.back()(value);
  if (own === undefined) {
    throw new TableError("unwritable", `${heading}: column "${list.farmColumns[column.place]!.heading}" of ${placeOf(source)} has no way to write ${words(value)} so that it is read as the same.`); // oxfmt-ignore
  }
  return { place: column.place, value: own };
}

function noColumn({ source }: FarmList, heading: string): TableError {
  const { table } = source;
  const isOurs = [...tableNamed(table).columns, ...mappedColumns(table)].some((known) => foldHeading(known.heading) === foldHeading(heading)); // oxfmt-ignore
  if (!isOurs) return columnMissing(table, heading);
  return new TableError("column-missing", `The farm's list on ${placeOf(source)} has no column for ${heading}, so nothing was saved. Leave ${heading} blank, or add a column for it and map it under Set up.`); // oxfmt-ignore
}

function words(value: TypedValue): string {
  return isDay(value) ? isoDate(value.day) : shown(plainValue(value));
}
