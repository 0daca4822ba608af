/** A number as typed, with a point or a comma; undefined where it is blank, NaN where it is no number. */
export function typedNumber(text: string): number | undefined {
  const trimmed = text.trim().replace(",", ".");
  if (trimmed === "") return undefined;
  return /^\d+(\.\d+)?$/.test(trimmed) ? Number(trimmed) : NaN;
}
