import { foldHeading } from "../read-rows";
import type { Block, BlockColumn } from "./block";
import { contentFit } from "./content-fit";
import { findBlocks } from "./find-blocks";
import { headingFits } from "./heading-words";
import { type MappedColumn, type MappedSource, type Mapping, placeOf } from "./mapping";
import type { PlainBook } from "../../workbook/plain-book";
import { profileOf } from "./profile";
import { mappedColumns, type Meaning } from "./targets";

/** A source as it stands in the workbook now. */
export interface ResolvedSource {
  readonly source: MappedSource;
  readonly block: Block;
}

export interface ResolvedMapping {
  readonly sources: readonly ResolvedSource[];
  /** What moved or was renamed and was found again. Plain sentences. */
  readonly notes: readonly string[];
  /** What is not there any more: it has to be mapped again. Plain sentences. */
  readonly broken: readonly string[];
}

/** So many of the headings must stand in a block for it to be the one that was mapped. */
const MOST_HEADINGS = 0.5;
/** A heading that is so clearly a word for something else is no renamed one. */
const OTHER_MEANING = 0.85;

/** Finds the mapped columns again, by heading first, wherever they have moved to. */
export function resolveMapping({ sources }: Mapping, book: PlainBook): ResolvedMapping {
  const blocks = findBlocks(book);
  const notes: string[] = [];
  const broken: string[] = [];
  const found = sources.flatMap((source): ResolvedSource[] => {
    const block = blockOf(source, blocks);
    if (block === undefined) {
      broken.push(`${source.table}: ${placeOf(source)} is not there any more, or its headings are all others.`);
      return [];
    }
    if (block.sheet.name !== source.sheet) notes.push(`${source.table}: the sheet ${source.sheet} is now ${block.sheet.name}.`); // oxfmt-ignore
    if (source.source !== undefined && block.table !== undefined && source.source !== block.table) {
      notes.push(`${source.table}: the table ${source.source} is now ${block.table}.`);
    }
    const columns = source.columns.flatMap((column) => {
      const place = columnIn(block, column, source);
      if (typeof place === "string") {
        broken.push(place);
        return [];
      }
      if (foldHeading(place.heading) !== foldHeading(column.heading)) {
        notes.push(`${source.table}, ${ourHeading(source, column)}: the heading "${column.heading}" is now "${place.heading}".`); // oxfmt-ignore
      }
      return [{ ...column, heading: place.heading, column: place.column }];
    });
    const now = { ...source, sheet: block.sheet.name, source: block.table, headingRow: block.headingRow, columns: [...columns, ...ownColumns(source, block)] }; // oxfmt-ignore
    return [{ source: now, block }];
  });
  return { sources: found, notes, broken };
}

/** In a table of our own name the columns that no row of the mapping names are read by our headings. */
function ownColumns(source: MappedSource, block: Block): readonly MappedColumn[] {
  if (block.table !== source.table) return [];
  const keys = new Set(source.columns.map(({ key }) => key));
  const headings = new Set(source.columns.map(({ heading }) => foldHeading(heading)));
  return mappedColumns(source.table).flatMap(({ key, heading }): MappedColumn[] => {
    const own = foldHeading(heading);
    const place = block.columns.find((column) => foldHeading(column.heading) === own);
    return place === undefined || keys.has(key) || headings.has(own) ? [] : [{ key, heading: place.heading, column: place.column }]; // oxfmt-ignore
  });
}

function blockOf(source: MappedSource, blocks: readonly Block[]): Block | undefined {
  const named = source.source === undefined ? [] : blocks.filter(({ table }) => table === source.source);
  if (named.length > 0) return named[0];
  const headings = source.columns.map(({ heading }) => foldHeading(heading)).filter((heading) => heading !== "");
  const ranked = blocks
    .map((block) => {
      const there = new Set(block.columns.map(({ heading }) => foldHeading(heading)));
      const share = headings.filter((heading) => there.has(heading)).length / Math.max(headings.length, 1);
      return { block, share: share + (block.sheet.name === source.sheet ? SAME_SHEET : 0) };
    })
    .sort((a, b) => b.share - a.share || rowsFrom(source, a.block) - rowsFrom(source, b.block));
  const best = ranked[0];
  const needed = best?.block.sheet.name === source.sheet ? MOST_HEADINGS + SAME_SHEET : ELSEWHERE;
  return best !== undefined && best.share >= needed ? best.block : undefined;
}

/** How far the headings are from where they stood: of two lists alike on one sheet the nearest is meant. */
function rowsFrom({ headingRow }: MappedSource, block: Block): number {
  return Math.abs(block.headingRow - headingRow);
}

/** A block on the sheet that was mapped comes before one like it elsewhere. */
const SAME_SHEET = 0.25;
/** On another sheet nearly all of the headings must be there. */
const ELSEWHERE = 0.8;

/** The column in the block, or a sentence that says why there is none. */
function columnIn(block: Block, column: MappedColumn, source: MappedSource): BlockColumn | string {
  const what = `${source.table}, ${ourHeading(source, column)}`;
  const alike = block.columns.filter(({ heading }) => foldHeading(heading) === foldHeading(column.heading));
  const atPlace = block.columns.find((place) => place.column === column.column);
  if (alike.length === 1) return alike[0]!;
  if (alike.length > 1) {
    return alike.find((place) => place === atPlace) ?? `${what}: ${alike.length} columns of ${placeOf(source)} are called "${column.heading}"; say which one.`; // oxfmt-ignore
  }
  const taken = source.columns.some(({ heading }) => atPlace !== undefined && foldHeading(heading) === foldHeading(atPlace.heading)); // oxfmt-ignore
  if (atPlace !== undefined && !taken && couldBe(block, atPlace, column.key)) return atPlace;
  return `${what}: no heading of ${placeOf(source)} is "${column.heading}" any more; map it again.`;
}

function couldBe(block: Block, place: BlockColumn, key: string): boolean {
  const fits = headingFits(place.heading);
  const own = fits.get(key as Meaning)?.fit ?? 0;
  const other = Math.max(0, ...[...fits].filter(([meaning]) => meaning !== key).map(([, { fit }]) => fit));
  if (other >= OTHER_MEANING && other > own) return false;
  return contentFit(profileOf(block, place), key as Meaning).fit > -1;
}

function ourHeading({ table }: MappedSource, { key }: MappedColumn): string {
  return mappedColumns(table).find((column) => column.key === key)?.heading ?? key;
}
