import type { PlainCell } from "../../workbook/port";
import { column, columnOrBlanks } from "../expression/columns";
import { orFault, rowsOf } from "../expression/elementwise";
import type { Expression } from "../expression/expression";
import { Fault } from "../expression/fault";
import { compare } from "../expression/order";
import { literalText, type Value } from "../expression/values";

const LITRE_WORDS = ["l", "litre", "liter", "litres", "liters"];
/** What may stand under Per beside the price of a litre. */
const LITRES: readonly string[] = ["", "a ", "per ", "1 "].flatMap((before) =>
  LITRE_WORDS.map((word) => before + word),
);

/** Whether a price is for a litre: so it says, or it does not say what it is for. */
export function isOfALitre(per: PlainCell): boolean {
  const text = trimmed(per);
  return text === "" || LITRES.includes(text.toLowerCase());
}

/** The price of a litre of an item: that of its first row in the Prices table, where it is above 0 and for a litre. */
export function litrePrice(item: string): Expression {
  const [items, prices, pers] = [column("Prices", "item"), column("Prices", "price"), columnOrBlanks("Prices", "per", "item")]; // oxfmt-ignore
  return {
    text(names) {
      const found = (cells: Expression, none = ""): string =>
        `XLOOKUP(${literalText(item)},TRIM(${items.text(names)}),${cells.text(names)}${none})`;
      const litres = ["", ...LITRES].map(literalText).join(";");
      const isLitre = `OR(TRIM(${found(pers, ',""')})={${litres}})`;
      return `IF(${isLitre},IF(${found(prices)}>0,${found(prices)},NA()),NA())`;
    },
    compute(run): Value {
      const [names, values, units] = [items, prices, pers].map((cells) => rowsOf(cells.compute(run)));
      const row = names!.findIndex(([name]) => trimmed(name ?? null).toLowerCase() === item.toLowerCase());
      if (row < 0) throw new Fault("#N/A", `Prices has no row ${item}: add one with its price.`);
      const per = orFault(units![row]![0] ?? null);
      if (!isOfALitre(per)) {
        throw new Fault("#N/A", `Prices gives ${item.toLowerCase()} per ${trimmed(per)}: write the price of a litre.`);
      }
      const price = orFault(values![row]![0] ?? null);
      if (!compare(price, ">", 0)) {
        throw new Fault("#N/A", `Prices has no price of ${item.toLowerCase()} above 0: write the price of a litre.`);
      }
      return price;
    },
  };
}

/** TRIM: no spaces at the ends, one between words. */
function trimmed(cell: PlainCell): string {
  return String(cell ?? "")
    .replace(/ +/g, " ")
    .replace(/^ | $/g, "");
}
