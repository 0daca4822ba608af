import { type Disorder, disorders } from "../reference/icar-2020";

export { type Disorder, type DisorderGroup, disorders } from "../reference/icar-2020";

/** Other words of the trade for a disorder. Common practice, no source. */
const TRADE_WORDS: Readonly<Record<string, string>> = {
  "foul in the foot": "IP",
  "foul of the foot": "IP",
  foul: "IP",
  "foot rot": "IP",
  tyloma: "IH",
  corn: "IH",
  "interdigital growth": "IH",
  Mortellaro: "DD",
  "Mortellaro's disease": "DD",
  "hairy heel wart": "DD",
  "interdigital dermatitis": "ID",
  "superficial dermatitis": "ID",
  "heel erosion": "HHE",
  "slurry heel": "HHE",
  "white line": "WL",
  "white line lesion": "WL",
  "sole bruising": "SH",
  "corkscrew claw": "CC",
  "scissor claw": "SC",
};

/** "DD M2": digital dermatitis with its stage; M0 is normal skin and no disorder. */
const DERMATITIS_WITH_STAGE = /^(?:dd|digitaldermatitis)m(?:[1-4]|41)$/;

const byWord = new Map<string, Disorder>();
for (const disorder of disorders) {
  byWord.set(folded(disorder.code), disorder);
  byWord.set(folded(disorder.name), disorder);
}
for (const [word, code] of Object.entries(TRADE_WORDS)) byWord.set(folded(word), byWord.get(folded(code))!);

/** Letters and digits only, in lower case, both spellings of haemorrhage alike. */
function folded(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "")
    .replace("haem", "hem");
}

/**
 * The disorder that a text names: its code, its full name or another word of the trade; case, spaces and hyphens do
 * not matter. "DD M2" is DD. Undefined where the text names none.
 */
export function disorderOf(text: string): Disorder | undefined {
  const key = folded(text);
  return byWord.get(key) ?? (DERMATITIS_WITH_STAGE.test(key) ? byWord.get("dd") : undefined);
}

/** The code of the disorder of which this one is a form, or the code itself: SU -> U, DD -> DD. */
export function parentCode(code: string): string {
  const disorder = disorderOf(code);
  return disorder?.parent ?? disorder?.code ?? code;
}

/** A code is shown as near when one letter was mistyped, left out, added or swapped with its neighbour. */
const NEAR_CODE = 1;
/** A name is shown as near when at most this share of its letters differs. */
const NEAR_NAME_SHARE = 0.25;
/** Shortest part of a name that is looked for inside names. */
const SHORTEST_PART = 3;
const MOST_NEAR_CODES = 3;

/** A longer text is near to no name, and comparing it letter by letter could take seconds. */
const LONGEST_NEAR = (1 + NEAR_NAME_SHARE) * Math.max(...disorders.map(({ name }) => name.length));

/** Up to three codes that the writer of an unknown text may have meant, the likeliest first. */
export function nearestCodes(text: string): readonly string[] {
  const given = folded(text);
  if (given.length > LONGEST_NEAR) return [];
  const near: { code: string; distance: number }[] = [];
  for (const { code, name } of disorders) {
    const [foldedCode, foldedName] = [folded(code), folded(name)];
    const fromCode = editDistance(given, foldedCode);
    const fromName = editDistance(given, foldedName);
    const otherStart = given[0] === foldedCode[0] ? 0 : 0.5;
    if (fromCode <= NEAR_CODE && fromCode < Math.max(given.length, foldedCode.length))
      near.push({ code, distance: fromCode + otherStart });
    else if (fromName <= NEAR_NAME_SHARE * foldedName.length) near.push({ code, distance: fromName });
    else if (given.length >= SHORTEST_PART && foldedName.includes(given)) near.push({ code, distance: given.length });
  }
  return near
    .sort((a, b) => a.distance - b.distance)
    .slice(0, MOST_NEAR_CODES)
    .map(({ code }) => code);
}

/** Letters to change, add, drop or swap with a neighbour (optimal string alignment distance). */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, beforeLast[j - 2]! + 1);
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length]!;
}
