import { counted, formatNumber } from "../../../format";
import type { NumbersCell } from "../../../parts/pictures/numbers-table";
import { NumbersTable } from "../../../parts/pictures/numbers-table";
import { moneyText, shareText } from "../wording/money";
import { FieldOf, Put, Refused } from "./parts";
import type { SectionProps } from "./props";

const CAUTION =
  "A high count is no diagnosis: treatment, drying off and culling are decided with a licensed veterinarian. Milk of a treated cow stays out of the tank for the withdrawal period on the label.";

/** The first cows in a line: what they cost and what they do to the tank. */
export function topWords({ figures, read, milkPrice }: SectionProps): string {
  const rows = figures.rows("cows");
  if (rows.length === 0) return figures.reason("cows") ?? "No cow is above 50 thousand cells/mL.";
  const [money, lossShare, tankShare] = ["money", "lossShare", "tankShare"].map((id) => figures.number(id));
  const named = rows.length > MOST_NAMED ? "" : ` (${rows.map(([cow]) => String(cow)).join(", ")})`;
  const cost =
    read.price === undefined || money === undefined ? "" : `${moneyText(money, milkPrice.currency)} in 30 days, `;
  return `${counted(rows.length, "cow")}${named}: ${cost}${shareText(lossShare ?? 0)} of the loss and ${shareText(tankShare ?? 0)} of the tank's cells.`;
}

/** More cows than this are read from the table. */
const MOST_NAMED = 8;

/** The cows behind most of the loss. */
export function Top(props: SectionProps) {
  const { figures, read, milkPrice } = props;
  const rows = figures.rows("cows");
  const hasPrice = read.price !== undefined;
  const tank = figures.number("without");
  return (
    <>
      <FieldOf {...props} field="number" label="Cows to list" />
      {figures.reason("cows") !== undefined && <Refused sentence={figures.reason("cows")} />}
      {rows.length > 0 && (
        <NumbersTable
          caption="Cows that lose most, the dearest first"
          columns={[
            { heading: "Cow" },
            { heading: "Count", format: "#,##0" },
            { heading: "Litres a day", format: "0.0" },
            ...(hasPrice ? [{ heading: `${milkPrice.currency || "Money"} in 30 days`, format: "#,##0" }] : []),
            { heading: "Share of tank's cells", format: "0%" },
            { heading: "Tank without her", format: "#,##0" },
          ]}
          rows={rows.map(([cow, count, loss, money, , share, without]): NumbersCell[] => [
            String(cow),
            cell(count),
            cell(loss),
            ...(hasPrice ? [cell(money)] : []),
            cell(share),
            cell(without),
          ])}
        />
      )}
      {tank !== undefined && (
        <p>
          Without the milk of all {rows.length} the tank would hold {formatNumber(tank, "#,##0")} thousand/mL.
        </p>
      )}
      <p class="quiet">{CAUTION}</p>
      <Put {...props} />
    </>
  );
}

function cell(value: unknown): NumbersCell {
  return typeof value === "number" || (typeof value === "string" && value !== "") ? value : undefined;
}
