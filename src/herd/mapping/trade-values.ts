import { foldCompact, foldWords } from "../fold-words";
import { allWords } from "./words/all";

/** Reads a farm's word for one of our choices; undefined where it is none. */
export type ReadChoice = (text: string) => string | undefined;

const shortFeet = new Map(
  allWords.flatMap(({ feet }) => Object.entries(feet.short).map(([word, foot]) => [foldCompact(word), foot] as const)),
);
const left = wordSet((words) => words.feet.left);
const right = wordSet((words) => words.feet.right);
const front = wordSet((words) => words.feet.front);
const hind = wordSet((words) => words.feet.hind);

function wordSet(pick: (words: (typeof allWords)[number]) => readonly string[]): ReadonlySet<string> {
  return new Set(allWords.flatMap((words) => pick(words).map(foldWords)));
}

/** LF, RF, LH or RH: "LR", "hinten links", "left hind", "ARG". */
export const readFoot: ReadChoice = (text) => {
  const short = shortFeet.get(foldCompact(text));
  if (short !== undefined) return short;
  const parts = foldWords(text).split(" ").filter((part) => part.length > 1); // oxfmt-ignore
  const has = (words: ReadonlySet<string>): boolean =>
    parts.some((part) => words.has(part) || [...words].some((word) => word.length > 3 && part.includes(word)));
  const side = has(left) === has(right) ? "" : has(left) ? "L" : "R";
  const end = has(front) === has(hind) ? "" : has(front) ? "F" : "H";
  return side !== "" && end !== "" ? side + end : undefined;
};

const inner = wordSet((words) => words.claws.inner);
const outer = wordSet((words) => words.claws.outer);

/** inner or outer: "lateral", "Außenklaue", "binnen". */
export const readClaw: ReadChoice = (text) => {
  const folded = foldWords(text);
  const [isInner, isOuter] = [startsWithWord(folded, inner), startsWithWord(folded, outer)];
  if (isInner === isOuter) return undefined;
  return isInner ? "inner" : "outer";
};

/** A short word must be the whole text. */
const SHORTEST_START = 3;

function startsWithWord(folded: string, words: ReadonlySet<string>): boolean {
  if (words.has(folded)) return true;
  return [...words].some((word) => word.length >= SHORTEST_START && folded.startsWith(word));
}

const hardHorn = wordSet((words) => words.landmarks.hardHorn);
const skinHornLine = wordSet((words) => words.landmarks.skinHornLine);

/** Where a toe was measured from. */
export const readLandmark: ReadChoice = (text) => {
  const folded = foldWords(text);
  const names = (words: ReadonlySet<string>): boolean => [...words].some((word) => folded.includes(word));
  if (names(skinHornLine)) return "skin-horn line";
  return names(hardHorn) ? "hard horn" : undefined;
};

const outcomes = choiceMap((words) => words.outcomes);
const groups = choiceMap((words) => words.groups);

function choiceMap(
  pick: (words: (typeof allWords)[number]) => Readonly<Record<string, readonly string[] | undefined>>,
): ReadonlyMap<string, string> {
  return new Map(
    allWords.flatMap((words) =>
      Object.entries(pick(words)).flatMap(([choice, list = []]) =>
        list.map((word) => [foldWords(word), choice] as const),
      ),
    ),
  );
}

/** How a foot was found when it was looked at again. */
export const readOutcome: ReadChoice = (text) => outcomes.get(foldWords(text));

/** The part of the herd that a cow stands with. */
export const readGroup: ReadChoice = (text) => groups.get(foldWords(text));

const treatments = [...wordSet((words) => words.treatments)];

/** Whether a text names something that is done to a foot. */
export function namesTreatment(text: string): boolean {
  const folded = foldWords(text);
  return treatments.some((word) => folded === word || folded.startsWith(`${word} `) || folded.includes(` ${word}`)) || treatments.some((word) => word.length > 3 && folded.startsWith(word)); // oxfmt-ignore
}
