import type { Block } from "../../../src/blocks/block";
import { mappedReferences } from "../../../src/blocks/references/mapped";
import { LesionWords } from "../../../src/herd/codes/words";
import { rangeList } from "../../../src/herd/mapped-port/farm-list";
import { ourTable } from "../../../src/herd/mapped-port/our-table";
import type { Mapping } from "../../../src/herd/mapping/mapping";
import { resolveMapping } from "../../../src/herd/mapping/resolve";
import { herdTables } from "../../../src/herd/mapping/targets";
import { plainBook } from "../../../src/workbook/file/plain-book";
import type { WorkbookModel } from "../../../src/xlsx/model";
import { type BothSides, bothSides } from "./both-sides";
import { tablesOf } from "./sheet-side";

/** Both sides of the blocks over a farm's own lists; its Words table is read where the workbook has one. */
export async function farmSides(
  model: WorkbookModel,
  mapping: Mapping,
  asOf: number,
  blocks?: readonly Block[],
): Promise<BothSides> {
  const resolved = resolveMapping(mapping, plainBook(model));
  expect(resolved.broken).toEqual([]);
  const plain = tablesOf(model);
  const words = plain.get("Words");
  const known = new LesionWords(words);
  const tables = new Map(plain);
  for (const { name } of herdTables) {
    const lists = resolved.sources.filter(({ source }) => source.table === name);
    if (lists.length === 0) continue;
    tables.set(name, ourTable(name, lists.map((list) => rangeList(list, known)), {}).content); // oxfmt-ignore
  }
  const references = mappedReferences({
    resolved,
    tables: [...plain.values()],
    hasAsOf: true,
    ...(words === undefined ? {} : { words }),
  });
  return bothSides(model, asOf, tables, references, blocks);
}
