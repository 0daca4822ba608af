/** Letters that do not come apart into a letter and an accent. */
const LETTERS: Readonly<Record<string, string>> = { ß: "ss", æ: "ae", ø: "o", œ: "oe", å: "a", đ: "d", ł: "l" };

const known = new Map<string, string>();
/** Texts whose folded form is kept; a column repeats its words. */
const MOST_KEPT = 5000;

/** Words in lower case without accents and punctuation, one space between them: "N° lactation" -> "no lactation". */
export function foldWords(text: string): string {
  const kept = known.get(text);
  if (kept !== undefined) return kept;
  const folded = text
    .replace(/n[°º]/gi, "no ")
    .toLowerCase()
    .replace(/[ßæøœåđł]/g, (letter) => LETTERS[letter] ?? letter)
    .normalize("NFD")
    .replace(/\p{M}+/gu, "")
    .replace(/[^\p{L}\p{N}%]+/gu, " ")
    .trim();
  if (known.size >= MOST_KEPT) known.clear();
  known.set(text, folded);
  return folded;
}

/** The same without spaces. */
export function foldCompact(text: string): string {
  return foldWords(text).replace(/ /g, "");
}
