/** The fill of a series: a colour and a pattern of its own, so that the pattern alone tells it. */
export function seriesFill(picture: string, series: number): string {
  return series === 0 ? "" : `url(#${picture}-series-${series})`;
}

const SIZE = 6;

/** The patterns of a picture, once in each drawing that fills with them. The first series is plain. */
export function SeriesPatterns({ picture }: { readonly picture: string }) {
  const pattern = (series: number) => ({
    id: `${picture}-series-${series}`,
    class: `series-${series}`,
    width: SIZE,
    height: SIZE,
    patternUnits: "userSpaceOnUse",
  });
  return (
    <defs>
      <pattern {...pattern(1)} patternTransform="rotate(45)">
        <rect class="pattern-paper" width={SIZE} height={SIZE} />
        <rect class="pattern-ink" width={SIZE / 2} height={SIZE} />
      </pattern>
      <pattern {...pattern(2)}>
        <rect class="pattern-paper" width={SIZE} height={SIZE} />
        <circle class="pattern-ink" cx={SIZE / 2} cy={SIZE / 2} r={SIZE / 3} />
      </pattern>
      <pattern {...pattern(3)}>
        <rect class="pattern-paper" width={SIZE} height={SIZE} />
        <rect class="pattern-ink" width={SIZE} height={1} />
      </pattern>
    </defs>
  );
}

const SWATCH = 14;

interface LegendProps {
  readonly picture: string;
  readonly names: readonly string[];
}

/** Which pattern stands for which series. */
export function FillLegend({ picture, names }: LegendProps) {
  return (
    <ul class="picture-legend">
      {names.map((name, series) => (
        <li key={name}>
          <svg width={SWATCH} height={SWATCH} aria-hidden="true">
            <rect
              class={`series-fill series-${series}`}
              fill={seriesFill(picture, series) || undefined}
              width={SWATCH}
              height={SWATCH}
            />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}
