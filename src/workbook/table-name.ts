/** Longest name. Source: Microsoft, "Rename an Excel table". */
const LONGEST_NAME = 255;
const LIKE_A_CELL = /^(?:[A-Z]{1,3}[0-9]+|R[0-9]*|C[0-9]*|R[0-9]*C[0-9]*)$/i;
const NOT_IN_A_NAME = /[^\p{L}\p{N}_.\\]+/gu;
const STARTS_A_NAME = /^[\p{L}_\\]/u;

/** The nearest legal name for a table that none of the taken ones has, whatever its capitals. */
export function freeTableName(wanted: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  const base = legalName(wanted);
  for (let count = 1; ; count++) {
    const ending = count === 1 ? "" : `_${count}`;
    const name = base.slice(0, LONGEST_NAME - ending.length) + ending;
    if (!used.has(name.toLowerCase())) return name;
  }
}

function legalName(wanted: string): string {
  const plain = wanted.trim().replace(NOT_IN_A_NAME, "_");
  const named = /[\p{L}\p{N}]/u.test(plain) ? plain : "List";
  return STARTS_A_NAME.test(named) && !LIKE_A_CELL.test(named) ? named : `_${named}`;
}
