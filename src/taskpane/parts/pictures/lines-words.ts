import { formatNumber } from "../../format";
import type { LineSeries } from "./picture-data";

/** What lines over time show: of each its first, last, lowest and highest value. */
export function linesSentence(names: readonly string[], series: readonly LineSeries[], format: string): string {
  return series.map((line) => lineSentence(names, line, format)).join(" ");
}

function lineSentence(names: readonly string[], { name, values }: LineSeries, format: string): string {
  const points = values.flatMap((value, place) => (value === undefined ? [] : [{ value, on: names[place]! }]));
  const [first, ...others] = points;
  if (first === undefined) return `${name}: no value.`;
  const told = (point: { readonly value: number; readonly on: string }): string =>
    `${formatNumber(point.value, format)} (${point.on})`;
  if (others.length === 0) return `${name}: ${told(first)}.`;
  const lowest = points.reduce((least, point) => (point.value < least.value ? point : least));
  const highest = points.reduce((most, point) => (point.value > most.value ? point : most));
  return `${name}: first ${told(first)}, last ${told(points.at(-1)!)}; lowest ${told(lowest)}, highest ${told(highest)}.`;
}
