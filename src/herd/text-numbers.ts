/** What a number that was typed as text may stand for. */
export interface TextNumber {
  /** The number; undefined where a comma or point could part thousands or decimals. */
  readonly value: number | undefined;
  /** The unit written behind it, as written: "mm". */
  readonly unit: string;
}

const WRITTEN = /^\s*(-?\d[\d\s\u00a0.,']*)\s*([\p{L}%/]*)\.?\s*$/u;

/** Reads "85", "25,3", "85 mm", "1 204"; undefined where the text is no number. */
export function textNumber(text: string): TextNumber | undefined {
  const parts = WRITTEN.exec(text);
  if (parts === null) return undefined;
  const digits = parts[1]!.replace(/[\s\u00a0']/g, "").replace(/[.,]$/, "");
  const unit = parts[2]!.toLowerCase();
  if (/^-?\d+$/.test(digits)) return { value: Number(digits), unit };
  const marks = digits.match(/[.,]/g) ?? [];
  const last = digits[Math.max(digits.lastIndexOf("."), digits.lastIndexOf(","))];
  const behind = digits.length - 1 - digits.lastIndexOf(last!);
  if (marks.length === 1) {
    // 1.204 may be one thousand or a little more than one.
    if (behind === 3 && !/^-?0[.,]/.test(digits)) return { value: undefined, unit };
    return { value: Number(digits.replace(",", ".")), unit };
  }
  if (new Set(marks).size === 1) return { value: behind === 3 ? Number(digits.replace(/[.,]/g, "")) : undefined, unit };
  const decimals = last === "," ? digits.replace(/\./g, "").replace(",", ".") : digits.replace(/,/g, "");
  return { value: Number.isFinite(Number(decimals)) ? Number(decimals) : undefined, unit };
}
