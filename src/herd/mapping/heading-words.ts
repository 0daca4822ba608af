import { foldWords } from "../fold-words";
import type { Meaning } from "./targets";
import { languages } from "./words/all";

/** How well a heading fits a meaning: 1 is a word for it; `word` is that word as the list has it. */
export interface HeadingFit {
  readonly fit: number;
  readonly word: string;
  readonly language: string;
}

interface Entry {
  readonly meaning: Meaning;
  readonly word: string;
  readonly language: string;
  readonly tokens: readonly string[];
  readonly compact: string;
}

const entries: readonly Entry[] = Object.entries(languages).flatMap(([language, { headings }]) =>
  Object.entries(headings).flatMap(([meaning, words]) =>
    words.map((word): Entry => {
      const folded = foldWords(word);
      return {
        meaning: meaning as Meaning,
        word,
        language,
        tokens: folded.split(" "),
        compact: folded.replace(/ /g, ""),
      };
    }),
  ),
);

/** Shortest word that is looked for inside a longer one: "lengte" in "klauwlengte". */
const SHORTEST_PART = 4;
/** Shortest word in which one wrong letter is passed over. */
const SHORTEST_MISSPELT = 6;
/** Shortest abbreviation with a full stop: "Lakt.". */
const SHORTEST_ABBREVIATION = 2;

const known = new Map<string, ReadonlyMap<Meaning, HeadingFit>>();
const MOST_KEPT = 2000;

/** The meanings that a heading may have, each with its best fit. */
export function headingFits(heading: string): ReadonlyMap<Meaning, HeadingFit> {
  const kept = known.get(heading);
  if (kept !== undefined) return kept;
  const fits = new Map<Meaning, HeadingFit>();
  const whole = foldWords(heading);
  const readings = [...new Set([foldWords(withoutUnits(heading)) || whole, whole])].filter((text) => text !== "").map(givenOf); // oxfmt-ignore
  const abbreviations = (heading.match(/\p{L}+(?=\.)/gu) ?? []).map(foldWords);
  for (const entry of entries) {
    const fit = Math.max(abbreviationFit(entry, abbreviations), ...readings.map((given) => fitOf(entry, given)));
    if (fit > 0 && fit > (fits.get(entry.meaning)?.fit ?? 0)) {
      fits.set(entry.meaning, { fit, word: entry.word, language: entry.language });
    }
  }
  if (known.size >= MOST_KEPT) known.clear();
  known.set(heading, fits);
  return fits;
}

/** "Milk (kg)" without what stands in brackets. */
function withoutUnits(heading: string): string {
  return heading.replace(/\([^)]*\)|\[[^\]]*\]/g, " ");
}

/** A heading, folded: its words, and these written as one. */
interface Given {
  readonly given: readonly string[];
  readonly together: string;
}

function givenOf(folded: string): Given {
  return { given: folded.split(" "), together: folded.replace(/ /g, "") };
}

function fitOf({ tokens, compact }: Entry, { given, together }: Given): number {
  if (together === compact) return 1;
  const share = compact.length / together.length;
  if (tokens.every((token) => given.includes(token))) return 0.5 + 0.4 * share + (given[0] === tokens[0] ? 0.05 : 0);
  if (compact.length >= SHORTEST_PART && (together.startsWith(compact) || together.endsWith(compact)))
    return 0.4 + 0.4 * share;
  if (compact.length >= SHORTEST_PART && tokens.length === 1 && given.some((token) => token.startsWith(compact)))
    return 0.35 + 0.3 * share;
  if (compact.length >= SHORTEST_MISSPELT && together.length >= SHORTEST_MISSPELT && isMisspelt(together, compact))
    return 0.8;
  return 0;
}

function abbreviationFit({ tokens }: Entry, abbreviations: readonly string[]): number {
  if (tokens.length > 1) return 0;
  const short = abbreviations.some((part) => part.length >= SHORTEST_ABBREVIATION && tokens[0]!.startsWith(part));
  return short ? 0.55 : 0;
}

/** One letter changed, left out or added. */
function isMisspelt(given: string, word: string): boolean {
  if (Math.abs(given.length - word.length) > 1) return false;
  let start = 0;
  while (start < given.length && given[start] === word[start]) start++;
  let end = 0;
  while (end < Math.min(given.length, word.length) - start && given.at(-1 - end) === word.at(-1 - end)) end++;
  return Math.max(given.length, word.length) - start - end <= 1;
}
