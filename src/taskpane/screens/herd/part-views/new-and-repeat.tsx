import { StackedColumns } from "../../../parts/pictures/stacked-columns";
import { type LesionTable, parentsOf } from "../lesions";

/** Columns that find room. */
const MOST_COLUMNS = 10;

/** New cases beside repeats, lesion by lesion. */
export function NewAndRepeatPicture({ table }: { readonly table: LesionTable }) {
  const lesions = parentsOf(table).filter(({ newCases, repeats }) => newCases + repeats > 0);
  if (lesions.length === 0) return null;
  const shown = lesions.slice(0, MOST_COLUMNS);
  return (
    <StackedColumns
      title={
        shown.length < lesions.length
          ? `New cases and repeats, the first ${MOST_COLUMNS} lesions`
          : "New cases and repeats"
      }
      columnsAre="Lesion"
      names={shown.map(({ name }) => name)}
      shortNames={shown.map(({ code }) => code)}
      series={[
        { name: "New cases", values: shown.map(({ newCases }) => newCases) },
        { name: "Repeats", values: shown.map(({ repeats }) => repeats) },
      ]}
      unit="records"
    />
  );
}
