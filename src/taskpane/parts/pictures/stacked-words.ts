import { plainNumber } from "../../format";
import type { CountSeries } from "./picture-data";

/** What stacked columns show: how many in all, the highest and the lowest column, and the parts of the whole. */
export function stackedSentence(names: readonly string[], series: readonly CountSeries[], unit: string): string {
  const totals = names.map((_, column) => series.reduce((sum, { values }) => sum + (values[column] ?? 0), 0));
  const all = totals.reduce((sum, total) => sum + total, 0);
  if (all === 0) return `No ${unit}.`;
  const parts = series
    .map(({ name, values }) => ({ name, count: values.reduce((sum, value) => sum + value, 0) }))
    .filter(({ count }) => count > 0)
    .map(({ name, count }) => `${name.toLowerCase()} ${plainNumber(count)} (${Math.round((100 * count) / all)} %)`);
  const told = [`${plainNumber(all)} ${unit}: ${parts.join(", ")}.`];
  if (names.length > 1) {
    const most = Math.max(...totals);
    const fewest = Math.min(...totals);
    told.push(
      most === fewest
        ? `The same in each: ${plainNumber(most)}.`
        : `Most in ${names[totals.indexOf(most)]!} (${plainNumber(most)}), fewest in ${names[totals.indexOf(fewest)]!} (${plainNumber(fewest)}).`,
    );
  }
  return told.join(" ");
}
