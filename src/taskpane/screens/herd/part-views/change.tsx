import { formatNumber } from "../../../format";
import { BlockFigures } from "../../../parts/live-blocks/block-figures";
import { NumbersTable } from "../../../parts/pictures/numbers-table";
import type { ComputedBlock } from "../../../../blocks/compute";
import { beginsLate, changesSentence, lesionChanges } from "../change";
import { lesionTableOf } from "../lesions";

/** Parts of the block that this view shows in its own way. */
export const CHANGE_PARTS = ["lesionsNow", "lesionsBefore", "share", "expected"] as const;

const SIGNS = { more: "▲ more", fewer: "▼ fewer", "may be chance": "may be chance" } as const;

/** Lesion by lesion, this time beside the time before. */
export function Change({ computed }: { readonly computed: ComputedBlock }) {
  const figures = new BlockFigures(computed);
  const [now, before] = [figures.spilled("lesionsNow"), figures.spilled("lesionsBefore")];
  const [cowDays, cowDaysBefore] = [figures.number("cowDays"), figures.number("cowDaysBefore")];
  if (now === undefined || before === undefined || cowDays === undefined || cowDaysBefore === undefined) {
    const reasons = ["lesionsNow", "lesionsBefore"].flatMap((id) => figures.reason(id) ?? []);
    return <p class="herd-refused">{reasons[0] ?? "The two times cannot be compared."}</p>;
  }
  const days = ["listFrom", "fromBefore"].map((id) => figures.number(id) ?? 0);
  if (days[0]! > days[1]!) return <p>{beginsLate(days[0]!, figures.input("to") ?? 0)}</p>;
  const changes = lesionChanges(lesionTableOf(now), lesionTableOf(before), { now: cowDays, before: cowDaysBefore });
  return (
    <>
      <p>{changesSentence(changes)}</p>
      <NumbersTable
        caption="New cases per 100 cow-years, this time and before"
        columns={[
          { heading: "Lesion" },
          { heading: "Now", format: "0.0" },
          { heading: "Before", format: "0.0" },
          { heading: "Change" },
        ]}
        rows={changes.map(({ name, rateNow, rateBefore, verdict }) => [name, rateNow, rateBefore, SIGNS[verdict]])}
      />
      <p class="quiet">
        New cases per 100 cow-years. ▲ and ▼: the difference is more than chance explains (95 %);{" "}
        {formatNumber(changes.length - 1)} lesions are compared, so that one of twenty may seem to differ by chance
        alone.
      </p>
    </>
  );
}
