import { monthName, shortMonthName } from "../month-names";
import { StackedColumns } from "../../../parts/pictures/stacked-columns";
import { numberIn, recordsIn } from "../rows";
import type { RowsViewProps } from "./view-props";

const GROUPS = ["Horn", "Infectious", "Shape", "Other"] as const;

/** HERD.LESION.MONTHS: new cases by month and group of lesions. */
export function Months({ part }: RowsViewProps) {
  const months = recordsIn(part.rows);
  const days = months.map((row) => numberIn(row, "Month from") ?? 0);
  const series = GROUPS.map((name) => ({ name, values: months.map((row) => numberIn(row, name) ?? 0) }));
  return (
    <>
      <StackedColumns
        title="New cases by month"
        columnsAre="Month"
        names={days.map(monthName)}
        shortNames={days.map(shortMonthName)}
        series={series.filter(({ values }) => values.some((value) => value > 0))}
        unit="new cases"
      />
      {months.length === 1 && <p class="quiet">One month shows no trend.</p>}
    </>
  );
}
