import { wrongDays } from "../../../herd/mapping/book-problems";
import { type Block, type BlockColumn, columnCells } from "../../../herd/mapping/block";
import { findBlocks } from "../../../herd/mapping/find-blocks";
import { guessAs, guessUnitAs } from "../../../herd/mapping/guess-as";
import { type GuessedSource, guessBook } from "../../../herd/mapping/guess-book";
import { UNIT_CERTAIN, type UnitGuess } from "../../../herd/mapping/guess-unit";
import { DAY_ORDERS, type MappedSource, type Unit, unitsOf } from "../../../herd/mapping/mapping";
import { resolveMapping } from "../../../herd/mapping/resolve";
import type { StoredMapping } from "../../../herd/mapping/store";
import { type HerdTableName, mappedColumns } from "../../../herd/mapping/targets";
import { mappingTable } from "../../../workbook/mapping-table";
import { cellAt, type PlainArea, type PlainBook, type PlainSheet } from "../../../workbook/plain-book";
import type { PlainCell } from "../../../workbook/port";
import { wordsTable } from "../../../workbook/words-table";
import { dateText } from "../../format";
import { needsLandmark, NOT_KNOWN } from "./landmark";

/** A column of a list, and what it is to be read as. */
export interface ListColumn {
  /** Column of the sheet, counted from 0. */
  readonly column: number;
  readonly heading: string;
  /** Values of the column as the sheet shows them. */
  readonly examples: readonly string[];
  /** Key of our column; "" where it is not read. */
  readonly key: string;
  /** From 0 to 1; 1 once a user has said it. */
  readonly certainty: number;
  /** Why, in plain words; "" where nothing speaks for anything. */
  readonly because: string;
  /** undefined where the values need no unit, or where nobody has said it yet. */
  readonly unit: Unit | undefined;
  /** Units of which one has to be chosen; empty where the values need none. */
  readonly units: readonly Unit[];
  /** Why a unit was taken, or why it has to be said. */
  readonly unitBecause: string;
}

/** A list of the workbook: a table, or a plain range with headings. */
export interface FoundList {
  readonly id: string;
  readonly sheet: string;
  /** Name of the table; undefined for a plain range. */
  readonly source: string | undefined;
  /** Row of the headings, counted from 0. */
  readonly headingRow: number;
  readonly rowCount: number;
  /** The headings and the rows below them. */
  readonly area: PlainArea;
  /** Its headings stand in one row, cell by cell as they are read: a table could be made of it. */
  readonly oneHeadingRow: boolean;
  /** One of our own tables, which needs no mapping. */
  readonly own: boolean;
  /** It stands in the Mapping sheet. */
  readonly kept: boolean;
  /** What it is read as; "" where it is not read. */
  readonly readAs: HerdTableName | "";
  /** What it looks like, where it is not read. */
  readonly looksLike: HerdTableName | undefined;
  readonly columns: readonly ListColumn[];
  /** Where all toes were measured from, where no column says it; "not known" is an answer too. */
  readonly landmark: string | undefined;
  /** What the reader should know about its headings. */
  readonly remarks: readonly string[];
}

/** All lists of a workbook, and what stands in the way of reading it. */
export interface FoundLists {
  readonly lists: readonly FoundList[];
  /** Plain sentences. */
  readonly problems: readonly string[];
  /** Rows of the kept mapping that are not understood. */
  readonly refused: readonly string[];
  /** What moved and was found again. */
  readonly notes: readonly string[];
  /** What of the kept mapping is not there any more. */
  readonly broken: readonly string[];
}

/** Tables that are ours and hold no animals. */
const NO_LISTS: ReadonlySet<string> = new Set([mappingTable.name, wordsTable.name]);
/** A list has more than one column. */
const FEWEST_COLUMNS = 2;

/** The lists of a workbook by the mapping that it holds; those that it does not name, by a guess. */
export function findLists(book: PlainBook, stored: StoredMapping | undefined): FoundLists {
  const guess = guessBook(book);
  const kept = stored === undefined ? undefined : resolveMapping(stored.mapping, book);
  const blocks = new Map(findBlocks(book).map((block) => [idOf(placeOf(block)), block]));
  const shown = new Shown(book);
  const guessed = (source: GuessedSource, isRead: boolean): readonly FoundList[] => {
    const block = blocks.get(idOf(source));
    return block === undefined ? [] : [guessedList(source, isRead, shapeOf(block), shown)];
  };
  const found = [
    ...(kept?.sources ?? []).map(({ source, block }) => keptList(book, source, block, shown)),
    ...guess.sources.flatMap((source) => guessed(source, stored === undefined || source.own)),
    ...guess.alternatives.flatMap((source) => guessed(source, false)),
    ...[...blocks.values()].filter(couldBeList).map((block) => blockList(block, shown)),
  ];
  const lists = new Map<string, FoundList>();
  for (const list of found) if (!lists.has(list.id)) lists.set(list.id, list);
  const isMapped = kept !== undefined && kept.sources.length > 0;
  return {
    lists: [...lists.values()],
    problems: isMapped ? wrongDays(book) : guess.problems,
    refused: stored?.problems.map(({ text }) => text) ?? [],
    notes: kept?.notes ?? [],
    broken: kept?.broken ?? [],
  };
}

/** The list read as another of our tables, or as none. */
export function readListAs(list: FoundList, table: HerdTableName | "", book: PlainBook): FoundList {
  if (table === "") return { ...list, readAs: "" };
  const guess = guessAs(book, list, table);
  if (guess === undefined) return list;
  const { kept, looksLike } = list;
  return { ...guessedList(guess, true, list, new Shown(book)), own: false, kept, looksLike };
}

/** A column read as another of ours, or as none, with the units that it may then have. */
export function readColumnAs(list: FoundList, column: ListColumn, key: string, book: PlainBook): ListColumn {
  const said = { ...column, key, certainty: 1, because: "you said so" };
  if (key === "" || list.readAs === "") return { ...said, key: "", unit: undefined, units: [], unitBecause: "" };
  return { ...said, ...unitsOfColumn(list.readAs, key, guessUnitAs(book, list, column.column, list.readAs, key)) };
}

function keptList(book: PlainBook, source: MappedSource, block: Block, shown: Shown): FoundList {
  const place = placeOf(block);
  const guess = guessAs(book, place, source.table);
  const list = guess === undefined ? blockList(block, shown) : guessedList(guess, true, shapeOf(block), shown);
  const read = { ...list, readAs: source.table };
  const byColumn = new Map(source.columns.map((column) => [column.column, column]));
  const columns = list.columns.map((column): ListColumn => {
    const known = byColumn.get(column.column);
    const key = known?.key ?? "";
    const again = column.key === key ? column : readColumnAs(read, column, key, book);
    if (known === undefined) return { ...again, certainty: 1, because: "" };
    // What is blank is read as our own tables are; dates that are text are not read.
    const unit = known.unit ?? unitsOf[key]?.[0];
    const unitBecause = unit === undefined ? again.unitBecause : "";
    return { ...again, certainty: 1, unit, unitBecause };
  });
  const kept = { ...read, own: false, kept: true, columns };
  return { ...kept, landmark: source.landmark ?? (needsLandmark(kept) ? NOT_KNOWN : undefined) };
}

function guessedList(guess: GuessedSource, isRead: boolean, { area, oneHeadingRow }: Shape, shown: Shown): FoundList {
  const { table, sheet, source, headingRow, rowCount, own, remarks, landmark } = guess;
  const used = guess.columns.map((column): ListColumn => {
    const { key, heading, certainty, because, unitGuess } = column;
    const examples = shown.texts(sheet, column.column, column.examples);
    const units = unitsOfColumn(table, key, unitGuess);
    return { column: column.column, heading, examples, key, certainty, because, ...units };
  });
  const unused = guess.unused.map(({ heading, column, examples }) =>
    unusedColumn(heading, column, shown.texts(sheet, column, examples)),
  );
  const columns = [...used, ...unused].sort((a, b) => a.column - b.column);
  const place = { sheet, source, headingRow, rowCount, area, oneHeadingRow, id: idOf(guess) };
  return { ...place, own, kept: false, readAs: isRead ? table : "", looksLike: table, columns, landmark, remarks };
}

function unusedColumn(heading: string, column: number, examples: readonly string[]): ListColumn {
  return { column, heading, examples, key: "", certainty: 1, because: "", unit: undefined, units: [], unitBecause: "" };
}

function unitsOfColumn(
  table: HerdTableName,
  key: string,
  guess: UnitGuess | undefined,
): Pick<ListColumn, "unit" | "units" | "unitBecause"> {
  if (guess === undefined) return { unit: undefined, units: [], unitBecause: "" };
  const isDay = mappedColumns(table).find((column) => column.key === key)?.holds === "day";
  const { unit, certainty, because } = guess;
  const units = isDay ? DAY_ORDERS : (unitsOf[key] ?? []);
  return { unit: certainty < UNIT_CERTAIN ? undefined : unit, units, unitBecause: because };
}

/** Whether a block that looks like none of our tables may be one all the same. */
function couldBeList({ table, columns }: Block): boolean {
  return columns.length >= FEWEST_COLUMNS && (table === undefined || !NO_LISTS.has(table));
}

function blockList(block: Block, shown: Shown): FoundList {
  const place = placeOf(block);
  const columns = block.columns.filter(({ calculated }) => !calculated);
  return {
    ...place,
    id: idOf(place),
    rowCount: block.lastRow - block.firstRow + 1,
    ...shapeOf(block),
    own: false,
    kept: false,
    readAs: "",
    looksLike: undefined,
    columns: columns.map((at) => {
      const examples = columnCells(block, at).filter((cell) => cell !== null);
      return unusedColumn(at.heading, at.column, shown.texts(block.sheet.name, at.column, examples.slice(0, EXAMPLES)));
    }),
    landmark: undefined,
    remarks: block.remarks,
  };
}

const EXAMPLES = 3;

/** Where a list lies, and whether its headings do so in one row. */
type Shape = Pick<FoundList, "area" | "oneHeadingRow">;

function shapeOf({ sheet, headingRow, lastRow, columns }: Block): Shape {
  const places = columns.map(({ column }) => column);
  const area = { firstRow: headingRow, lastRow, firstColumn: Math.min(...places), lastColumn: Math.max(...places) };
  const isAsWritten = ({ heading, column }: BlockColumn): boolean => String(cellAt(sheet, headingRow, column) ?? "").trim() === heading.trim(); // oxfmt-ignore
  return { area, oneHeadingRow: columns.every(isAsWritten) };
}

function placeOf({ sheet, table, headingRow }: Block): Pick<FoundList, "sheet" | "source" | "headingRow"> {
  return { sheet: sheet.name, source: table, headingRow };
}

function idOf({ sheet, source, headingRow }: Pick<FoundList, "sheet" | "source" | "headingRow">): string {
  return [sheet, source ?? "", headingRow].join("\n");
}

/** Cells as the sheet shows them. */
class Shown {
  readonly #sheets: ReadonlyMap<string, PlainSheet>;

  constructor(book: PlainBook) {
    this.#sheets = new Map(book.sheets.map((sheet) => [sheet.name, sheet]));
  }

  texts(sheet: string, column: number, cells: readonly PlainCell[]): readonly string[] {
    const days = this.#sheets.get(sheet)?.days ?? [];
    const isDay = days.some(({ firstColumn, lastColumn }) => column >= firstColumn && column <= lastColumn);
    return cells.map((cell) => (typeof cell === "number" && isDay ? dateText(cell) : String(cell)));
  }
}
