import { isoDate } from "../../../../core/shared/days";
import type { PlainCell } from "../../../../workbook/port";
import type { BlockFigures } from "../../../parts/live-blocks/block-figures";
import { Lines } from "../../../parts/pictures/lines";
import { countText } from "../wording/money";
import { TANK_DIFFERS, tankWords } from "../wording/tank-words";
import { Put, Refused, Sentences } from "./parts";
import type { SectionProps } from "./props";

export function tankAnswer({ figures }: SectionProps): string | undefined {
  const [tank, usual] = [figures.number("tank"), figures.number("geometric")];
  if (tank === undefined || usual === undefined) return figures.reason("tank") ?? figures.reason("geometric");
  return `Tank ${countText(tank, "thousand")}, usual cow ${countText(usual, "thousand")}.`;
}

/** The tank against the cows, why they differ, and both from test to test. */
export function Tank(props: SectionProps & { readonly byTest: SectionProps }) {
  const { figures, byTest } = props;
  const [tank, mean, usual] = ["tank", "mean", "geometric"].map((id) => figures.number(id));
  const isKnown = tank !== undefined && mean !== undefined && usual !== undefined;
  return (
    <>
      {isKnown && <Sentences texts={tankWords({ tank, mean, usual, unit: "thousand" })} />}
      <Refused sentence={figures.reason("tank")} />
      <p class="quiet">{TANK_DIFFERS}</p>
      <Put {...props} />
      <ByTest figures={byTest.figures} />
      <Put {...byTest} />
    </>
  );
}

/** Labels of days below the axis that find room in a narrow pane. */
const MOST_LABELS = 4;

function ByTest({ figures }: { readonly figures: BlockFigures }) {
  const rows = figures.rows("tests").filter(([day]) => typeof day === "number");
  if (!figures.isComputed) return null;
  if (rows.length < 2) return <p class="quiet">With a second test the tank and the usual cow are drawn over time.</p>;
  const days = rows.map(([day]) => day as number);
  const every = Math.ceil(days.length / MOST_LABELS);
  const values = (column: number): (number | undefined)[] => rows.map((row) => numberIn(row[column]));
  return (
    <Lines
      title="From test to test"
      at={days}
      names={days.map(isoDate)}
      timeLabels={days
        .filter((_, index) => index % every === 0)
        .map((day) => ({ at: day, text: isoDate(day).slice(2, 7) }))}
      series={[
        { name: "Tank estimate", values: values(2) },
        { name: "Usual cow", values: values(1) },
      ]}
      unit="thousand cells/mL"
      format="#,##0"
    />
  );
}

function numberIn(cell: PlainCell | undefined): number | undefined {
  return typeof cell === "number" ? cell : undefined;
}
