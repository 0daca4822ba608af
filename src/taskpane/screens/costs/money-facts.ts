import { foldHeading } from "../../../herd/read-rows";
import type { TableContent } from "../../../workbook/table-port";

/** What the Costs table says of its money. */
export interface CostFacts {
  /** Each currency once, as written; "" stands for rows without one. */
  readonly currencies: readonly string[];
  readonly years: readonly number[];
  readonly sources: readonly string[];
}

/** Currencies, years and sources of the costs of a case; undefined where there is no such table, or nothing in it. */
export function costFacts(content: TableContent | undefined): CostFacts | undefined {
  const rows = content?.rows.filter((row) => row.some((cell) => cell !== null)) ?? [];
  if (content === undefined || rows.length === 0) return undefined;
  const column = (heading: string): readonly unknown[] => {
    const place = content.columns.findIndex((known) => foldHeading(known.heading) === heading);
    return rows.map((row) => row[place] ?? null);
  };
  const texts = (heading: string): readonly string[] => [
    ...new Set(column(heading).map((cell) => (cell === null ? "" : String(cell).trim()))),
  ];
  return {
    currencies: texts("currency"),
    years: [...new Set(column("year").filter((year) => typeof year === "number"))],
    sources: texts("source").filter((source) => source !== ""),
  };
}

/** The one currency of the costs; undefined where there are several or none is written. */
export function currencyOf(facts: CostFacts | undefined): string | undefined {
  const [currency, ...others] = facts?.currencies ?? [];
  return others.length === 0 && currency !== "" ? currency : undefined;
}
