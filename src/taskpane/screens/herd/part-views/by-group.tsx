import { IntervalBars } from "../../../parts/pictures/interval-bars";
import { capitalised, formatNumber } from "../../../format";
import { groupsSentence, groupSharesOf } from "../groups";
import type { RowsViewProps } from "./view-props";

/** HERD.LESION.BYGROUP: share of the examined cows with a lesion, heifers first. */
export function ByGroup({ part }: RowsViewProps) {
  const groups = groupSharesOf(part.rows);
  return (
    <IntervalBars
      title={part.part.title}
      rowsAre="Cows"
      rows={groups.map(({ name, examined, affected, share, low, high }) => ({
        label: capitalised(name),
        value: share,
        low,
        high,
        remark:
          examined === 0
            ? "none examined"
            : `${formatNumber(affected, "#,##0")} of ${formatNumber(examined, "#,##0")} cows`,
      }))}
      unit="of the cows examined"
      format="0%"
      sentence={groupsSentence(groups)}
    />
  );
}
