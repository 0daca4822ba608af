import { isUncertain } from "../table-error";
import type { TableHost } from "../table-host";
import type { BlockResult, CellBlock } from "../table-port";
import { without } from "./log";
import { logged, type LoggedSave, type SaveLog } from "./save-log";
import { stillOpen } from "./still-open";
import { filledCells, formatsBefore, meantCells, type StandingCell, type WrittenBlock } from "./written-block";

type LoggedBlock = Extract<LoggedSave, { state: "block" | "block-begun" }>;
type Begun = Extract<LoggedSave, { state: "block-begun" }>;

/** Writes a block; one with an id only once, and so that it can be taken back. */
export async function writeBlockOnce(host: TableHost, log: SaveLog, block: CellBlock): Promise<BlockResult> {
  const { id, title = "" } = block;
  if (id === undefined) return resultOf(await host.writeBlock(block, () => undefined));
  const known = log.read().find((save) => save.id === id);
  if (known?.state === "block") return resultOf(known.block);
  const written =
    (known?.state === "block-begun" ? await stillOpen(() => completed(host, known)) : undefined) ??
    (await begun(host, log, block, { id, title }));
  log.write(logged(log.read(), { state: "block", id, title, block: written }));
  return resultOf(written);
}

async function begun(
  host: TableHost,
  log: SaveLog,
  block: CellBlock,
  name: { readonly id: string; readonly title: string },
): Promise<WrittenBlock> {
  try {
    return await host.writeBlock(block, (change) => {
      log.write(logged(log.read(), { state: "block-begun", ...name, block, begun: change }));
    });
  } catch (error) {
    if (!isUncertain(error)) log.write(without(log.read(), name.id));
    throw error;
  }
}

/** A block that broke off, where it stands whole; what stands of half a one is taken out. */
async function completed(host: TableHost, known: Begun): Promise<WrittenBlock | undefined> {
  const found = await standing(host, known);
  if (found === undefined) return undefined;
  if (found.isWhole) return found.block;
  await host.removeBlock(found.block);
  return undefined;
}

/** What stands of a block of which nobody knew how far it came; undefined where its sheet is not there. */
async function standing(
  host: TableHost,
  { block, begun: change }: Begun,
): Promise<{ readonly isWhole: boolean; readonly block: WrittenBlock } | undefined> {
  const { sheet, address } = block;
  const found = await host.readBlock(block);
  if (found === undefined) return undefined;
  const meant = meantCells(block);
  const cells = meant.map((row, down) =>
    row.map((cell, right) => {
      const is = found[down]?.[right] ?? null;
      return isMeant(cell, is) ? is : null;
    }),
  );
  const isWhole = filledCells({ address, cells }).length === filledCells({ address, cells: meant }).length;
  const usual = {
    formatsBefore: formatsBefore(block, () => undefined),
    madeSheet: false,
    charts: [],
    chartsLeftOut: [],
  };
  return { isWhole, block: { sheet, address, ...usual, ...change, cells } };
}

/** A host may spell a formula otherwise than it was handed it. */
function isMeant(meant: StandingCell, is: StandingCell): boolean {
  const isFormula = typeof meant === "object" && meant !== null;
  return isFormula ? typeof is === "object" && is !== null : is === meant;
}

export async function takeBlockBack(host: TableHost, log: SaveLog, save: LoggedBlock): Promise<void> {
  const block = save.state === "block" ? save.block : (await standing(host, save))?.block;
  if (block !== undefined) await remove(host, block);
  log.write(without(log.read(), save.id));
}

async function remove(host: TableHost, block: WrittenBlock): Promise<void> {
  try {
    await host.removeBlock(block);
  } catch (error) {
    if (!isUncertain(error) || !(await isOut(host, block))) throw error;
  }
}

/** Whether nothing of a block stands any more: its cells are blank, or the sheet that was made for it is gone. */
async function isOut(host: TableHost, block: WrittenBlock): Promise<boolean> {
  const { sheet, address, cells } = block;
  const found = await host.readBlock({ sheet, address, cells }).catch(() => cells);
  return found === undefined ? block.madeSheet : found.every((line) => line.every((cell) => cell === null));
}

function resultOf({ chartsLeftOut }: WrittenBlock): BlockResult {
  return { chartsLeftOut };
}
