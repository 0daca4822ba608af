import { formatNumber } from "../../../format";
import { IntervalBars } from "../../../parts/pictures/interval-bars";
import { NumbersTable } from "../../../parts/pictures/numbers-table";
import { figuresOf } from "../summary";
import { costWords, type CostWords, NO_PROMISE } from "../wording/cost-words";
import { milkText, moneyText } from "../wording/money";
import { Put, Refused, Sentences } from "./parts";
import type { SectionProps } from "./props";

/** What the bill says in words; undefined where the test could not be read at all. */
export function billOf({
  figures,
  read,
  milkPrice,
}: SectionProps): CostWords | { readonly reason: string } | undefined {
  const spilled = figures.spilled("summary");
  if (spilled === undefined) return undefined;
  const all = [...figuresOf(spilled)];
  const known = read.price === undefined ? all.filter(([name]) => !name.startsWith("money")) : all;
  return costWords(new Map(known), milkPrice.currency);
}

const LEVEL_NAMES = { low: "Low", central: "Central", high: "High" } as const;

/** What a year of such counts goes with, low to high between published models. */
export function Bill(props: SectionProps) {
  const { figures, milkPrice } = props;
  const words = billOf(props);
  if (words === undefined) return <Refused sentence={figures.reason("summary")} />;
  if ("reason" in words) return <Refused sentence={words.reason} />;
  const { levels, parts, unit, said } = words;
  const money = levels.every((level) => level.money !== undefined);
  return (
    <>
      <IntervalBars
        title="Low to high between published models"
        unit={`${unit} in those days`}
        format="#,##0"
        rowsAre="Model"
        sentence={levels
          .map(({ level, milk, money: amount, model }) => {
            const inMoney = amount === undefined ? "" : `, ${moneyText(amount, milkPrice.currency)}`;
            return `${LEVEL_NAMES[level]} ${milkText(milk, unit)}${inMoney} (${model}).`;
          })
          .join(" ")}
        rows={levels.map(({ level, milk, money: amount, model }) => ({
          label: `${LEVEL_NAMES[level]}: ${model.replace(/, .*/, "")}`,
          value: milk,
          remark: amount === undefined ? undefined : moneyText(amount, milkPrice.currency),
        }))}
        numbers={{
          caption: "Low to high between published models",
          columns: [
            { heading: "Level" },
            { heading: unit, format: "#,##0" },
            ...(money ? [{ heading: milkPrice.currency || "money", format: "#,##0" }] : []),
            { heading: "Model" },
          ],
          rows: levels.map(({ level, milk, money: amount, model }) => [
            LEVEL_NAMES[level],
            milk,
            ...(money ? [amount] : []),
            model,
          ]),
        }}
      />
      <NumbersTable
        caption="The central figure by lactation"
        columns={[{ heading: "Lactation" }, { heading: "Cows", format: "0" }, { heading: unit, format: "#,##0" }]}
        rows={parts.map(({ name, cows, milk }) => [name, cows, milk])}
      />
      <p>{NO_PROMISE}</p>
      <div class="quiet">
        <Sentences texts={said} />
        {milkPrice.year !== undefined && <p>Milk price of {formatNumber(milkPrice.year, "0")}, gross.</p>}
      </div>
      <Put {...props} />
    </>
  );
}
