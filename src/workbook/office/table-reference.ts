import type { ReferenceStruct } from "@borgar/fx";

/**
 * Queues the look-up of the table that a reference names. The answer, to be taken after the next sync, is the range
 * that the reference stands for; undefined where there is no such table or part of a table. `home` is the cell that
 * holds the formula: a reference without a table's name means the table around it.
 */
export function lookUpTable(
  context: Excel.RequestContext,
  home: Excel.Range,
  { table: name = "", columns = [], sections = [] }: ReferenceStruct,
): () => Excel.Range | undefined {
  const table = name === "" ? home.getTables(false).getFirst() : context.workbook.tables.getItemOrNullObject(name);
  return () => {
    const part = partOf(sections.join(" "));
    if (table.isNullObject || part === undefined) return undefined;
    const [first = table, last = first] = columns.map((column) => table.columns.getItem(column));
    const range = first === last ? part(first) : part(first).getBoundingRect(part(last));
    return sections.includes("this row") ? range.getIntersection(home.getEntireRow()) : range;
  };
}

function partOf(sections: string): ((of: Excel.Table | Excel.TableColumn) => Excel.Range) | undefined {
  switch (sections) {
    case "":
    case "data":
    case "this row":
      return (of) => of.getDataBodyRange();
    case "all":
      return (of) => of.getRange();
    case "headers":
      return (of) => of.getHeaderRowRange();
    case "totals":
      return (of) => of.getTotalRowRange();
    case "headers data":
      return (of) => of.getHeaderRowRange().getBoundingRect(of.getDataBodyRange());
    default:
      return undefined;
  }
}
