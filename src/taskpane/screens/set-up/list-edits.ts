import type { Unit } from "../../../herd/mapping/mapping";
import type { HerdTableName } from "../../../herd/mapping/targets";
import type { PlainBook } from "../../../workbook/plain-book";
import { type FoundList, type ListColumn, readColumnAs, readListAs } from "./found-lists";

/** What a user says of a list; `list` is its id. */
export type ListEdit =
  | { readonly type: "list read as"; readonly list: string; readonly table: HerdTableName | "" }
  | { readonly type: "column read as"; readonly list: string; readonly column: number; readonly key: string }
  | { readonly type: "unit chosen"; readonly list: string; readonly column: number; readonly unit: Unit | undefined }
  | { readonly type: "landmark chosen"; readonly list: string; readonly landmark: string | undefined };

/** The lists after what the user said of one of them. Our own tables stay as they are. */
export function editLists(lists: readonly FoundList[], edit: ListEdit, book: PlainBook): readonly FoundList[] {
  return lists.map((list) => (list.id === edit.list && !list.own ? edited(list, edit, book) : list));
}

function edited(list: FoundList, edit: ListEdit, book: PlainBook): FoundList {
  switch (edit.type) {
    case "list read as":
      return readListAs(list, edit.table, book);
    case "column read as":
      return withColumn(list, edit.column, (column) => readColumnAs(list, column, edit.key, book));
    case "unit chosen":
      return withColumn(list, edit.column, (column) => ({ ...column, unit: edit.unit }));
    case "landmark chosen":
      return { ...list, landmark: edit.landmark };
  }
}

function withColumn(list: FoundList, place: number, change: (column: ListColumn) => ListColumn): FoundList {
  return { ...list, columns: list.columns.map((column) => (column.column === place ? change(column) : column)) };
}
