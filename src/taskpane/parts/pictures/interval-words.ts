import { formatNumber, plainNumber } from "../../format";
import type { IntervalRow } from "./picture-data";

/** "28.2 to 41.0; target 12: above; few cases" */
export function intervalText({ low, high, target, against, remark }: IntervalRow, format: string): string {
  const parts: string[] = [];
  if (low !== undefined && high !== undefined) parts.push(limitsText(low, high, format));
  if (target !== undefined) {
    const place = against === undefined || against === "" ? "" : `: ${againstText(against)}`;
    parts.push(`target ${formatNumber(target, format.includes("%") ? format : undefined)}${place}`);
  }
  if (remark !== undefined && remark !== "") parts.push(remark);
  return parts.join("; ");
}

function againstText(against: string): string {
  return against === "within chance" ? "chance may explain the difference" : `${against} it`;
}

export function limitsText(low: number, high: number, format: string): string {
  return `${formatNumber(low, format)} to ${formatNumber(high, format)}`;
}

/** What bars with limits show: the highest, and which lie above their targets for sure. */
export function intervalsSentence(rows: readonly IntervalRow[], unit: string, format: string): string {
  const known = rows.filter(({ value }) => value !== undefined);
  const [first] = known;
  if (first === undefined) return "There is no figure to show.";
  const highest = known.reduce((most, row) => (row.value! > most.value! ? row : most), first);
  const limits =
    highest.low === undefined || highest.high === undefined
      ? ""
      : ` (${limitsText(highest.low, highest.high, format)})`;
  const texts = [`Highest: ${highest.label}, ${formatNumber(highest.value!, format)} ${unit}${limits}.`];
  const targeted = known.filter(({ target }) => target !== undefined);
  if (targeted.length > 0) {
    const above = targeted.filter(({ against }) => against === "above").map(({ label }) => label);
    texts.push(
      above.length > 0
        ? `Above target beyond chance: ${above.join(", ")}.`
        : `None of ${plainNumber(targeted.length)} with a target lies above it beyond chance.`,
    );
  }
  return texts.join(" ");
}
