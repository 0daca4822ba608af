import { mappingTable } from "../../workbook/mapping-table";
import type { PlainBook } from "../../workbook/plain-book";
import type { PlainCell } from "../../workbook/port";
import type { TableContent } from "../../workbook/table-port";
import { type Block, columnCells } from "./block";
import { findBlocks } from "./find-blocks";
import { readMapping, type StoredMapping } from "./store";

/** The mapping that a workbook holds. A Mapping table whose rows were all taken out is none. */
export function storedMapping(book: PlainBook): StoredMapping | undefined {
  const block = blockNamed(book, mappingTable.name);
  if (block === undefined) return undefined;
  const stored = readMapping(contentOf(block), { row: block.headingRow, column: block.columns[0]?.column ?? 0 });
  return stored.mapping.sources.length + stored.problems.length === 0 ? undefined : stored;
}

/** A table of the workbook by its name. */
export function tableContent(book: PlainBook, name: string): TableContent | undefined {
  const block = blockNamed(book, name);
  return block === undefined ? undefined : contentOf(block);
}

function blockNamed({ sheets }: PlainBook, name: string): Block | undefined {
  const holding = sheets.filter(({ tables }) => tables.some((table) => table.name === name));
  return findBlocks({ sheets: holding }).find(({ table }) => table === name);
}

function contentOf(block: Block): TableContent {
  const columns = block.columns.map((column) => columnCells(block, column));
  const rows = Array.from({ length: block.lastRow - block.firstRow + 1 }, (_, row) =>
    columns.map((cells): PlainCell => cells[row] ?? null),
  );
  return {
    name: block.table ?? "",
    sheet: block.sheet.name,
    columns: block.columns.map(({ heading, calculated }) => ({ heading, calculated })),
    rowCount: rows.length,
    rows,
  };
}
