import { type MobilityScale, mobilityScales } from "../core/claws/mobility";
import { scoresTable } from "../workbook/tables";

/** Our table of scores with the limits of the scale on which the workbook scores. The scales are never converted. */
export function scoresTableOn(scale: MobilityScale): typeof scoresTable {
  if (scale === "0-3") return scoresTable;
  const { lowest, highest } = mobilityScales[scale];
  const columns = scoresTable.columns.map((column) =>
    column.key === "score" ? { ...column, holds: "number", limits: [lowest, highest] } : column,
  );
  return { ...scoresTable, columns } as unknown as typeof scoresTable;
}
