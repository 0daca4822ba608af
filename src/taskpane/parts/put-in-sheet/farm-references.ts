import type { References } from "../../../blocks/expression/names";
import { mappedReferences } from "../../../blocks/references/mapped";
import { resolveMapping } from "../../../herd/mapping/resolve";
import { readMapping } from "../../../herd/mapping/store";
import { mappingTable } from "../../../workbook/mapping-table";
import type { TableInfo } from "../../../workbook/table-port";
import { wordsTable } from "../../../workbook/words-table";
import type { WorkbookWith } from "../../pane-workbook";

/** How formulas name the lists of a workbook that holds a mapping. */
export async function farmReferences(
  { tables: port, book }: WorkbookWith<"tables" | "book">,
  tables: readonly TableInfo[],
  hasAsOf: boolean,
): Promise<References> {
  const { mapping } = readMapping(await port.readTable(mappingTable.name));
  const resolved = resolveMapping(mapping, await book.readBook());
  const hasWords = tables.some(({ name }) => name === wordsTable.name);
  const words = hasWords ? { words: await port.readTable(wordsTable.name) } : {};
  return mappedReferences({ resolved, tables, hasAsOf, ...words });
}
