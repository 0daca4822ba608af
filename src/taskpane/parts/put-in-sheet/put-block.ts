import type { Block } from "../../../blocks/block";
import { cellBlockOf } from "../../../blocks/cell-block";
import type { ComputedPart, InputValues } from "../../../blocks/compute";
import type { References } from "../../../blocks/expression/names";
import type { SpecOf } from "../../../blocks/expression/run";
import { layOutBlock } from "../../../blocks/layout";
import type { BookPort } from "../../../workbook/book-port";
import { cellPosition } from "../../../workbook/cell-address";
import type { CellPlace } from "../../../workbook/port";
import { asTableError, TableError } from "../../../workbook/table-error";
import type { TablePort } from "../../../workbook/table-port";
import type { PutBlock, Target } from "./state";

/** What is put into the sheet, and what it is made from. */
export interface BlockToPut {
  readonly block: Block;
  readonly specOf: SpecOf;
  /** How its formulas name the lists of the workbook. */
  references(): Promise<References>;
  /** What the reader put into its inputs. */
  readonly given?: InputValues;
  /** Its parts as the pane computed them. */
  readonly computed?: readonly ComputedPart[];
}

/** The ports that putting needs. */
export interface PutPorts {
  readonly tables: TablePort;
  readonly book: BookPort;
}

const FIRST_CELL = "A1";

/** A try at putting a block. One that broke off is tried again at its own place, so that nothing is written twice. */
export interface Attempt {
  /** The save that the block can be taken back by. */
  readonly id: string;
  place?: CellPlace;
}

/** Writes a block as live formulas. `selected` is the cell that the user has selected. */
export async function putBlock(
  { tables, book }: PutPorts,
  wanted: BlockToPut,
  target: Target,
  selected: CellPlace | undefined,
  attempt: Attempt,
): Promise<PutBlock> {
  const references = await wanted.references();
  const { block, specOf, given = {}, computed = [] } = wanted;
  const laidOutAt = (address: string) =>
    layOutBlock(block, { references, specOf, at: cellPosition(address), given, computed });
  attempt.place ??= await placeFor(book, block.title, target, selected, laidOutAt(FIRST_CELL).room);
  const { id, place } = attempt;
  const laidOut = laidOutAt(place.address);
  const cells = { ...cellBlockOf(laidOut, place.sheet, cellPosition(place.address)), id, title: block.title };
  const { chartsLeftOut } = await tables.writeBlock(cells);
  return { place, refusals: laidOut.refusals, chartsLeftOut };
}

async function placeFor(
  book: BookPort,
  title: string,
  target: Target,
  selected: CellPlace | undefined,
  room: { readonly rows: number; readonly columns: number },
): Promise<CellPlace> {
  if (target === "new sheet" || selected === undefined) {
    return { sheet: await newSheetName(book, title), address: FIRST_CELL };
  }
  if (target === "selected cell") return selected;
  const address = await book.findRoom(selected.sheet, room);
  if (address === undefined) {
    throw new TableError("full", `The sheet ${selected.sheet} has no room for it: take a new sheet.`);
  }
  return { sheet: selected.sheet, address };
}

/** Longest name of a sheet, and what it may not hold. Source: Microsoft, "Rename a worksheet". */
const LONGEST_NAME = 31;
const NOT_IN_NAMES = /[\\/?*[\]:]/g;
/** So many blocks of one kind, each on a sheet of its own, are enough. */
const MOST_ALIKE = 20;

/** A name that no sheet carries yet: the title, or the title with a number. */
async function newSheetName(book: BookPort, title: string): Promise<string> {
  const plain = title.replace(NOT_IN_NAMES, " ").replace(/ +/g, " ").replace(/^'|'$/g, "").trim();
  for (let number = 1; number <= MOST_ALIKE; number++) {
    const ending = number === 1 ? "" : ` ${number}`;
    const name = shortened(plain, LONGEST_NAME - ending.length) + ending;
    if (await isFreeName(book, name)) return name;
  }
  throw new TableError(
    "name-taken",
    `The workbook has ${MOST_ALIKE} sheets called ${plain} already: take some out first.`,
  );
}

/** As many whole words as there is room for; of a single long word its beginning. */
function shortened(title: string, room: number): string {
  if (title.length <= room) return title;
  const cut = title.slice(0, room + 1).lastIndexOf(" ");
  return title
    .slice(0, cut > 0 ? cut : room)
    .replace(HANGING_WORDS, "")
    .trim();
}

/** A name does not end on a comma or on a word that asks for another. */
const HANGING_WORDS = /([\s,:;&-]|\s(a|an|and|at|by|for|from|in|of|on|or|the|to|with))+$/i;

async function isFreeName(book: BookPort, name: string): Promise<boolean> {
  try {
    await book.readSheet(name);
    return false;
  } catch (error) {
    if (asTableError(error)?.kind === "sheet-gone") return true;
    throw error;
  }
}
