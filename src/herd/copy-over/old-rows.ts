import { type MobilityScale } from "../../core/claws/mobility";
import { cellPosition } from "../../workbook/cell-address";
import type { PlainCell } from "../../workbook/port";
import type { ColumnDefinition } from "../../workbook/table-definition";
import type { NewRow, TableContent, TypedValue } from "../../workbook/table-port";
import type { Doubt } from "../check/doubt";
import type { LesionWords } from "../codes/words";
import type { MappedTable } from "../mapping/read-mapped";
import { mappedColumns } from "../mapping/targets";
import { type DoubtfulCell, foldHeading, readHerdTable } from "../read-rows";
import { isOwnName, isWordAmongFigures } from "../own-text";
import { filledColumns, type Values } from "./double-rows";

/** Why a row stays behind, and where. */
export interface Refusal {
  readonly address: string;
  readonly why: string;
}

/** What follows from the list of cows is left out where the table has no column for it: the old book keeps it. */
const FROM_COWS: ReadonlySet<string> = new Set(["lactation", "daysInMilk"]);

/** The rows of an old list, judged and written one by one. */
export class OldRows {
  readonly #columns: readonly ColumnDefinition[];
  readonly #values: readonly Values[];
  readonly #unreadable: readonly DoubtfulCell[];
  readonly #doubts = new Map<number, Refusal[]>();
  /** Headings of the table that is written to, by our heading folded: those of columns that new rows fill. */
  readonly #headings: ReadonlyMap<string, string>;

  constructor(
    private readonly list: MappedTable,
    private readonly words: LesionWords,
    doubts: readonly Doubt[],
    private readonly content: TableContent | undefined,
    private readonly scale: MobilityScale,
  ) {
    const { definition, resolved } = list;
    this.#columns = mappedColumns(resolved.source.table).filter(({ key }) => this.#has(key));
    const { rows, doubtful } = readHerdTable(definition, list.content);
    this.#values = rows as readonly Values[];
    this.#unreadable = doubtful;
    this.#headings = new Map(filledColumns(content).map((heading) => [foldHeading(heading), heading]));
    this.#noteDoubts(doubts);
  }

  isBlank(index: number): boolean {
    return this.#columns.every(({ key }) => this.#cell(key, index) === null);
  }

  values(index: number): Values {
    return this.#values[index] ?? {};
  }

  /** Why a row cannot come over; undefined where it can. */
  refusal(index: number): Refusal | undefined {
    const reasons = [...this.#withoutPlace(index), ...(this.#doubts.get(index) ?? []), ...this.#unread(index)];
    const [first] = reasons;
    if (first === undefined) return undefined;
    return { address: first.address, why: [...new Set(reasons.map(({ why }) => why))].join(" ") };
  }

  /** The row under the headings of the table; what has no column there goes into the note. */
  newRow(index: number): NewRow {
    const row: Record<string, TypedValue> = {};
    const notes: string[] = [];
    for (const column of this.#columns) {
      const value = this.#typed(column, index);
      if (value === null || column.key === "note") continue;
      const heading = this.#headings.get(foldHeading(column.heading));
      if (heading !== undefined) row[heading] = value;
      else if (!FROM_COWS.has(column.key)) notes.push(`${column.heading}: ${this.#text(column.key, index)}`);
    }
    const landmark = this.list.resolved.source.landmark;
    const from = this.#headings.get(foldHeading("Measured from"));
    if (landmark !== undefined && from !== undefined && this.#cell("toeMm", index) !== null) row[from] ??= landmark;
    const note = [this.#text("note", index), ...notes].filter((text) => text !== "").join("; ");
    if (note !== "") row[this.#noteHeading ?? "Note"] = note;
    return row;
  }

  /** Headings of the old list that are read and have no column to go to. */
  leftOut(): readonly string[] {
    if (this.content === undefined) return [];
    return this.#columns.filter((column) => FROM_COWS.has(column.key) && !this.#headings.has(foldHeading(column.heading))).map(({ key }) => this.list.column(key)!.heading); // oxfmt-ignore
  }

  get #noteHeading(): string | undefined {
    return this.#headings.get(foldHeading("Note"));
  }

  #has(key: string): boolean {
    return this.list.column(key) !== undefined;
  }

  #cell(key: string, index: number): PlainCell {
    return this.#has(key) ? this.list.cell(key, index) : null;
  }

  #text(key: string, index: number): string {
    const cell = this.#cell(key, index);
    return cell === null ? "" : String(cell).trim();
  }

  /** As the table of ours holds it: a note in a column of numbers, or a name of the farm's own, stays as it is. */
  #typed({ key, holds, heading }: ColumnDefinition, index: number): TypedValue {
    const cell = this.#cell(key, index);
    if (cell === null) return null;
    if (key === "cow") return cell;
    const value = this.#values[index]?.[key] ?? null;
    if (value === null) return this.#converted(heading, index);
    if (holds === "lesion") return this.words.codeOf(String(value)) ?? value;
    return holds === "day" && typeof value === "number" ? { day: value } : value;
  }

  #converted(heading: string, index: number): PlainCell {
    const place = this.list.content.columns.findIndex((column) => column.heading === heading);
    return this.list.content.rows[index]?.[place] ?? null;
  }

  /** A doubt about cells of one row; one about a word that stands in several rows is found in each of them. */
  #noteDoubts(doubts: readonly Doubt[]): void {
    const { source, block } = this.list.resolved;
    for (const { table, sheet, address, wrong, cells } of doubts) {
      const isOneCell = !address.includes(":") && cells === 1;
      if (table !== source.table || sheet !== source.sheet || !isOneCell) continue;
      const index = cellPosition(address).row - block.firstRow;
      this.#doubts.set(index, [...(this.#doubts.get(index) ?? []), { address, why: wrong }]);
    }
  }

  /** What of the row is not understood, or missing. */
  #unread(index: number): Refusal[] {
    const refusals: Refusal[] = [];
    const refuse = (key: string, why: string): void => void refusals.push({ address: this.list.address(key, index), why }); // oxfmt-ignore
    for (const { key, heading, required, holds } of this.#columns) {
      const cell = this.#cell(key, index);
      const value = this.#values[index]?.[key] ?? null;
      if (holds === "lesion" && typeof value === "string" && this.words.codeOf(value) === undefined) {
        refuse(key, `"${value}" stands for no code yet; say what it means first.`);
      } else if (cell === null && required === true) refuse(key, `The row has no ${heading.toLowerCase()}.`);
      else if (cell !== null && value === null && !this.#isOwnText(key, holds, index) && isRead(this.list, key)) {
        const expected = this.#unreadable.find((known) => known.index === index && known.heading === heading)?.expected;
        refuse(key, `${heading} takes ${expected ?? "another value"}; got ${JSON.stringify(cell)}.`);
      }
    }
    return refusals;
  }

  #isOwnText(key: string, holds: ColumnDefinition["holds"], index: number): boolean {
    const cell = this.#cell(key, index);
    const required = this.#columns.some((column) => column.key === key && column.required === true);
    return (isWordAmongFigures(holds, cell) && !required) || isOwnName(key, cell);
  }

  /** The workbook has no table, no scale or no column for the row. */
  #withoutPlace(index: number): Refusal[] {
    const { source } = this.list.resolved;
    const at = this.list.address("cow", index);
    if (this.content === undefined) return [{ address: at, why: `The workbook has no table ${source.table}.` }];
    if (source.table === "Scores") {
      const scale: MobilityScale = this.list.column("score")?.unit === "1-5" ? "1-5" : "0-3";
      if (scale !== this.scale) return [{ address: at, why: `The score is on the scale ${scale}, those of the workbook on ${this.scale}: they cannot be converted.` }]; // oxfmt-ignore
    }
    const missing = this.#columns.filter(({ key, heading }) => this.#cell(key, index) !== null && !FROM_COWS.has(key) && !this.#headings.has(foldHeading(heading))); // oxfmt-ignore
    const needed = missing.filter(({ required }) => required === true);
    const lost = this.#noteHeading === undefined ? missing : needed;
    return lost.map(({ key, heading }) => ({ address: this.list.address(key, index), why: `Table ${source.table} has no column ${heading}.` })); // oxfmt-ignore
  }
}

/** Columns that only the check reads hold any text. */
function isRead({ definition }: MappedTable, key: string): boolean {
  return definition.columns.some((column) => column.key === key);
}
