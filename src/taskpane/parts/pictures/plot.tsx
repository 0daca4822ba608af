import type { ComponentChildren } from "preact";
import { formatNumber } from "../../format";
import { percent, percentAlong } from "./scale";

export interface XLabel {
  /** Percent of the way from left to right. */
  readonly at: number;
  readonly text: string;
  /** Left out where the pane is narrow. */
  readonly spare?: boolean;
}

interface PlotProps {
  readonly ticks: readonly number[];
  readonly format: string;
  readonly unit: string;
  readonly xLabels: readonly XLabel[];
  /** Drawn in percent of the plot's width and height; 0 % is its top. */
  readonly children: ComponentChildren;
}

/** Percent of the way down at which a value lies. */
export function down(value: number, ticks: readonly number[]): number {
  return Number((100 - percentAlong(value, ticks.at(-1)!)).toFixed(2));
}

/** The frame of a picture over time: numbers at the left, time below. Text keeps its size whatever the width. */
export function Plot({ ticks, format, unit, xLabels, children }: PlotProps) {
  return (
    <div class="plot" aria-hidden="true">
      <p class="plot-unit">{unit}</p>
      <svg class="plot-y">
        {ticks.map((tick) => (
          <text key={tick} x="100%" y={percent(down(tick, ticks))} dx="-5" dy="0.32em" text-anchor="end">
            {formatNumber(tick, format)}
          </text>
        ))}
      </svg>
      <svg class="plot-area">
        {ticks.map((tick) => (
          <line
            key={tick}
            class={tick === 0 ? "axis" : "grid"}
            x1="0%"
            x2="100%"
            y1={percent(down(tick, ticks))}
            y2={percent(down(tick, ticks))}
          />
        ))}
        {children}
      </svg>
      <svg class="plot-x">
        {xLabels.map(({ at, text, spare = false }) => (
          <text key={at} class={spare ? "spare" : undefined} x={percent(at)} y="1.5em" text-anchor="middle">
            {text}
          </text>
        ))}
      </svg>
    </div>
  );
}
