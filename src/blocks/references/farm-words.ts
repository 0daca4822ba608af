import { codeOfKey, LesionWords } from "../../herd/codes/words";
import { columnCells } from "../../herd/mapping/block";
import { converter } from "../../herd/mapping/convert";
import { type MappedColumn, placeOf } from "../../herd/mapping/mapping";
import type { ResolvedSource } from "../../herd/mapping/resolve";
import { mappedColumns } from "../../herd/mapping/targets";
import { foldHeading } from "../../herd/read-rows";
import type { PlainCell } from "../../workbook/port";
import type { TableContent } from "../../workbook/table-port";
import { wordsTable } from "../../workbook/words-table";
import { MissingData } from "../expression/fault";
import { literalText } from "../expression/values";
import { headingOf } from "../tables";

/**
 * The farm's words for lesions become codes through its Words table, so that a word added there counts at once. `text`
 * names the cells of the column. Throws MissingData where the formula would read a word otherwise than the pane does.
 */
export function lesionText(
  found: ResolvedSource,
  column: MappedColumn,
  words: TableContent | undefined,
  text: string,
): string {
  const known = new LesionWords(words);
  const inTable = codesByWord(words);
  const texts = textsOf(found, column);
  for (const word of texts) {
    const [pane, formula] = [known.codeOf(word), codeOfKey(inTable.get(folded(word)) ?? word)];
    if (pane === formula) continue;
    throw new MissingData(
      `${found.source.table}, ${headingOf(found.source.table, column.key)}: write "${sheetTrim(word)}" of ${placeOf(found.source)} under Words as it is written there, with one code, then formulas can use it.`,
    );
  }
  if (texts.every((word) => !inTable.has(folded(word)))) return text;
  const [word, code] = (["Word", "Code"] as const).map((heading) => `${wordsTable.name}[${heading}]`);
  const filled = `${code}<>""`;
  return `IFNA(XLOOKUP(TRIM(${text}),TRIM(FILTER(${word},${filled},"")),FILTER(${code},${filled},"")),${text})`;
}

/** The few words of a foot, a claw and the like are translated one by one. */
export function choiceText(found: ResolvedSource, column: MappedColumn, text: string): string {
  const definition = mappedColumns(found.source.table).find(({ key }) => key === column.key)!;
  const convert = converter(column, definition, new LesionWords());
  const pairs = new Map<string, string>();
  for (const word of textsOf(found, column)) {
    const ours = convert(word);
    if (typeof ours === "string" && ours.toLowerCase() !== word.toLowerCase()) pairs.set(sheetTrim(word), ours);
  }
  if (pairs.size === 0) return text;
  const list = (cells: Iterable<string>): string => `{${[...cells].map(literalText).join(";")}}`;
  return `IFNA(XLOOKUP(TRIM(${text}),${list(pairs.keys())},${list(pairs.values())}),${text})`;
}

/** TRIM of a sheet: no spaces at the ends and one between words. Other white space stays. */
function sheetTrim(text: string): string {
  return text.replace(/ +/g, " ").replace(/^ | $/g, "");
}

/** A text as a lookup of a sheet compares it once it is trimmed. */
function folded(text: string): string {
  return sheetTrim(text).toLowerCase();
}

/** The different texts of a column as they are written. */
function textsOf({ block }: ResolvedSource, { column }: MappedColumn): readonly string[] {
  const place = block.columns.find((known) => known.column === column);
  if (place === undefined) return [];
  const texts = columnCells(block, place).filter((cell): cell is string => typeof cell === "string");
  return [...new Set(texts)];
}

/** The code beside each word, as a lookup finds it: the first that stands for a word counts. */
function codesByWord(words: TableContent | undefined): ReadonlyMap<string, string> {
  const codes = new Map<string, string>();
  if (words === undefined) return codes;
  const place = (heading: string): number =>
    words.columns.findIndex((column) => foldHeading(column.heading) === foldHeading(heading));
  const [word, code] = [place("Word"), place("Code")];
  for (const row of words.rows) {
    if (isBlank(row[word]) || isBlank(row[code])) continue;
    const key = folded(String(row[word]));
    if (!codes.has(key)) codes.set(key, String(row[code]));
  }
  return codes;
}

function isBlank(cell: PlainCell | undefined): boolean {
  return cell === null || cell === undefined || cell === "";
}
