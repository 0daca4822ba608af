import { columnsOf, formatOf } from "../../../../blocks/result-columns";
import { specOf } from "../../../parts/live-blocks/use-live-blocks";
import { type NumbersColumn, NumbersTable } from "../../../parts/pictures/numbers-table";
import type { RowsViewProps } from "./view-props";

/** A table as the sheet has it. */
export function PlainRows({ part: { part, rows } }: RowsViewProps) {
  const columns: readonly NumbersColumn[] =
    part.kind === "series"
      ? part.columns
      : columnsOf(part.of, specOf).map((column) => {
          const format = formatOf(column);
          return { heading: column.heading, ...(format === undefined ? {} : { format }) };
        });
  const filled = rows.slice(1).filter(([first]) => first !== "" && first !== null);
  if (filled.length === 0) return <p>Nothing in this time.</p>;
  return (
    <NumbersTable
      caption={part.title}
      columns={columns}
      rows={filled.map((row) =>
        row.map((cell) => (typeof cell === "number" ? cell : cell === null ? undefined : String(cell))),
      )}
    />
  );
}
