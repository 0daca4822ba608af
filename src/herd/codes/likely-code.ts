import { disorderOf, nearestCodes } from "../../core/claws/disorder-key";
import { SOUND } from "../../core/claws/findings";
import { foldCompact, foldWords } from "../fold-words";
import { lesionLanguages } from "./words/all";

/** What a word of a farm's own most likely means. It is a proposal: nothing is read by it until the farm says so. */
export interface LikelyCode {
  /** Code of the claw disorder key, or "none" for a sound foot. */
  readonly code: string;
  /** From 0 to 1: how sure the proposal is. */
  readonly certainty: number;
  /** Why, in plain words. */
  readonly because: string;
  /** Other codes that it may mean, the likeliest first. */
  readonly others: readonly string[];
}

interface ListedWord {
  readonly code: string;
  readonly word: string;
  readonly language: string;
  readonly folded: string;
  readonly compact: string;
}

const listed: readonly ListedWord[] = Object.entries(lesionLanguages).flatMap(([language, words]) =>
  Object.entries(words).flatMap(([code, list]) =>
    list.map((word) => ({ code, word, language, folded: foldWords(word), compact: foldCompact(word) })),
  ),
);

/** Certainties are an order of trust, not shares that were measured. */
const CERTAINTY = { listed: 0.95, listedTwice: 0.7, misspelt: 0.75, part: 0.6, near: 0.4 } as const;
const SHORTEST_MISSPELT = 5;
const SHORTEST_PART = 4;

/** The likeliest code of a word, or undefined where nothing is near. */
export function likelyCode(text: string): LikelyCode | undefined {
  const compact = foldCompact(text);
  if (compact === "") return undefined;
  return (
    proposal(exact(compact), CERTAINTY.listed, (word) => `"${word.word}" is a word for it (${word.language})`) ??
    proposal(misspelt(compact), CERTAINTY.misspelt, (word) => `it is nearly "${word.word}" (${word.language})`) ??
    proposal(parts(foldWords(text)), CERTAINTY.part, (word) => `it holds "${word.word}" (${word.language})`) ??
    nearestName(text)
  );
}

function proposal(
  found: readonly ListedWord[],
  certainty: number,
  because: (word: ListedWord) => string,
): LikelyCode | undefined {
  const [first] = found;
  if (first === undefined) return undefined;
  const codes = [...new Set(found.map(({ code }) => code))];
  return {
    code: first.code,
    certainty: codes.length === 1 ? certainty : Math.min(certainty, CERTAINTY.listedTwice),
    because: because(first),
    others: codes.slice(1),
  };
}

function exact(compact: string): ListedWord[] {
  return listed.filter((word) => word.compact === compact);
}

function misspelt(compact: string): ListedWord[] {
  if (compact.length < SHORTEST_MISSPELT) return [];
  return listed.filter((word) => word.compact.length >= SHORTEST_MISSPELT && differsByOne(compact, word.compact));
}

/** Listed words that stand in the text, the longest first. */
function parts(folded: string): ListedWord[] {
  const text = ` ${folded} `;
  return listed
    .filter((word) => word.code !== SOUND && word.compact.length >= SHORTEST_PART && text.includes(` ${word.folded} `))
    .sort((a, b) => b.compact.length - a.compact.length)
    .filter((word, _, [longest]) => word.compact.length === longest!.compact.length);
}

function nearestName(text: string): LikelyCode | undefined {
  const [code, ...others] = nearestCodes(text);
  if (code === undefined) return undefined;
  return { code, certainty: CERTAINTY.near, because: `it is near "${disorderOf(code)!.name}"`, others };
}

/** One letter changed, left out, added, or swapped with its neighbour. */
function differsByOne(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let start = 0;
  while (start < a.length && a[start] === b[start]) start++;
  let end = 0;
  while (end < Math.min(a.length, b.length) - start && a.at(-1 - end) === b.at(-1 - end)) end++;
  const [middleA, middleB] = [a.slice(start, a.length - end), b.slice(start, b.length - end)];
  if (Math.max(middleA.length, middleB.length) <= 1) return true;
  return middleA.length === 2 && middleA[0] === middleB[1] && middleA[1] === middleB[0];
}

/** Whether a text is a word for a lesion in one of the lists; for telling what a column holds, never to read a cell. */
export function isLesionWord(text: string): boolean {
  return disorderOf(text) !== undefined || exact(foldCompact(text)).length > 0;
}
