import { useId } from "preact/hooks";
import type { NumbersTableProps } from "./numbers-table";
import { Picture } from "./picture";
import type { CountSeries } from "./picture-data";
import { down, Plot, type XLabel } from "./plot";
import { axisTicks, labelEvery, percent } from "./scale";
import { FillLegend, seriesFill, SeriesPatterns } from "./series-looks";
import { stackedSentence } from "./stacked-words";

export interface StackedColumnsProps {
  readonly title: string;
  /** What each column stands for: "Month". */
  readonly columnsAre: string;
  /** Its name in full: "March 2026". */
  readonly names: readonly string[];
  /** The same as short as can be, for below the axis: "Mar". */
  readonly shortNames: readonly string[];
  /** Up to four; the first lies at the bottom. */
  readonly series: readonly CountSeries[];
  /** "new cases" */
  readonly unit: string;
}

/** Labels that find room under the columns of a narrow pane. */
const MOST_LABELS = 7;
/** Part of each column's place that it fills. */
const FILLED = 0.72;

/** Columns of counts, the series on top of each other. */
export function StackedColumns({ title, columnsAre, names, shortNames, series, unit }: StackedColumnsProps) {
  const picture = useId();
  const totals = names.map((_, column) => series.reduce((sum, { values }) => sum + (values[column] ?? 0), 0));
  const ticks = axisTicks(Math.max(0, ...totals), { whole: true });
  const place = 100 / names.length;
  const every = labelEvery(names.length, MOST_LABELS);
  const xLabels = shortNames.flatMap((text, column): XLabel[] =>
    column % every === 0 ? [{ at: (column + 0.5) * place, text, spare: (column / every) % 2 === 1 }] : [],
  );
  return (
    <Picture
      title={title}
      sentence={stackedSentence(names, series, unit)}
      numbers={numbersOf({ title, columnsAre, names, series }, totals)}
    >
      <Plot ticks={ticks} format="0" unit={unit} xLabels={xLabels}>
        <SeriesPatterns picture={picture} />
        {names.map((name, column) => {
          let below = 0;
          return series.map(({ values, name: of }, index) => {
            const count = values[column] ?? 0;
            below += count;
            if (count === 0) return null;
            const top = down(below, ticks);
            return (
              <rect
                key={`${name} ${of}`}
                class={`series-fill series-${index}`}
                fill={seriesFill(picture, index) || undefined}
                x={percent((column + (1 - FILLED) / 2) * place)}
                y={percent(top)}
                width={percent(FILLED * place)}
                height={percent(down(below - count, ticks) - top)}
              />
            );
          });
        })}
      </Plot>
      <FillLegend picture={picture} names={series.map(({ name }) => name)} />
    </Picture>
  );
}

function numbersOf(
  { title, columnsAre, names, series }: Pick<StackedColumnsProps, "title" | "columnsAre" | "names" | "series">,
  totals: readonly number[],
): NumbersTableProps {
  return {
    caption: `Numbers: ${title}`,
    columns: [
      { heading: columnsAre },
      ...series.map(({ name }) => ({ heading: name, format: "0" })),
      { heading: "All", format: "0" },
    ],
    rows: names.map((name, column) => [name, ...series.map(({ values }) => values[column]), totals[column]]),
  };
}
