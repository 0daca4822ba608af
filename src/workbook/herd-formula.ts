/** What a cell shows whose formula calls a function that is not known. */
export const NAME_ERROR = "#NAME?";

/** A call of one of our functions: as typed, or as a file stores it and as Excel shows it while the add-in is absent. */
const HERD_CALL = /(?:\bHERD\.|_xldudf_HERD_)[A-Z][\w.]*\(/i;

/** Whether a formula calls one of our functions. What stands between quotes is text. */
export function callsHerd(formula: string): boolean {
  return HERD_CALL.test(formula.replace(/"(?:[^"]|"")*"/g, ""));
}

/**
 * The formula as it is typed: `_xldudf_HERD_RECHECK_DATE(A2)` is `HERD.RECHECK.DATE(A2)`. `ids` are those of the
 * functions ("RECHECK.DATE"): the dots of a stored name cannot be told from its underscores otherwise. An unknown name
 * stays as it is.
 */
export function typedHerdCalls(formula: string, ids: readonly string[]): string {
  return formula.replace(/"(?:[^"]|"")*"|_xldudf_(HERD_\w+)(?=\()/gi, (text, stored: string | undefined) => {
    if (stored === undefined) return text;
    const name = stored.toUpperCase();
    const id = ids.find((known) => `HERD_${known.replaceAll(".", "_")}`.toUpperCase() === name);
    return id === undefined ? text : `HERD.${id.toUpperCase()}`;
  });
}

/** Whether a formula names a table: `Feet[Cow]`, or `Feet` by itself. */
export function namesTable(formula: string, table: string): boolean {
  const literal = table.replace(/[.\\]/g, "\\$&");
  return new RegExp(`(?<![\\p{L}\\p{N}_.\\\\])${literal}(?![\\p{L}\\p{N}_.\\\\(!])`, "iu").test(
    formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, ""),
  );
}
