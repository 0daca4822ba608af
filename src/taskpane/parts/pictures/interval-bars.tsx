import { formatNumber } from "../../format";
import { intervalText, intervalsSentence } from "./interval-words";
import type { NumbersTableProps } from "./numbers-table";
import { Picture } from "./picture";
import type { IntervalRow } from "./picture-data";
import { axisTicks, highestShown, percent, percentAlong } from "./scale";

interface IntervalBarsProps {
  readonly title: string;
  /** What each row stands for: "Lesion". */
  readonly rowsAre: string;
  readonly rows: readonly IntervalRow[];
  /** "new cases per 100 cow-years" */
  readonly unit: string;
  /** Number format of the figures. */
  readonly format: string;
  /** In place of the sentence computed from the rows. */
  readonly sentence?: string;
  /** In place of the table of the rows. */
  readonly numbers?: NumbersTableProps;
}

/** Bars from left to right, with their 95 % limits as whiskers and their targets as marks. */
export function IntervalBars({ title, rowsAre, rows, unit, format, sentence, numbers }: IntervalBarsProps) {
  const known = rows.flatMap(({ value, target }) => [value, target]).filter((value) => value !== undefined);
  const limits = rows.map(({ high }) => high).filter((high) => high !== undefined);
  const ticks = axisTicks(highestShown(known, limits));
  const hasTargets = rows.some(({ target }) => target !== undefined);
  return (
    <Picture
      title={title}
      sentence={sentence ?? intervalsSentence(rows, unit, format)}
      numbers={numbers ?? numbersOf(title, rowsAre, rows, format)}
    >
      <ul class="interval-rows">
        {rows.map((row) => (
          <li key={row.label}>
            <p class="interval-name">
              <span>{row.label}</span>
              <b>{row.value === undefined ? "–" : formatNumber(row.value, format)}</b>
            </p>
            {row.value !== undefined && <Bar row={row} ticks={ticks} />}
            <p class="interval-words">{intervalText(row, format)}</p>
          </li>
        ))}
      </ul>
      <Axis ticks={ticks} format={tickFormat(format)} />
      <p class="picture-key" aria-hidden="true">
        {unit}
        {limits.length > 0 && "; thin line: 95 % limits"}
        {hasTargets && "; ◆ target"}
      </p>
    </Picture>
  );
}

/** Ticks are round: a share needs no decimals there, a number as many as it has. */
function tickFormat(format: string): string | undefined {
  return format.includes("%") ? "0%" : undefined;
}

const MIDDLE = 11;
const CAP = 4;

function Bar({ row, ticks }: { readonly row: IntervalRow; readonly ticks: readonly number[] }) {
  const top = ticks.at(-1)!;
  const at = (value: number): string => percent(percentAlong(value, top));
  const { value = 0, low, high, target } = row;
  return (
    <svg class="interval-bar" aria-hidden="true">
      {ticks.map((tick) => (
        <line key={tick} class={tick === 0 ? "axis" : "grid"} x1={at(tick)} x2={at(tick)} y1="0" y2="100%" />
      ))}
      <rect class={`bar ${row.against === "above" ? "above" : ""}`} x="0" y="5" width={at(value)} height="12" />
      {low !== undefined && high !== undefined && (
        <>
          <Whisker from={at(low)} to={at(high)} layer="halo" />
          <Whisker from={at(low)} to={at(high)} layer="whisker" />
          {high > top ? (
            <text class="cut" x="100%" y={MIDDLE} dy="0.35em" text-anchor="end">
              ›
            </text>
          ) : (
            <line class="whisker" x1={at(high)} x2={at(high)} y1={MIDDLE - CAP} y2={MIDDLE + CAP} />
          )}
          <line class="whisker" x1={at(low)} x2={at(low)} y1={MIDDLE - CAP} y2={MIDDLE + CAP} />
        </>
      )}
      {target !== undefined && (
        <svg class="target" x={at(target)} y="0" overflow="visible">
          <line x1="0" x2="0" y1="0" y2="22" />
          <path d="M0 -1 L4.5 4 L0 9 L-4.5 4 Z" />
        </svg>
      )}
    </svg>
  );
}

/** A light line below the dark one keeps a whisker visible over its own bar. */
function Whisker({ from, to, layer }: { readonly from: string; readonly to: string; readonly layer: string }) {
  return <line class={layer} x1={from} x2={to} y1={MIDDLE} y2={MIDDLE} />;
}

function Axis({ ticks, format }: { readonly ticks: readonly number[]; readonly format: string | undefined }) {
  return (
    <svg class="interval-axis" aria-hidden="true">
      {ticks.map((tick, index) => (
        <text
          key={tick}
          x={percent(percentAlong(tick, ticks.at(-1)!))}
          y="1em"
          text-anchor={index === 0 ? "start" : index === ticks.length - 1 ? "end" : "middle"}
        >
          {formatNumber(tick, format)}
        </text>
      ))}
    </svg>
  );
}

function numbersOf(title: string, rowsAre: string, rows: readonly IntervalRow[], format: string): NumbersTableProps {
  const hasTargets = rows.some(({ target }) => target !== undefined);
  return {
    caption: `Numbers: ${title}`,
    columns: [
      { heading: rowsAre },
      { heading: "Figure", format },
      { heading: "Low", format },
      { heading: "High", format },
      ...(hasTargets ? [{ heading: "Target" }] : []),
    ],
    rows: rows.map(({ label, value, low, high, target }) => [label, value, low, high, ...(hasTargets ? [target] : [])]),
  };
}
