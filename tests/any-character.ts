import fc from "fast-check";

/** Half of a pair is no character. Source: the Unicode Standard, 23.6 (Surrogates Area). */
const FIRST_HALF = 0xd800;
const HALVES = 0x800;
const CHARACTERS = 0x110000 - HALVES;

/** Any character of Unicode. The library's own unit "binary" draws alike, but lists all million of them beforehand. */
export const anyCharacter = fc
  .nat(CHARACTERS - 1)
  .map((place) => String.fromCodePoint(place < FIRST_HALF ? place : place + HALVES), placeOf);

/** For the library, which asks in which texts of its own the character may stand. */
function placeOf(text: unknown): number {
  const code = typeof text === "string" ? text.codePointAt(0) : undefined;
  if (code === undefined || String.fromCodePoint(code) !== text) throw new Error("not one character");
  if (code < FIRST_HALF) return code;
  if (code < FIRST_HALF + HALVES) throw new Error("half of a character");
  return code - HALVES;
}
