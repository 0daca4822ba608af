import { linesSentence } from "./lines-words";
import type { NumbersTableProps } from "./numbers-table";
import { Picture } from "./picture";
import type { LineSeries } from "./picture-data";
import { down, Plot, type XLabel } from "./plot";
import { axisTicks, highestShown, percent, percentAlong } from "./scale";

export interface TimeLabel {
  /** On the same scale as `at`. */
  readonly at: number;
  readonly text: string;
}

export interface LinesProps {
  readonly title: string;
  /** Where in time the points lie, from early to late, such as day numbers. */
  readonly at: readonly number[];
  /** What each point is called: "2026-03-10". */
  readonly names: readonly string[];
  /** Labels below the axis. */
  readonly timeLabels: readonly TimeLabel[];
  /** One or two. */
  readonly series: readonly LineSeries[];
  readonly unit: string;
  readonly format: string;
}

/** More marks than this run into each other: then only the line is drawn. */
const MOST_MARKS = 40;

/** Lines over time: the first is solid with round marks, the second dashed with square ones. */
export function Lines({ title, at, names, timeLabels, series, unit, format }: LinesProps) {
  const known = series.flatMap(({ values }) => values).filter((value) => value !== undefined);
  const limits = series.flatMap(({ highs = [] }) => highs).filter((high) => high !== undefined);
  const ticks = axisTicks(highestShown(known, limits));
  const [from, to] = [at[0] ?? 0, at.at(-1) ?? 0];
  const across = (time: number): number => (from === to ? 50 : inset(percentAlong(time, to, from)));
  const xLabels = timeLabels.map(({ at: time, text }, index): XLabel => ({
    at: across(time),
    text,
    spare: index % 2 === 1,
  }));
  return (
    <Picture
      title={title}
      sentence={linesSentence(names, series, format)}
      numbers={numbersOf(title, names, series, format)}
    >
      <Plot ticks={ticks} format={format.includes("%") ? "0%" : format} unit={unit} xLabels={xLabels}>
        {series.map((line, index) => (
          <Line key={line.name} index={index} line={line} across={at.map(across)} ticks={ticks} />
        ))}
      </Plot>
      {series.length > 1 && <LineLegend names={series.map(({ name }) => name)} />}
    </Picture>
  );
}

/** Marks at the ends stay inside the plot. */
const EDGE_PERCENT = 2;

function inset(along: number): number {
  return EDGE_PERCENT + (along * (100 - 2 * EDGE_PERCENT)) / 100;
}

interface LineProps {
  readonly index: number;
  readonly line: LineSeries;
  readonly across: readonly number[];
  readonly ticks: readonly number[];
}

function Line({ index, line: { values, lows = [], highs = [] }, across, ticks }: LineProps) {
  const points = values.flatMap((value, place) => {
    if (value === undefined) return [];
    const [low, high] = [lows[place], highs[place]];
    return [{ place, x: across[place]!, y: down(value, ticks), low, high }];
  });
  const hasMarks = points.length <= MOST_MARKS;
  return (
    <g class={`line-series series-${index}`}>
      {hasMarks &&
        points.map(({ x, low, high }) =>
          low === undefined || high === undefined ? null : (
            <line
              key={x}
              class="line-limits"
              x1={percent(x)}
              x2={percent(x)}
              y1={percent(down(low, ticks))}
              y2={percent(down(high, ticks))}
            />
          ),
        )}
      {points.slice(1).map(({ place, x, y }, before) => {
        const last = points[before]!;
        if (last.place !== place - 1) return null;
        return (
          <line key={x} class="line-step" x1={percent(last.x)} y1={percent(last.y)} x2={percent(x)} y2={percent(y)} />
        );
      })}
      {hasMarks && points.map(({ x, y }) => <Mark key={x} index={index} x={percent(x)} y={percent(y)} />)}
    </g>
  );
}

const MARK = 3.5;

function Mark({ index, x, y }: { readonly index: number; readonly x: string; readonly y: string }) {
  if (index === 0) return <circle class="mark" cx={x} cy={y} r={MARK} />;
  const box = `translate(-${MARK} -${MARK})`;
  return <rect class="mark" x={x} y={y} width={2 * MARK} height={2 * MARK} transform={box} />;
}

function LineLegend({ names }: { readonly names: readonly string[] }) {
  return (
    <ul class="picture-legend">
      {names.map((name, index) => (
        <li key={name}>
          <svg width="28" height="14" aria-hidden="true">
            <g class={`line-series series-${index}`}>
              <line class="line-step" x1="0" x2="28" y1="7" y2="7" />
              <Mark index={index} x="14" y="7" />
            </g>
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}

function numbersOf(
  title: string,
  names: readonly string[],
  series: readonly LineSeries[],
  format: string,
): NumbersTableProps {
  const columns = series.flatMap(({ name, lows, highs }) => [
    { heading: name, format },
    ...(lows === undefined ? [] : [{ heading: "Low", format }]),
    ...(highs === undefined ? [] : [{ heading: "High", format }]),
  ]);
  return {
    caption: `Numbers: ${title}`,
    columns: [{ heading: "Date" }, ...columns],
    rows: names.map((name, place) => [
      name,
      ...series.flatMap(({ values, lows, highs }) => [
        values[place],
        ...(lows === undefined ? [] : [lows[place]]),
        ...(highs === undefined ? [] : [highs[place]]),
      ]),
    ]),
  };
}
