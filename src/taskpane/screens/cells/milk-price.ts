import { isOfALitre } from "../../../blocks/cells/litre-price";
import { foldHeading } from "../../../herd/read-rows";
import type { PlainCell } from "../../../workbook/port";
import type { TableContent } from "../../../workbook/table-port";
import { pricesTable } from "../../../workbook/tables";

/** What the Prices table says of milk. */
export interface MilkPrice {
  /** Price of a litre; undefined where there is none, or where it is the price of something else. */
  readonly litre: number | undefined;
  /** "" where none is written. */
  readonly currency: string;
  readonly year: number | undefined;
  /** Why there is no price of a litre, or what to know of it. */
  readonly remark: string | undefined;
}

/** The price of a litre of milk: the first row Milk, as the formulas of the blocks take it. */
export function milkPriceOf(content: TableContent | undefined): MilkPrice {
  if (content === undefined) return noPrice("The workbook has no table Prices: type the price of a litre.");
  const cell = columnReader(content);
  const row = content.rows.find((cells) => foldHeading(String(cell(cells, "item") ?? "")) === "milk");
  if (row === undefined) return noPrice("The Prices table has no row Milk: type the price of a litre.");
  const [price, per] = [cell(row, "price"), String(cell(row, "per") ?? "").trim()];
  const [currency, year] = [String(cell(row, "currency") ?? "").trim(), cell(row, "year")];
  const known = { currency, year: typeof year === "number" ? year : undefined };
  if (typeof price !== "number" || price <= 0) {
    return {
      ...noPrice("The price of milk in the Prices table is no number above 0: type the price of a litre."),
      ...known,
    };
  }
  if (!isOfALitre(per)) {
    return { ...noPrice(`The Prices table gives milk per ${per}: type the price of a litre.`), ...known };
  }
  const remark =
    per === "" ? "The Prices table does not say what the price is for; it is taken as that of a litre." : undefined;
  return { litre: price, ...known, remark };
}

function noPrice(remark: string): MilkPrice {
  return { litre: undefined, currency: "", year: undefined, remark };
}

type Key = (typeof pricesTable)["columns"][number]["key"];

function columnReader({ columns }: TableContent): (row: readonly PlainCell[], key: Key) => PlainCell {
  const places = new Map(
    pricesTable.columns.map(({ key, heading }) => [
      key,
      columns.findIndex((column) => foldHeading(column.heading) === foldHeading(heading)),
    ]),
  );
  return (row, key) => row[places.get(key) ?? -1] ?? null;
}
