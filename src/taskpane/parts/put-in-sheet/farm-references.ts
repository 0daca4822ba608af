import type { References } from "../../../blocks/expression/names";
import { mappedReferences } from "../../../blocks/references/mapped";
import { ownReferences } from "../../../blocks/references/own";
import { resolvedFarm } from "../../../herd/mapped-port/resolved-farm";
import type { TableInfo } from "../../../workbook/table-port";
import type { WorkbookWith } from "../../pane-workbook";

/**
 * How formulas name the lists of a workbook that holds a mapping. Rejects with what is broken in it: formulas that
 * name other lists than the pane reads would be wrong without a word.
 */
export async function farmReferences(
  { tables: port, book }: WorkbookWith<"tables" | "book">,
  tables: readonly TableInfo[],
  hasAsOf: boolean,
): Promise<References> {
  const farm = await resolvedFarm(port, book);
  return farm === undefined ? ownReferences(tables, hasAsOf) : mappedReferences({ ...farm, tables, hasAsOf });
}
