import { FEW_CASES } from "../../../../core/claws/lesion-rate";
import { IntervalBars } from "../../../parts/pictures/interval-bars";
import type { NumbersTableProps } from "../../../parts/pictures/numbers-table";
import { formOf, type LesionCases, lesionTableOf } from "../lesions";
import type { RowsViewProps } from "./view-props";

/** Bars that a reader takes in; the others stand among the numbers. */
const MOST_BARS = 8;

/** HERD.LESION.TABLE: rates against targets. */
export function LesionRates({ part }: RowsViewProps) {
  const { lesions, groups, all } = lesionTableOf(part.rows);
  if (all === undefined || lesions.length === 0) return <p>No lesion was recorded in this time.</p>;
  const shown = [...lesions.slice(0, MOST_BARS), ...groups];
  return (
    <IntervalBars
      title="New cases against targets"
      rowsAre="Lesion"
      rows={shown.map(barOf)}
      unit="new cases per 100 cow-years"
      format="0.0"
      numbers={numbersOf([...lesions, ...groups, all])}
    />
  );
}

function barOf(lesion: LesionCases) {
  const { rate, low, high, target, against, newCases } = lesion;
  const remark = newCases < FEW_CASES ? `only ${newCases} ${newCases === 1 ? "case" : "cases"}` : `${newCases} cases`;
  return { label: labelOf(lesion), value: rate, low, high, target, against, remark };
}

/** A form of a lesion is counted in its parent too. */
function labelOf({ code, name }: LesionCases): string {
  const parent = formOf(code);
  return parent === undefined ? name : `${name} (a form of ${parent})`;
}

function numbersOf(lesions: readonly LesionCases[]): NumbersTableProps {
  return {
    caption: "Numbers: new cases by lesion",
    columns: [
      { heading: "Lesion" },
      { heading: "New", format: "0" },
      { heading: "Repeats", format: "0" },
      { heading: "Cows", format: "0" },
      { heading: "Rate", format: "0.0" },
      { heading: "Low", format: "0.0" },
      { heading: "High", format: "0.0" },
      { heading: "Target", format: "0.0" },
    ],
    rows: lesions.map(({ name, newCases, repeats, cows, rate, low, high, target }) => [
      name,
      newCases,
      repeats,
      cows,
      rate,
      low,
      high,
      target,
    ]),
  };
}
