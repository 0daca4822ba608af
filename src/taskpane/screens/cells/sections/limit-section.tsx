import { isoDate } from "../../../../core/shared/days";
import { formatNumber } from "../../../format";
import { NumbersTable } from "../../../parts/pictures/numbers-table";
import { countText } from "../wording/money";
import { Put, Refused } from "./parts";
import type { SectionProps } from "./props";

export function limitAnswer({ figures }: SectionProps): string | undefined {
  const [rolling, limit] = [figures.number("rolling"), figures.input("legalLimit")];
  if (rolling === undefined || limit === undefined) return figures.reason("rolling");
  const place = rolling > limit ? "above" : "not above";
  return `Rolling mean ${countText(rolling, "thousand")}, ${place} ${formatNumber(limit, "#,##0")}.`;
}

/** The rolling mean that the European limit is held against, as the cows' tests foretell it. */
export function Limit(props: SectionProps) {
  const { figures } = props;
  const rows = figures.rows("tank").filter(([day]) => typeof day === "number");
  return (
    <>
      <p>
        The geometric mean of the tank over three months, with at least one sample a month, is held against 400
        thousand/mL (Regulation (EC) 853/2004). Here each test foretells the tank; the buyer's own samples count.
      </p>
      <Refused sentence={figures.reason("rolling")} />
      {rows.length > 0 && (
        <NumbersTable
          caption="Tank as each test foretells it"
          columns={[{ heading: "Test" }, { heading: "Tank estimate", format: "#,##0" }]}
          rows={rows.map(([day, count]) => [isoDate(day as number), typeof count === "number" ? count : undefined])}
        />
      )}
      <Put {...props} />
    </>
  );
}
