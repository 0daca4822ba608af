import type { Block } from "../../../src/blocks/block";
import { type ComputedBlock, computeBlock, type InputValues } from "../../../src/blocks/compute";
import { BlockData } from "../../../src/blocks/data";
import type { References } from "../../../src/blocks/expression/names";
import { everyBlock } from "../../../src/blocks/shelves";
import type { LaidOutBlock } from "../../../src/blocks/laid-out";
import { layOutBlock } from "../../../src/blocks/layout";
import { ownReferences } from "../../../src/blocks/references/own";
import type { DaySerial } from "../../../src/core/shared/days";
import { registry } from "../../../src/functions/registry";
import type { TableContent } from "../../../src/workbook/table-port";
import type { WorkbookModel } from "../../../src/xlsx/model";
import { differences } from "./compare";
import { AT, inSheets, tablesOf } from "./sheet-side";

const specs = new Map(registry.map((spec) => [spec.id, spec]));
export const specOf = (id: string) => specs.get(id);

/** The blocks as the pane computes them and as a sheet does, and the cells in which they differ. */
export interface BothSides {
  readonly computed: ReadonlyMap<string, ComputedBlock>;
  readonly laidOut: ReadonlyMap<string, LaidOutBlock>;
  readonly differences: readonly string[];
}

export async function bothSides(
  model: WorkbookModel,
  asOf: DaySerial,
  tables: ReadonlyMap<string, TableContent> = tablesOf(model),
  references: References = ownReferences([...tables.values()], true),
  blocks: readonly Block[] = everyBlock,
  given: InputValues = {},
): Promise<BothSides> {
  const data = new BlockData({ tables, asOf, scale: references.scale });
  const computed = blocks.map((block) => computeBlock(block, data, specOf, given));
  const laidOut = computed.map(({ block, parts }) =>
    layOutBlock(block, { references, specOf, at: AT, given, computed: parts }),
  );
  const answers = await inSheets(model, laidOut);
  return {
    computed: new Map(computed.map((one) => [one.block.id, one])),
    laidOut: new Map(laidOut.map((one) => [one.id, one])),
    differences: computed.flatMap(({ parts }, index) => differences(parts, laidOut[index]!, answers)),
  };
}

/** A figure of a block, or what it says instead. */
export function figure({ computed }: BothSides, block: string, part: string): unknown {
  const found = computed.get(block)!.parts.find(({ part: known }) => known.id === part)!;
  return found.kind === "figure" ? found.value : found.kind === "refused" ? found.sentence : found.rows;
}
