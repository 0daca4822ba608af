import type { PlainCell } from "../workbook/port";
import type { Block, Part } from "./block";
import type { ComputedPart } from "./compute";
import type { SpecOf } from "./expression/run";
import type { LaidOutCell } from "./laid-out";
import { columnsOf } from "./result-columns";

/** In characters. Numbers and days fit into the narrowest column. */
const NARROWEST = { labels: 34, others: 15 } as const;
/** Longer labels and texts would push the figures off the page. */
const WIDEST = { labels: 58, texts: 48, headings: 22 } as const;
/** A text column whose rows are not known yet: it holds the longest name of a lesion. */
const USUAL_TEXT = 38;
/** Room at the sides of a cell. */
const MARGIN = 2;

/** Widths of a block's columns: labels and names are to be read in full, figures need little room. */
export function columnWidths(
  block: Block,
  cells: readonly (readonly (LaidOutCell | null)[])[],
  computed: readonly ComputedPart[] | undefined,
  specOf: SpecOf,
): readonly number[] {
  const count = Math.max(...cells.map((row) => row.length));
  const widths: number[] = Array.from({ length: count }, (_, place) =>
    place === 0 ? NARROWEST.labels : NARROWEST.others,
  );
  const widen = (place: number, characters: number, widest: number): void => {
    widths[place] = Math.max(widths[place] ?? 0, Math.min(characters, widest));
  };
  for (const row of cells) if (row[0]?.look === "label") widen(0, lengthOf(row[0].value ?? null), WIDEST.labels);
  for (const part of block.parts) {
    headingsOf(part, specOf).forEach((heading, place) => widen(place, lengthOf(heading), WIDEST.headings));
    const rows = rowsOf(part, computed);
    for (const place of textColumns(part, specOf))
      widen(place, rows === undefined ? USUAL_TEXT : longest(rows, place), WIDEST.texts);
  }
  return widths;
}

function headingsOf(part: Part, specOf: SpecOf): readonly string[] {
  if (part.kind === "figure") return [];
  return (part.kind === "series" ? part.columns : columnsOf(part.of, specOf)).map(({ heading }) => heading);
}

/** The columns of a table that hold texts. */
function textColumns(part: Part, specOf: SpecOf): readonly number[] {
  if (part.kind !== "table") return [];
  return columnsOf(part.of, specOf).flatMap(({ type }, place) => (type === "text" ? [place] : []));
}

/** The rows of a table without its headings, which are broken into lines; undefined where they are not known. */
function rowsOf(part: Part, computed: readonly ComputedPart[] = []): readonly (readonly PlainCell[])[] | undefined {
  const found = computed.find((known) => known.part.id === part.id);
  return found?.kind === "rows" ? found.rows.slice(1) : undefined;
}

function longest(rows: readonly (readonly PlainCell[])[], place: number): number {
  return rows.reduce((most, row) => Math.max(most, lengthOf(row[place] ?? null)), 0);
}

function lengthOf(cell: PlainCell): number {
  return typeof cell === "string" ? cell.length + MARGIN : 0;
}
