import { TableError } from "../table-error";
import type { TableHost } from "../table-host";
import type { BlockResult, CellBlock } from "../table-port";
import { logged, type LoggedSave, type SaveLog, without } from "./save-log";
import { formatsBefore, meantCells, type StandingCell, type WrittenBlock } from "./written-block";

type LoggedBlock = Extract<LoggedSave, { state: "block" | "block-begun" }>;

/** Writes a block; one with an id only once, and so that it can be taken back. */
export async function writeBlockOnce(host: TableHost, log: SaveLog, block: CellBlock): Promise<BlockResult> {
  const { id, title = "" } = block;
  if (id === undefined) return resultOf(await host.writeBlock(block));
  const known = log.read().find((save) => save.id === id);
  if (known?.state === "block") return resultOf(known.block);
  const written = (known && (await standing(host, block))) ?? (await begun(host, log, block, { id, title }));
  log.write(logged(log.read(), { state: "block", id, title, block: written }));
  return resultOf(written);
}

async function begun(
  host: TableHost,
  log: SaveLog,
  block: CellBlock,
  name: { readonly id: string; readonly title: string },
): Promise<WrittenBlock> {
  log.write(logged(log.read(), { state: "block-begun", ...name, block }));
  try {
    return await host.writeBlock(block);
  } catch (error) {
    const unknown = error instanceof TableError && error.kind === "uncertain";
    if (!unknown) log.write(without(log.read(), name.id));
    throw error;
  }
}

/** A block of which nobody knew whether it was written, where it stands. */
async function standing(host: TableHost, block: CellBlock): Promise<WrittenBlock | undefined> {
  const { sheet, address } = block;
  const cells = await host.readBlock(block);
  const meant = meantCells(block);
  if (
    cells === undefined ||
    !meant.every((row, down) => row.every((cell, right) => isMeant(cell, cells[down]?.[right])))
  ) {
    return undefined;
  }
  return {
    sheet,
    address,
    cells,
    formatsBefore: formatsBefore(block, () => undefined),
    madeSheet: false,
    charts: [],
    chartsLeftOut: [],
  };
}

/** A host may spell a formula otherwise than it was handed it. */
function isMeant(meant: StandingCell, is: StandingCell | undefined): boolean {
  const isFormula = typeof meant === "object" && meant !== null;
  return isFormula ? typeof is === "object" && is !== null : is === meant;
}

export async function takeBlockBack(host: TableHost, log: SaveLog, save: LoggedBlock): Promise<void> {
  const written = save.state === "block" ? save.block : await standing(host, save.block);
  if (written !== undefined) await host.removeBlock(written);
  log.write(without(log.read(), save.id));
}

function resultOf({ chartsLeftOut }: WrittenBlock): BlockResult {
  return { chartsLeftOut };
}
